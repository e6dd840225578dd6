package hutchleaf.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hutchleaf.edition.Edition;
import hutchleaf.model.Card;
import hutchleaf.model.Level;
import hutchleaf.press.PdfGlyphs;
import hutchleaf.press.PdfGlyphs.Run;
import hutchleaf.press.PdfRaster;
import hutchleaf.press.PdfUa;
import hutchleaf.press.PdfWords;
import hutchleaf.press.PdfWords.Word;
import hutchleaf.problem.Problems;
import hutchleaf.sheet.Box;
import hutchleaf.sheet.CardForm;
import hutchleaf.sheet.CardFormat;
import hutchleaf.sheet.CardMaking;
import hutchleaf.sheet.CardMaking.Turn;
import hutchleaf.sheet.CardMaking.Way;
import hutchleaf.sheet.CardSheet;
import hutchleaf.sheet.Paper;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Cards of every size, made in every way, read back from finished PDFs of seeded decks. */
final class CardFormsTest {
    private static final double SAME = 0.05;

    /** Nothing is printed closer to the edge of the sheet: a printer for the home leaves 6.7 mm blank (its data sheet). */
    private static final double EDGE = 7;

    /** A cutter wanders by up to 3 mm in all (a die-line handbook). */
    private static final double SAFE = 3;

    /** Half a line of 0.35 mm and the soft edge of its dots. */
    private static final double LINE = 0.4;

    /** A drawn line is moved to the next dot: by half a dot of 150 to the inch at most. */
    private static final double HALF_A_DOT = 0.09;

    static Stream<CardForm> forms() {
        List<CardForm> all = new ArrayList<>();
        for (CardFormat format : CardFormat.values()) {
            for (Way way : Way.values()) {
                for (Turn turn : Turn.values()) {
                    all.add(new CardForm(format, new CardMaking(way, turn)));
                }
            }
        }
        return all.stream();
    }

    private static Edition senior() {
        return RealTree.edition(Level.SENIOR);
    }

    /** Some cards without pictures: a whole sheet, and a part of another that has empty places. */
    private static List<Card> seeded(CardSheet sheet, long seed) {
        List<Card> all = new ArrayList<>(senior().deck().stream()
                .filter(card -> card.picture().isEmpty())
                .filter(card -> card.answer().plain().length() < 60)
                .toList());
        Random random = new Random(seed);
        Collections.shuffle(all, random);
        return all.subList(0, sheet.cards() + 1 + random.nextInt(Math.max(1, sheet.cards() - 1)));
    }

    private static double width(Paper paper) {
        return paper == Paper.A4 ? 297 : 11 * 25.4;
    }

    private static double height(Paper paper) {
        return paper == Paper.A4 ? 210 : 8.5 * 25.4;
    }

    /** A code as it stands on a sheet: its place, and which way its line runs and its feet point. */
    private record Spot(double x, double y, double right, double down) {
        Spot mirroredOnUpright(double line) {
            return new Spot(2 * line - x, y, -right, down);
        }

        Spot mirroredOnLevel(double line) {
            return new Spot(x, 2 * line - y, right, -down);
        }
    }

    /**
     * The sheet in the hand: the back is folded or turned behind the front by a mirror of its own, then the reader turns
     * the card by another. After both, the code of the back must stand where the code of the front stood, upright and
     * reading to the right. So both share one rectangle.
     */
    @ParameterizedTest
    @MethodSource("forms")
    void inTheHandTheBackOfEveryCardStandsUprightInItsFrontsRectangle(CardForm form) {
        for (Paper paper : Paper.values()) {
            CardSheet sheet = form.on(paper);
            long seed = (form.format().word() + paper + form.making().way().word()).hashCode();
            List<Card> deck = seeded(sheet, seed);
            List<Run> runs = PdfGlyphs.of(RealTree.cards(senior(), deck, form, paper, false));
            boolean two = form.making().way().twoSided();
            assertThat(runs.stream().mapToInt(Run::page).max()).hasValue(sheet.sheets(deck.size()) * (two ? 2 : 1));
            for (int index = 0; index < deck.size(); index++) {
                String code = deck.get(index).code().toString();
                int page = 1 + index / sheet.cards() * (two ? 2 : 1);
                Box box = sheet.front(index % sheet.cards());
                List<Run> codes = codes(runs, code, page, two);
                assertThat(codes)
                        .as("card %s of %s, seed %d", code, sheet, seed)
                        .hasSize(2);
                Run front = codes.stream()
                        .filter(run -> run.page() == page && on(run, box))
                        .findFirst()
                        .orElseThrow(() -> new AssertionError("no front of card " + code + " on " + box));
                Run back = codes.get(1 - codes.indexOf(front));
                Spot turned = turned(
                        behind(back, form.making().way(), paper, box),
                        form.making().turn(),
                        box);
                String what = "the back of card " + code + " in the hand, " + sheet + ", seed " + seed;
                assertThat(turned.right()).as(what + " reads to the right").isCloseTo(1, within(0.001));
                assertThat(turned.down()).as(what + " is upright").isCloseTo(1, within(0.001));
                assertThat(turned.x()).as(what + ", x").isCloseTo(front.x(), within(SAME));
                assertThat(turned.y()).as(what + ", y").isCloseTo(front.y(), within(SAME));
            }
        }
    }

    private static boolean on(Run run, Box box) {
        return run.x() > box.x().mm()
                && run.x() < box.right().mm()
                && run.y() > box.y().mm()
                && run.y() < box.bottom().mm();
    }

    /** Both codes of a card; no seeded text holds one. */
    private static List<Run> codes(List<Run> runs, String code, int page, boolean two) {
        return runs.stream()
                .filter(run -> run.text().equals(code))
                .filter(run -> run.page() == page || (two && run.page() == page + 1))
                .toList();
    }

    /** Where the printed back lies behind the sheet, as one would see it through the paper from the front. */
    private static Spot behind(Run back, Way way, Paper paper, Box front) {
        // A line that runs to the left is upside down: it is turned by 180 degrees, never mirrored.
        Spot printed = new Spot(back.x(), back.y(), back.right(), back.right());
        return switch (way) {
            case FOLD_SHEET, SHORT_EDGE -> printed.mirroredOnUpright(width(paper) / 2);
            case FOLD_CARD -> printed.mirroredOnUpright(front.right().mm());
            // The long edge of a sheet held sideways lies level.
            case LONG_EDGE -> printed.mirroredOnLevel(height(paper) / 2);
        };
    }

    /** The reader turns the card: a page on an upright line, up on a level one, through the card's middle. */
    private static Spot turned(Spot spot, Turn turn, Box front) {
        return switch (turn) {
            case PAGE -> spot.mirroredOnUpright((front.x().mm() + front.right().mm()) / 2);
            case UP -> spot.mirroredOnLevel((front.y().mm() + front.bottom().mm()) / 2);
        };
    }

    @ParameterizedTest
    @MethodSource("forms")
    void noInkStandsNearTheEdgeOfTheSheetOrACut(CardForm form) {
        for (Paper paper : Paper.values()) {
            CardSheet sheet = form.on(paper);
            List<Card> deck = illustrated(form.format(), sheet.cards());
            byte[] pdf = RealTree.cards(senior(), deck, form, paper, true);
            boolean two = form.making().way().twoSided();
            int tells = two ? 2 : 1;
            List<PdfRaster> pages = new ArrayList<>();
            for (int page = 1; page <= tells + (two ? 2 : 1); page++) {
                pages.add(PdfRaster.of(pdf, page));
            }
            pages.forEach(page -> staysOnThePrintableArea(page, sheet.toString()));
            for (int place = 0; place < deck.size(); place++) {
                keepsItsDistance(pages.get(tells), sheet.front(place), sheet + ", front " + place);
                keepsItsDistance(pages.get(pages.size() - 1), sheet.back(place), sheet + ", back " + place);
                isOutlined(pages.get(tells), sheet.front(place), form.making().way(), sheet + ", front " + place);
            }
        }
    }

    /** As many cards as a sheet holds, pictures first. */
    private static List<Card> illustrated(CardFormat format, int many) {
        Edition edition = senior();
        return Stream.concat(
                        edition.deck().stream()
                                .filter(card -> card.picture().isPresent())
                                .limit(30),
                        edition.deck().stream().limit(30))
                .distinct()
                .filter(card -> {
                    Problems narrow = new Problems();
                    CardPapers.checkPictures(edition, List.of(card), format, narrow);
                    return narrow.isEmpty();
                })
                .limit(many)
                .toList();
    }

    private static List<Card> longest(int many) {
        return senior().deck().stream()
                .filter(card -> card.picture().isEmpty())
                .sorted((one, other) ->
                        other.answer().plain().length() - one.answer().plain().length())
                .limit(many)
                .toList();
    }

    private static void staysOnThePrintableArea(PdfRaster page, String what) {
        double in = EDGE - 0.1;
        assertThat(page.ink(0, 0, page.width(), in)).as(what + ", upper edge").isZero();
        assertThat(page.ink(0, page.height() - in, page.width(), page.height()))
                .as(what + ", lower edge")
                .isZero();
        assertThat(page.ink(0, 0, in, page.height())).as(what + ", left edge").isZero();
        assertThat(page.ink(page.width() - in, 0, page.width(), page.height()))
                .as(what + ", right edge")
                .isZero();
    }

    /** A ring inside the face, from the cut's own line to 3 mm, is blank. */
    private static void keepsItsDistance(PdfRaster page, Box face, String what) {
        double left = face.x().mm() + LINE;
        double top = face.y().mm() + LINE;
        double right = face.right().mm() - LINE;
        double bottom = face.bottom().mm() - LINE;
        double deep = SAFE - LINE - 0.1;
        assertThat(page.ink(left, top, left + deep, bottom)).as(what + ", left").isZero();
        assertThat(page.ink(right - deep, top, right, bottom))
                .as(what + ", right")
                .isZero();
        assertThat(page.ink(left, top, right, top + deep)).as(what + ", top").isZero();
        assertThat(page.ink(left, bottom - deep, right, bottom))
                .as(what + ", bottom")
                .isZero();
        assertThat(page.ink(left, top, right, bottom)).as(what + " holds ink").isPositive();
    }

    /** Solid lines where it is cut, a dashed one where it is folded, each on the very edge of the face. */
    private static void isOutlined(PdfRaster page, Box face, Way way, String what) {
        double left = face.x().mm();
        double right = face.right().mm();
        double top = face.y().mm();
        double bottom = face.bottom().mm();
        isCut(page.level(top, left + 1, right - 1), top, what + ", upper cut");
        isCut(page.level(bottom, left + 1, right - 1), bottom, what + ", lower cut");
        isCut(page.upright(left, top + 1, bottom - 1), left, what + ", left cut");
        PdfRaster.Line last = page.upright(right, top + 1, bottom - 1);
        if (way == Way.FOLD_CARD || (way == Way.FOLD_SHEET && right > page.width() / 2 - 1)) {
            assertThat(last.at()).as(what + ", fold").isCloseTo(right, within(HALF_A_DOT));
            assertThat(last.drawn()).as(what + ", fold").isBetween(0.15, 0.3);
        } else {
            isCut(last, right, what + ", right cut");
        }
    }

    private static void isCut(PdfRaster.Line line, double at, String what) {
        assertThat(line.at()).as(what).isCloseTo(at, within(HALF_A_DOT));
        assertThat(line.drawn()).as(what).isCloseTo(0.35, within(0.05));
    }

    /** Words of a head end before its mark; words of a foot, and the line for initials, stand clear of each other. */
    @ParameterizedTest
    @EnumSource
    void nothingOnACardTouchesItsNeighbour(CardFormat format) {
        CardForm form = CardForm.usual(format);
        CardSheet sheet = form.on(Paper.LETTER);
        CardFace face = CardFace.of(format);
        List<Card> cards = labelled();
        for (int from = 0; from < cards.size(); from += sheet.cards()) {
            List<Card> some = cards.subList(from, Math.min(cards.size(), from + sheet.cards()));
            byte[] pdf = RealTree.cards(senior(), some, form, Paper.LETTER, false);
            PdfRaster page = PdfRaster.of(pdf, 1);
            List<Word> words = PdfWords.of(pdf);
            for (int place = 0; place < some.size(); place++) {
                for (Box side : List.of(sheet.front(place), sheet.back(place))) {
                    standsClear(page, words, side, face, some.get(place).code() + " " + format);
                }
            }
        }
    }

    /** Cards with the longest topics and of every level. */
    private static List<Card> labelled() {
        return Stream.of(Level.values())
                .flatMap(level -> senior().deck().stream()
                        .filter(card ->
                                card.picture().isEmpty() && card.levels().from() == level)
                        .sorted(Comparator.comparing((Card card) ->
                                -Shortened.ems(senior().groupTitle(card.code().group()))))
                        .limit(6))
                .toList();
    }

    private static void standsClear(PdfRaster page, List<Word> words, Box side, CardFace face, String what) {
        double mark = side.right().mm() - face.inset() - 2 * face.head().half();
        double rule = side.y().mm() + face.head().rule();
        List<Word> own = words.stream()
                .filter(word ->
                        word.x() > side.x().mm() && word.x() < side.right().mm())
                .filter(word ->
                        word.y() > side.y().mm() && word.y() < side.bottom().mm())
                .toList();
        assertThat(own).as(what).isNotEmpty();
        assertThat(own.stream().filter(word -> word.y() < rule))
                .as(what + ", head")
                .allSatisfy(word -> assertThat(word.x() + word.width()).isLessThan(mark - 0.4));
        if (face.foot().size() == 0) {
            return;
        }
        List<Word> foot = own.stream()
                .filter(word -> word.y() > side.y().mm() + face.foot().top())
                .sorted(Comparator.comparing(Word::x))
                .toList();
        for (int i = 1; i < foot.size(); i++) {
            assertThat(foot.get(i).x() - foot.get(i - 1).x() - foot.get(i - 1).width())
                    .as("%s, between %s and %s", what, foot.get(i - 1), foot.get(i))
                    .isGreaterThan(0.6);
        }
        foot.stream().filter(word -> word.text().equals("initials")).forEach(word -> {
            Word last = foot.get(foot.size() - 1);
            double end = word.x() + word.width();
            assertThat(page.ink(end + 0.1, word.y() - 2, end + 0.4, word.y() + 2))
                    .as(what + ", after initials")
                    .isZero();
            assertThat(page.ink(last.x() - 0.8, word.y() - 2, last.x() - 0.2, word.y() + 2))
                    .as(what + ", before " + last.text())
                    .isZero();
        });
    }

    /** 18 pt is what large print starts at (guides for readers with low vision, from memory). */
    @ParameterizedTest
    @EnumSource
    void allOfALargePrintDeckIsSetIn18PointOrMore(Way way) {
        CardForm form = new CardForm(CardFormat.LARGE_PRINT, new CardMaking(way, Turn.UP));
        List<Card> cards = new ArrayList<>(longest(8));
        cards.addAll(illustrated(CardFormat.LARGE_PRINT, 8));
        assertThat(PdfGlyphs.of(RealTree.cards(senior(), cards, form, Paper.A4, true)))
                .isNotEmpty()
                .allSatisfy(run -> assertThat(run.size()).as(run.toString()).isGreaterThan(17.95));
    }

    /** Cards are set in 10 pt or more, an index card's words in 12; signs and notes in 9.5 (own rule). */
    @ParameterizedTest
    @EnumSource
    void noTypeIsSmallerThanItsFloor(CardFormat format) {
        CardForm form = CardForm.usual(format);
        assertThat(PdfGlyphs.of(RealTree.cards(senior(), longest(12), form, Paper.LETTER, false)))
                .allSatisfy(run -> assertThat(run.size()).as(run.toString()).isGreaterThan(9.45));
    }

    @Test
    void aSmallCardHasACodeOf10PointAndNoTopic() {
        List<Card> cards = illustrated(CardFormat.SMALL, 3);
        CardForm form = CardForm.usual(CardFormat.SMALL);
        List<Run> runs = PdfGlyphs.of(RealTree.cards(senior(), cards, form, Paper.LETTER, false));
        for (Card card : cards) {
            assertThat(runs.stream().filter(run -> run.text().equals(card.code().toString())))
                    .hasSize(2)
                    .allSatisfy(run -> assertThat(run.size()).isCloseTo(10, within(0.05)));
        }
        assertThat(runs).noneMatch(run -> run.text().equals("initials"));
        assertThat(runs.stream().filter(run -> run.text().equals("question"))).hasSize(cards.size());
        assertThat(runs)
                .noneMatch(run -> run.text()
                        .equals(senior().groupTitle(cards.get(0).code().group())));
    }

    static Stream<CardForm> everySizeAndEveryWay() {
        return Stream.concat(
                Stream.of(CardFormat.values()).map(CardForm::usual),
                forms().filter(form -> form.format() == CardFormat.STANDARD));
    }

    @ParameterizedTest
    @MethodSource("everySizeAndEveryWay")
    void everyWayOfMakingIsPdfUa(CardForm form) {
        byte[] pdf = RealTree.cards(senior(), illustrated(form.format(), 5), form, Paper.A4, true);
        assertThat(PdfUa.violations(pdf)).as(form.toString()).isEmpty();
    }

    /** ISO 32000-1, 14.11.2: the trim box is the finished page. Sheets that are cut flat have the grid, the others stay whole. */
    @ParameterizedTest
    @EnumSource
    void theTrimBoxIsWhatIsLeftOfASheetThatIsCutFlat(Way way) throws IOException {
        CardForm form = new CardForm(CardFormat.INDEX, new CardMaking(way, Turn.PAGE));
        byte[] pdf = RealTree.cards(senior(), illustrated(CardFormat.INDEX, 2), form, Paper.LETTER, true);
        int tells = way.twoSided() ? 2 : 1;
        try (PDDocument document = Loader.loadPDF(pdf)) {
            for (int page = 0; page < document.getNumberOfPages(); page++) {
                PDRectangle media = document.getPage(page).getMediaBox();
                PDRectangle trim = document.getPage(page).getTrimBox();
                assertThat(document.getPage(page).getCropBox().toString()).isEqualTo(media.toString());
                if (page < tells || way == Way.FOLD_SHEET) {
                    assertThat(trim.toString()).isEqualTo(media.toString());
                } else {
                    // Two index cards of 360 by 216 pt side by side, two rows, in the middle of 792 by 612 pt.
                    assertThat(trim.getLowerLeftX()).isCloseTo(36f, within(0.2f));
                    assertThat(trim.getUpperRightX()).isCloseTo(756f, within(0.2f));
                    assertThat(trim.getLowerLeftY()).isCloseTo(90f, within(0.2f));
                    assertThat(trim.getUpperRightY()).isCloseTo(522f, within(0.2f));
                }
            }
        }
    }

    /** Ring and cross of the first sheet meet where fronts and backs do. */
    @ParameterizedTest
    @EnumSource(names = {"LONG_EDGE", "SHORT_EDGE"})
    void theCrossStandsBehindItsRing(Way way) {
        CardForm form = new CardForm(CardFormat.STANDARD, new CardMaking(way, Turn.PAGE));
        byte[] pdf = RealTree.cards(senior(), illustrated(CardFormat.STANDARD, 2), form, Paper.A4, true);
        PdfRaster front = PdfRaster.of(pdf, 1);
        PdfRaster back = PdfRaster.of(pdf, 2);
        double y = 210 - 13;
        double behind = way == Way.LONG_EDGE ? 210 - y : y;
        for (double x : new double[] {20, 297 - 20}) {
            assertThat(front.upright(x - 3, y - 0.3, y + 0.3).at()).as("ring").isCloseTo(x - 3, within(0.15));
            assertThat(front.ink(x - 2, y - 1, x + 2, y + 1))
                    .as("inside the ring")
                    .isZero();
            double seen = way == Way.LONG_EDGE ? x : 297 - x;
            assertThat(back.level(behind, seen + 0.5, seen + 2).at())
                    .as("cross")
                    .isCloseTo(behind, within(HALF_A_DOT));
            assertThat(back.upright(seen, behind + 0.5, behind + 2).at())
                    .as("cross")
                    .isCloseTo(seen, within(HALF_A_DOT));
        }
    }
}

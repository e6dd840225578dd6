package hutchleaf.page;

import hutchleaf.edition.Edition;
import hutchleaf.model.Block;
import hutchleaf.model.Card;
import hutchleaf.model.Level;
import hutchleaf.model.Levels;
import hutchleaf.page.DeckView.At;
import hutchleaf.page.DeckView.CardView;
import hutchleaf.page.DeckView.SheetView;
import hutchleaf.rabbit.OwnCards;
import hutchleaf.sheet.Box;
import hutchleaf.sheet.CardFormat;
import hutchleaf.sheet.CardMaking;
import hutchleaf.sheet.CardSheet;
import hutchleaf.sheet.Paper;
import java.util.ArrayList;
import java.util.List;

/** Lays a level's cards out on fold-over sheets. */
final class DeckPages {
    /** A longer code takes room from the topic. */
    private static final int LONGEST_CODE = 5;

    /** In millimetres. */
    private static final double POINT = 25.4 / 72;

    private final Edition edition;
    private final List<Card> deck;
    private final Markup markup;
    private final CardSheet sheet;
    private final CardFace face;

    private DeckPages(Edition edition, List<Card> deck, CardSheet sheet) {
        this.edition = edition;
        this.deck = deck;
        this.markup = GuidePages.markup(edition);
        this.sheet = sheet;
        this.face = CardFace.of(sheet.format());
    }

    static DeckView of(Edition edition, List<Card> deck, DeckPart part, CardSheet sheet) {
        return new DeckPages(edition, deck, sheet).view(part);
    }

    /** The size that a level's cards have where none is asked for. */
    static CardFormat usual(Level level) {
        return level == Level.PRIMARY ? CardFormat.PRIMARY : CardFormat.STANDARD;
    }

    private DeckView view(DeckPart part) {
        Paper paper = sheet.paper();
        List<SheetView> sheets = new ArrayList<>();
        for (int from = 0; from < deck.size(); from += sheet.cards()) {
            List<CardView> cards = new ArrayList<>();
            for (int place = 0; place < sheet.cards() && from + place < deck.size(); place++) {
                cards.add(card(deck.get(from + place), place));
            }
            sheets.add(new SheetView(sheets.size() + 1, cards));
        }
        Box first = sheet.front(0);
        DeckView.Grid grid = new DeckView.Grid(
                sheet.cardWidth().mm(),
                sheet.cardHeight().mm(),
                sheet.columns(),
                sheet.rows(),
                sheet.middle().mm(),
                first.x().mm(),
                first.y().mm(),
                sheet.backGrid().y().mm());
        int core = (int)
                deck.stream().filter(card -> card.need() == Card.Need.CORE).count();
        return new DeckView(
                Look.of(edition.level(), paper),
                paper.height().mm(),
                paper.width().mm(),
                grid,
                deck.size(),
                core,
                part,
                form(),
                face,
                sheets);
    }

    private DeckView.Form form() {
        CardMaking making = sheet.making();
        return new DeckView.Form(
                sheet.format().word(),
                making.equals(CardMaking.USUAL),
                making.way().word(),
                making.turn() == CardMaking.Turn.UP,
                making.turnsBacks(),
                making.way().twoSided(),
                sheet.format() == CardFormat.LARGE_PRINT,
                making.way().axis() == CardMaking.Axis.LEVEL);
    }

    private CardView card(Card card, int place) {
        return new CardView(
                card.code().toString(),
                shortened(title(card), card.code().toString().length()),
                card.levels().from().blackToes(),
                card.levels().from().word(),
                label(card.levels()),
                card.need() == Card.Need.CORE,
                markup.write(card.question()),
                card.picture().map(this::picture),
                markup.write(card.answer()),
                card.at().toString(),
                at(sheet.front(place)),
                at(sheet.back(place)));
    }

    private String title(Card card) {
        return card.code().group() == OwnCards.GROUP
                ? "My rabbit"
                : edition.groupTitle(card.code().group());
    }

    private DeckView.CardPicture picture(Block.Picture picture) {
        return CardFigure.of(edition.library().tables().drawings(), face, picture);
    }

    private static String label(Levels levels) {
        return levels.from() == levels.to()
                ? levels.from().word()
                : "from " + levels.from().word();
    }

    /** The topic's name as far as it fits on a card: whole words, no dots. */
    private String shortened(String title, int code) {
        CardFace.Head head = face.head();
        double room = (code > LONGEST_CODE ? head.longWidth() : head.topicWidth()) / (head.topic() * POINT);
        String cut = title;
        while (Shortened.ems(cut) > room && cut.indexOf(' ') > 0) {
            cut = cut.substring(0, cut.lastIndexOf(' '));
        }
        return cut.equals(title) ? title : cut.replaceAll("(,| and| or| of| the| a| in| on| by)+$", "");
    }

    private static At at(Box box) {
        return new At(box.x().mm(), box.y().mm());
    }
}

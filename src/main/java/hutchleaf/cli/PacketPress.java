package hutchleaf.cli;

import hutchleaf.edition.Edition;
import hutchleaf.edition.Packet;
import hutchleaf.model.Card;
import hutchleaf.model.CardCode;
import hutchleaf.model.Level;
import hutchleaf.model.Member;
import hutchleaf.model.Setting;
import hutchleaf.page.CardPapers;
import hutchleaf.page.DeckPart;
import hutchleaf.page.Manuscript;
import hutchleaf.page.PacketPapers;
import hutchleaf.page.Publications;
import hutchleaf.page.Spelled;
import hutchleaf.press.Merge;
import hutchleaf.press.Press;
import hutchleaf.press.Printed;
import hutchleaf.problem.Problems;
import hutchleaf.sheet.CardForm;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Prints packets on one thread, with a press of its own and the parts that all threads share. */
final class PacketPress {
    static final String READ = "1-read.pdf";
    static final String BOOKLET = "1-booklet.pdf";
    static final String STACK = "1-booklet-one-side.pdf";
    static final String POCKET = "1-pocket.pdf";
    static final String CARDS = "2-cards.pdf";
    static final String SHEETS = "3-sheets.pdf";
    static final String GUIDE = "4-guide.pdf";
    static final String TALK_THROUGH = "5-talk-through.pdf";
    static final String CUE_CARD = "6-cue-card.pdf";

    private record CardsKey(Level level, Setting setting, List<CardCode> codes, int before) {}

    private record PartKey(Level level, Setting setting, String part) {}

    private record SheetsKey(Level studied, Level division, Setting setting) {}

    private final Publications publications;
    private final Press press;
    private final SharedParts shared;
    private final Map<Level, Edition> editions;
    private final Optional<BookletSheets> booklet;
    private final PrinterSetting printer;
    private final Problems problems = new Problems();

    /**
     * @param press for this thread alone
     * @param editions of every level, for the judge's paper of a division that is not the level studied
     * @param booklet the reading pages as a booklet
     * @param printer for which the cards are corrected
     */
    PacketPress(
            Publications publications,
            Press press,
            SharedParts shared,
            Map<Level, Edition> editions,
            Optional<BookletSheets> booklet,
            PrinterSetting printer) {
        this.publications = publications;
        this.press = press;
        this.shared = shared;
        this.editions = editions;
        this.booklet = booklet;
        this.printer = printer;
    }

    Problems problems() {
        return problems;
    }

    /**
     * The files of a packet by name; fewer where a problem was added.
     *
     * @param cards what it holds beside the member's own cards
     */
    Map<String, Printed> print(Packet packet, List<Card> cards, boolean withGuide) {
        Map<String, Printed> files = new LinkedHashMap<>();
        // Large print and easy read have no room on half a sheet.
        booklet.filter(sheets -> packet.needs().setting() == Setting.ORDINARY)
                .ifPresentOrElse(
                        sheets -> booklet(packet, sheets, files),
                        () -> print(publications.packets().read(packet, problems))
                                .ifPresent(pdf -> files.put(READ, pdf)));
        cards(packet, cards).ifPresent(pdf -> files.put(CARDS, pdf));
        sheets(packet).ifPresent(pdf -> files.put(SHEETS, pdf));
        if (withGuide) {
            guide(packet).ifPresent(pdf -> files.put(GUIDE, pdf));
        }
        if (packet.needs().talkThrough()) {
            print(publications.help().talkThrough(packet, problems)).ifPresent(pdf -> files.put(TALK_THROUGH, pdf));
        }
        if (packet.needs().cueCard()) {
            print(publications.help().cueCard(packet, problems)).ifPresent(pdf -> files.put(CUE_CARD, pdf));
        }
        return files;
    }

    private void booklet(Packet packet, BookletSheets sheets, Map<String, Printed> files) {
        String title = "Show booklet for " + whose(packet) + ": sheets to fold";
        String file = switch (sheets.binding()) {
            case NESTED -> BOOKLET;
            case STACKED -> STACK;
        };
        print(publications.packets().booklet(packet, problems))
                .map(pages -> sheets.of(
                        publications.spelled().text(title),
                        publications.spelled().language(),
                        pages,
                        file,
                        problems))
                .ifPresent(pdf -> files.put(file, pdf));
        print(publications.packets().pocketSheet(packet, problems)).ifPresent(pdf -> files.put(POCKET, pdf));
    }

    private Optional<Printed> print(Optional<Manuscript> manuscript) {
        return manuscript.flatMap(pages -> press.print(pages, problems));
    }

    private Optional<Printed> cards(Packet packet, List<Card> cards) {
        Edition edition = packet.edition();
        Setting setting = packet.needs().setting();
        CardForm form = CardPapers.usualForm(edition.level(), setting);
        int own = publications.cards().sheets(form, packet.ownCards().size());
        int others = publications.cards().sheets(form, cards.size());
        String whose = packet.member().map(Member::firstName).orElse("Any rabbit");
        String name = whose + (packet.member().isPresent() ? "\u2019s own cards" : " cards");
        Optional<Printed> first = corrected(publications
                .cards()
                .some(edition, packet.ownCards(), form, new DeckPart(name, 0, others, false), problems));
        if (cards.isEmpty()) {
            return first;
        }
        List<CardCode> codes = cards.stream().map(Card::code).toList();
        DeckPart rest = new DeckPart(edition.level().title() + " deck", own, 0, false);
        Optional<Printed> second = shared.get(
                new CardsKey(edition.level(), setting, codes, own),
                () -> corrected(publications.cards().some(edition, cards, form, rest, problems)));
        return first.flatMap(mine -> second.map(theirs -> Merge.of(
                Spelled.plain("Cards for " + whose(packet)),
                publications.spelled().language(),
                List.of(mine, theirs))));
    }

    /** Cards stand on one side of each sheet. */
    private Optional<Printed> corrected(Optional<Manuscript> manuscript) {
        return print(manuscript).map(pages -> printer.correct(pages, Optional.empty(), CARDS, problems));
    }

    private static String whose(Packet packet) {
        return packet.member().map(Member::name).orElse("any rabbit");
    }

    /** What to watch for and to label at the level studied, then the score sheet of the division. */
    private Optional<Printed> sheets(Packet packet) {
        Level studied = packet.edition().level();
        Level division = packet.division();
        Setting setting = packet.needs().setting();
        Optional<Printed> score = shared.get(new PartKey(division, setting, "score"), () -> score(packet, division));
        Optional<Printed> common =
                shared.get(new PartKey(studied, setting, "sheets"), () -> common(packet.edition(), setting));
        return shared.get(
                new SheetsKey(studied, division, setting),
                () -> common.flatMap(pages -> score.map(sheet -> Merge.of(
                        studied.title() + " practice sheets",
                        publications.spelled().language(),
                        List.of(pages, sheet)))));
    }

    private Optional<Printed> score(Packet packet, Level division) {
        Edition edition = editions.getOrDefault(division, packet.edition());
        String club = packet.club().name();
        Publications set = publications.in(packet.needs().setting());
        return print(
                division == Level.PRIMARY
                        ? set.wentWell(edition, club, problems)
                        : set.scoreSheet(edition, club, problems));
    }

    /** Laid out twice: the first time tells how many pages there are. Where pages flow, the score sheet has its own count. */
    private Optional<Printed> common(Edition edition, Setting setting) {
        PacketPapers papers = publications.packets();
        Optional<Printed> counted = print(papers.sheets(edition, setting, 0, problems));
        return setting == Setting.ORDINARY
                ? counted.flatMap(first -> print(papers.sheets(edition, setting, first.pages() + 1, problems)))
                : counted;
    }

    private Optional<Printed> guide(Packet packet) {
        Edition edition = packet.edition();
        return shared.get(
                new PartKey(edition.level(), packet.needs().setting(), "guide"),
                () -> print(publications.guide(
                        edition, packet.club().name(), packet.needs().setting(), problems)));
    }
}

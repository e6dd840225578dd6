package hutchleaf.page;

import java.util.List;
import java.util.Optional;

/**
 * What the template of the print plan sees. Amounts are written out; all of a column have the same decimals.
 *
 * @param groups of files, a heavy rule between them
 * @param time what the printer takes, with the sum
 * @param toner what it takes of a cartridge, where the ink of files was measured
 * @param labels rows of two, a list for each page
 * @param checks what to try before the whole is printed
 */
record PrintPlanView(
        Look look,
        Head head,
        List<Group> groups,
        Sums sums,
        List<PaperLine> papers,
        String time,
        Optional<String> toner,
        List<Step> steps,
        List<MemberRow> members,
        MemberSums memberSums,
        List<ShowClass> classes,
        List<LabelPage> labels,
        List<String> checks,
        List<String> warnings) {
    /** @param uses sheets by whom they are for, a sentence */
    record Head(String club, String line, int sheets, String cost, String time, String uses) {}

    record Group(List<Row> rows) {}

    /** @param after the sign's key */
    record Row(
            String title,
            String path,
            int pages,
            String sides,
            String paper,
            int copies,
            int sheets,
            String after,
            String words,
            String cost,
            Optional<Black> black) {}

    /** How much of a page is black, in a hundred, with one decimal. */
    record Black(String mean, String most) {}

    /** @param sheets of the rows; all: with the spare ones */
    record Sums(String currency, int sheets, String cost, List<Spare> spare, int all, String allCost) {}

    record Spare(String words, int sheets, String cost) {}

    record PaperLine(
            String name, int sheets, int spare, int all, String packs, String price, String cost, String weight) {}

    /** What to do with one kind of sheets. */
    record Step(String after, String words, String how) {}

    /** @param folds whether something of theirs is folded; cuts likewise */
    record MemberRow(
            int number,
            String name,
            String division,
            String files,
            int sheets,
            int cards,
            boolean folds,
            boolean cuts) {}

    record MemberSums(int sheets, int cards) {}

    /** @param words its level, where the division has another name, and how many show */
    record ShowClass(String division, int toes, String words, List<Entry> entries) {}

    record Entry(int number, String member, String rabbit, String breed, Optional<String> ear) {}

    record LabelPage(List<LabelRow> rows) {}

    record LabelRow(List<Label> labels) {}

    record Label(int number, String name, String rabbit, String division, int toes) {}
}

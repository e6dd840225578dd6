package hutchleaf.page;

import hutchleaf.model.Level;
import hutchleaf.sheet.InkUse;
import hutchleaf.sheet.PrintJob;
import hutchleaf.sheet.PrintRates;
import hutchleaf.sheet.Sides;
import hutchleaf.sheet.Stock;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What a leader's print plan is made from.
 *
 * @param files to print; printed in the order of {@link Use}, and of this list within it
 * @param members in the order of showing, the youngest division first, each division in one piece
 * @param warnings about the roster, a sentence each, to settle before anything is printed
 */
public record PrintPlanData(Show show, Rates rates, List<File> files, List<MemberLine> members, List<String> warnings) {
    /**
     * The show that is printed for.
     *
     * @param date as it is printed, for example {@code 8 August 2026}
     */
    public record Show(String club, String name, String date) {}

    /**
     * Every rate is printed, so that every sum can be checked.
     *
     * @param currency a sign or a code that stands before an amount; may be empty
     */
    public record Rates(String currency, PrintRates counted) {}

    /** Whom a file is for. */
    public enum Use {
        /** One copy for each member whose line names it. */
        MEMBERS,
        CLUB,
        JUDGE
    }

    /** What is done with printed sheets. */
    public enum After {
        STAPLE("staple"),
        BOOKLET("fold, staple the fold"),
        STACK("fold each, staple the left"),
        FOLD("fold for the pocket"),
        CARDS("fold, glue, cut"),
        CUT("cut apart"),
        BINDER("club binder"),
        LOOSE("leave loose");

        private final String words;

        After(String words) {
            this.words = words;
        }

        String words() {
            return words;
        }
    }

    /**
     * A file, or files of one length that are printed alike.
     *
     * @param path under the folder of results, unlike any other of the plan
     * @param pages of one copy
     * @param ink of all copies; empty where it was not measured
     */
    public record File(
            String title,
            String path,
            Use use,
            int pages,
            Sides sides,
            Stock stock,
            int copies,
            After after,
            Optional<InkUse> ink) {
        /** A file whose ink was not measured. */
        public File(String title, String path, Use use, int pages, Sides sides, Stock stock, int copies, After after) {
            this(title, path, use, pages, sides, stock, copies, after, Optional.empty());
        }

        PrintJob job() {
            return new PrintJob(title, pages, sides, stock, copies, after.words());
        }
    }

    /**
     * One member.
     *
     * @param number as a contestant
     * @param division as the rule set calls it
     * @param files the member's copies, by their paths in the plan
     * @param cards in the member's deck
     */
    public record MemberLine(
            int number, String name, String division, Level level, Shown rabbit, List<String> files, int cards) {
        public MemberLine {
            files = List.copyOf(files);
        }
    }

    /**
     * The rabbit that a member shows.
     *
     * @param ear number in the left ear; empty leaves a line to write it on
     */
    public record Shown(String name, String breed, Optional<String> ear) {}

    /**
     * Checks that members and files agree.
     *
     * @throws IllegalArgumentException where a member's line names a file that is not in the plan, or a file for
     *     members has more or fewer copies than lines that name it: its sums would not agree
     */
    public PrintPlanData {
        files = List.copyOf(files);
        members = List.copyOf(members);
        warnings = List.copyOf(warnings);
        Set<String> paths = files.stream().map(File::path).collect(Collectors.toSet());
        for (MemberLine member : members) {
            for (String path : member.files()) {
                if (!paths.contains(path)) {
                    throw new IllegalArgumentException(member.name() + " gets " + path + ", which is not in the plan");
                }
            }
        }
        for (File file : files) {
            long named = members.stream()
                    .filter(member -> member.files().contains(file.path()))
                    .count();
            if (file.use() == Use.MEMBERS && named != file.copies()) {
                throw new IllegalArgumentException(
                        file.copies() + " copies of " + file.path() + " for " + named + " members");
            }
        }
    }
}

package hutchleaf.club;

import static java.util.stream.Collectors.joining;

import hutchleaf.contest.Samples;
import hutchleaf.model.Library;
import hutchleaf.model.Member;
import hutchleaf.problem.Problem;
import hutchleaf.problem.Problems;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A club's folder that a test writes and reads back. Messages name it {@code club}. */
final class Folder {
    static final Library LIBRARY = Samples.library();

    /** A week before the demo's study starts. */
    static final LocalDate TODAY = LocalDate.of(2026, 6, 20);

    static final String CLUB = """
            ---
            name: Quarry Bend Small Stock Club
            show-date: 2026-08-08
            rule-set: age in September
            ---
            Dear members.
            """;

    private final Path folder;
    private String club = CLUB;

    Folder(Path folder) {
        this.folder = folder;
    }

    /** What came of reading: every line a leader would see. */
    record Read(Optional<Roster> roster, List<String> problems, List<String> bad) {
        List<Member> members() {
            return roster.orElseThrow(() -> new AssertionError(problems)).members();
        }

        Member only() {
            if (members().size() != 1) {
                throw new AssertionError(members().size() + " members; " + problems + bad);
            }
            return members().get(0);
        }
    }

    Folder club(String text) {
        club = text;
        return this;
    }

    /** The usual club with another rule set. */
    Folder ruleSet(String ruleSet) {
        return club(CLUB.replace("age in September", ruleSet));
    }

    /** The usual club with more lines in its front matter, which start at line 5. */
    Folder keys(String lines) {
        return club(CLUB.replace("September\n", "September\n" + lines + "\n"));
    }

    Read members(String text) {
        return members(text.getBytes(StandardCharsets.UTF_8));
    }

    Read members(byte[] bytes) {
        try {
            Files.writeString(folder.resolve("club.md"), club);
            Files.write(folder.resolve("members.csv"), bytes);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
        return read(folder, "club", TODAY);
    }

    static Read read(Path folder, String shownName, LocalDate today) {
        Problems problems = new Problems();
        Optional<Roster> roster = ClubReader.read(folder, shownName, LIBRARY, today, problems);
        return new Read(
                roster,
                problems.sorted().stream().map(Problem::toString).toList(),
                roster.stream()
                        .flatMap(read -> read.bad().stream())
                        .flatMap(bad -> bad.problems().stream())
                        .map(Problem::toString)
                        .toList());
    }

    /**
     * A file of the usual head and a row for each argument, which starts from a row without a fault.
     *
     * @param changes {@code breed=Duch; colour=blue}
     */
    static String rows(String... changes) {
        StringBuilder file = new StringBuilder(String.join(",", usual().keySet()) + "\n");
        for (String change : changes) {
            Map<String, String> row = usual();
            for (String cell : change.split(";")) {
                String[] pair = cell.strip().split("=", 2);
                if (pair.length == 2 && row.replace(pair[0], pair[1]) == null) {
                    throw new AssertionError("no column " + pair[0]);
                }
            }
            file.append(row.values().stream()
                            .map(value -> value.contains(",") ? '"' + value + '"' : value)
                            .collect(joining(",")))
                    .append('\n');
        }
        return file.toString();
    }

    private static Map<String, String> usual() {
        Map<String, String> row = new LinkedHashMap<>();
        row.put("member_name", "Fern Quillby");
        row.put("birth_date", "2016-04-25");
        row.put("grade", "");
        row.put("years_in_club", "");
        row.put("first_year_with_rabbits", "");
        row.put("study_level", "");
        row.put("rabbit_name", "Biscuit");
        row.put("breed", "Dutch");
        row.put("colour", "black");
        row.put("sex", "doe");
        row.put("rabbit_birth_date", "2025-10-01");
        row.put("ear_number", "QB1");
        row.put("weight_lb", "");
        return row;
    }
}

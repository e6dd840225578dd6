package hutchleaf.cli;

import hutchleaf.model.Member;
import hutchleaf.page.Spelled;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The contestants' numbers. They stay from one run to the next: who joins gets the next one, who leaves takes theirs along. */
final class Contestants {
    /** Where they are kept, in the folder of finished files. */
    static final String FILE = "contestants.csv";

    private static final String HEAD = "number,member";

    private static final Comparator<Member> BY_DIVISION = Comparator.comparing(
                    (Member member) -> member.division().level())
            .thenComparing(member -> member.division().name());

    private final Map<String, Integer> numbers = new LinkedHashMap<>();

    private Contestants() {}

    /** The numbers that an earlier run left in a folder, and new ones, in the order of showing, for all others. */
    static Contestants of(Path folder, List<Member> members) {
        Contestants contestants = new Contestants();
        contestants.read(folder.resolve(FILE));
        youngestFirst(members)
                .forEach(member -> contestants.numbers.computeIfAbsent(
                        member.name(),
                        name -> contestants.numbers.values().stream()
                                        .mapToInt(Integer::intValue)
                                        .max()
                                        .orElse(0)
                                + 1));
        return contestants;
    }

    /** The youngest division first, each by its numbers: who joins late shows last, and no paper in print goes wrong. */
    List<Member> inOrderOfShowing(List<Member> members) {
        return members.stream().sorted(BY_DIVISION.thenComparing(this::number)).toList();
    }

    /** The youngest division first, each in the order of the roster. */
    private static List<Member> youngestFirst(List<Member> members) {
        return members.stream().sorted(BY_DIVISION).toList();
    }

    private void read(Path file) {
        if (!Files.exists(file)) {
            return;
        }
        try {
            for (String line : Files.readAllLines(file)) {
                int comma = line.indexOf(',');
                if (comma > 0 && line.substring(0, comma).matches("\\d{1,6}")) {
                    String name =
                            line.substring(comma + 1).replaceAll("^\"|\"$", "").replace("\"\"", "\"");
                    numbers.put(name, Integer.parseInt(line.substring(0, comma)));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException("could not read " + file, e);
        }
    }

    int number(Member member) {
        return numbers.getOrDefault(Spelled.plain(member.name()), 0);
    }

    /** All numbers ever given, as the file keeps them. */
    String csv() {
        StringBuilder csv = new StringBuilder(HEAD + "\n");
        numbers.forEach((name, number) -> csv.append(number)
                .append(",\"")
                .append(name.replace("\"", "\"\""))
                .append("\"\n"));
        return csv.toString();
    }
}

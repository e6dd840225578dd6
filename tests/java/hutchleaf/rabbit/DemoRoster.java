package hutchleaf.rabbit;

import hutchleaf.model.Rabbit;
import hutchleaf.model.Sex;
import hutchleaf.problem.Place;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The rabbits of the demo club, read as plainly as can be: no doubled quotes, no line breaks in a cell. */
final class DemoRoster {
    private static final Path ROSTER = Path.of("src/main/resources/demo-club/members.csv");

    private DemoRoster() {}

    static List<Rabbit> rabbits() {
        try {
            List<String> lines = Files.readAllLines(ROSTER);
            List<String> head = cells(lines.get(0));
            List<Rabbit> rabbits = new ArrayList<>();
            for (int at = 1; at < lines.size(); at++) {
                rabbits.add(rabbit(head, cells(lines.get(at)), at + 1));
            }
            return rabbits;
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static Rabbit rabbit(List<String> head, List<String> row, int line) {
        String weight = row.get(head.indexOf("weight_lb"));
        return new Rabbit(
                row.get(head.indexOf("rabbit_name")),
                Optional.of(Samples.breed(row.get(head.indexOf("breed")))),
                coat(row.get(head.indexOf("breed")), row.get(head.indexOf("colour"))),
                Sex.valueOf(row.get(head.indexOf("sex")).toUpperCase(Locale.ROOT)),
                LocalDate.parse(row.get(head.indexOf("rabbit_birth_date"))),
                row.get(head.indexOf("ear_number")),
                Optional.of(weight).filter(written -> !written.isEmpty()).map(Samples::pounds),
                new Place("members.csv", line));
    }

    /** A black Silver Fox is black by name, and silvered all over. */
    private static Rabbit.Coat coat(String breed, String colour) {
        return breed.equals("Silver Fox")
                ? new Rabbit.Coat(colour, Optional.of(Samples.colour("silver / silver fox")), false)
                : Samples.coat(colour);
    }

    private static List<String> cells(String line) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int at = 0; at < line.length(); at++) {
            char letter = line.charAt(at);
            if (letter == '"') {
                quoted = !quoted;
            } else if (letter == ',' && !quoted) {
                cells.add(cell.toString());
                cell.setLength(0);
            } else {
                cell.append(letter);
            }
        }
        cells.add(cell.toString());
        return cells;
    }
}

package hutchleaf.bench;

import hutchleaf.cli.Main;
import java.io.IOException;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * Times whole packets with guides for clubs of growing size, and the same packets printed one by one, each from scratch:
 * {@code mvn -q -Pbench verify}. The arguments are the sizes of the clubs.
 */
public final class PacketsBenchmark {
    private static final String[] BREEDS = {
        "Dutch,black",
        "Havana,chocolate",
        "Polish,ruby-eyed white",
        "Rex,castor",
        "New Zealand,ruby-eyed white",
        "Tan,black tan",
        "English Angora,blue",
        "Himalayan,\"pointed white, black\""
    };

    /** Born in a year that puts a member into each of the four divisions. */
    private static final int[] BORN = {2019, 2016, 2013, 2010};

    private static final String CLUB = """
            ---
            name: Quarry Bend Small Stock Club
            show-date: 2026-08-08
            rule-set: age in September
            start-date: 2026-06-27
            ---
            Dear {member.first name}, practise a little every day.
            """;

    private PacketsBenchmark() {}

    public static void main(String... args) throws IOException {
        Path folder = Files.createTempDirectory("hutchleaf-bench");
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        try {
            // The first run warms the machine up and is not counted.
            seconds(club(folder, 4), folder, List.of("--with-guide"));
            double reading = alone(folder, "Nobody");
            double scratch = Arrays.stream(new int[] {0, 1, 2, 3})
                    .mapToDouble(member -> alone(folder, name(member)) - reading)
                    .average()
                    .orElseThrow();
            out.printf(
                    Locale.ROOT,
                    "%n| members' whole packets with guides | packets a second | seconds a packet | times from scratch |%n|---|---:|---:|---:|%n");
            row(out, "one by one, each from scratch", 1 / scratch, scratch, 1);
            for (String size : args) {
                int members = Integer.parseInt(size);
                double each = seconds(club(folder, members), folder, List.of("--with-guide")) / (members + 2);
                row(out, members + " members", 1 / each, each, scratch / each);
            }
            out.printf(
                    Locale.ROOT,
                    "%nHeap now %d MiB of at most %d.%n",
                    used(),
                    Runtime.getRuntime().maxMemory() >> 20);
        } finally {
            delete(folder);
        }
    }

    private static long used() {
        Runtime runtime = Runtime.getRuntime();
        return (runtime.totalMemory() - runtime.freeMemory()) >> 20;
    }

    private static void row(PrintStream out, String what, double rate, double each, double ratio) {
        out.printf(Locale.ROOT, "| %s | %.2f | %.2f | %.1f |%n", what, rate, each, ratio);
    }

    private static double alone(Path folder, String name) {
        return seconds(folder.resolve("club"), folder, List.of("--with-guide", "--only", name));
    }

    private static double seconds(Path club, Path folder, List<String> more) {
        String[] args = Stream.concat(
                        Stream.of("packets", club.toString(), "--today", "2026-06-27", "--out", folder + "/out"),
                        more.stream())
                .toArray(String[]::new);
        long start = System.nanoTime();
        StringWriter said = new StringWriter();
        int exit = Main.run(new PrintWriter(said), new PrintWriter(said), args);
        if (exit != 0 && !more.contains("Nobody")) {
            throw new IllegalStateException(said.toString());
        }
        return (System.nanoTime() - start) / 1e9;
    }

    private static Path club(Path folder, int members) throws IOException {
        Path club = Files.createDirectories(folder.resolve("club"));
        Files.writeString(club.resolve("club.md"), CLUB);
        StringBuilder rows =
                new StringBuilder("member_name,birth_date,rabbit_name,breed,colour,sex,rabbit_birth_date,ear_number\n");
        for (int member = 0; member < members; member++) {
            rows.append(String.format(
                    Locale.ROOT,
                    "%s,%d-03-0%d,Pebble %d,%s,%s,2025-1%d-05,E%d%n",
                    name(member),
                    BORN[member % BORN.length],
                    1 + member % 9,
                    member,
                    BREEDS[member % BREEDS.length],
                    member % 3 == 0 ? "buck" : "doe",
                    member % 3,
                    member));
        }
        Files.writeString(club.resolve("members.csv"), rows.toString());
        return club;
    }

    private static String name(int member) {
        return "Member " + Integer.toString(member + 36, 36);
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }
}

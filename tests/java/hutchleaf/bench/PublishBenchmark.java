package hutchleaf.bench;

import hutchleaf.cli.Main;
import java.io.IOException;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Times a whole publish, cold and warm, and a proof, and prints a Markdown table: {@code mvn -q -Pbench verify}. */
public final class PublishBenchmark {
    private static final int ROUNDS = 3;
    private static final String HEAP = "-Xmx512m";
    private static final String REPORT_PEAK = "report-peak";
    private static final Pattern ALL = Pattern.compile("(?m)^in all +(\\d+)");
    private static final Pattern PEAK = Pattern.compile("(?m)^peak bytes (\\d+)");

    private record Cold(double seconds, double peakMebibytes) {}

    private PublishBenchmark() {}

    /**
     * Runs the benchmark.
     *
     * @param args {@code report-peak} and the arguments of a run of its own; else those of each publish,
     *     without {@code --out}
     */
    public static void main(String... args) throws IOException, InterruptedException {
        if (args.length > 0 && args[0].equals(REPORT_PEAK)) {
            run(List.of(args).subList(1, args.length));
            System.out.println("peak bytes " + peakBytes());
            return;
        }
        Path folder = Files.createTempDirectory("hutchleaf-bench");
        try {
            measure(List.of(args), folder, new PrintStream(System.out, true, StandardCharsets.UTF_8));
        } finally {
            delete(folder);
        }
    }

    private static void measure(List<String> extra, Path folder, PrintStream out)
            throws IOException, InterruptedException {
        List<Cold> cold = new ArrayList<>();
        for (int round = 0; round < ROUNDS; round++) {
            cold.add(cold(arguments(extra, folder.resolve("cold-" + round)), folder.resolve("said.txt")));
        }
        int pages = 0;
        List<Double> warm = new ArrayList<>();
        // The first round warms the machine up and is not counted.
        for (int round = 0; round <= ROUNDS; round++) {
            long start = System.nanoTime();
            pages = publish(arguments(extra, folder.resolve("warm")));
            if (round > 0) {
                warm.add((System.nanoTime() - start) / 1e9);
            }
        }
        double warmSeconds = median(warm);
        out.printf(Locale.ROOT, "%n| whole publish, %d pages, %s | median of %d |%n|---|---:|%n", pages, HEAP, ROUNDS);
        row(
                out,
                "cold, from the start of the JVM",
                median(cold.stream().map(Cold::seconds).toList()),
                "s");
        row(out, "warm", warmSeconds, "s");
        row(out, "warm, pages a second", pages / warmSeconds, "");
        row(
                out,
                "peak memory, cold",
                median(cold.stream().map(Cold::peakMebibytes).toList()),
                "MiB");
        List<Cold> proof = new ArrayList<>();
        for (int round = 0; round < ROUNDS; round++) {
            proof.add(cold(List.of("proof"), folder.resolve("said.txt")));
        }
        row(
                out,
                "proof of the whole tree, cold",
                median(proof.stream().map(Cold::seconds).toList()),
                "s");
    }

    private static void row(PrintStream out, String what, double value, String unit) {
        out.printf(Locale.ROOT, "| %s | %.1f%s |%n", what, value, unit.isEmpty() ? "" : " " + unit);
    }

    /** A command in a JVM of its own, from its start to its end. */
    private static Cold cold(List<String> arguments, Path said) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                HEAP,
                "-cp",
                System.getProperty("java.class.path"),
                PublishBenchmark.class.getName(),
                REPORT_PEAK));
        command.addAll(arguments);
        long start = System.nanoTime();
        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(said.toFile())
                .start();
        int exit = process.waitFor();
        double seconds = (System.nanoTime() - start) / 1e9;
        String text = Files.readString(said);
        Matcher peak = PEAK.matcher(text);
        if (exit != 0 || !peak.find()) {
            throw new IllegalStateException(arguments + " ended with " + exit + ":\n" + text);
        }
        return new Cold(seconds, Long.parseLong(peak.group(1)) / (1024.0 * 1024));
    }

    /** Publishes in this JVM and gives the number of pages. */
    private static int publish(List<String> args) {
        String said = run(args);
        Matcher all = ALL.matcher(said);
        if (!all.find()) {
            throw new IllegalStateException("a publish said no number of pages:\n" + said);
        }
        return Integer.parseInt(all.group(1));
    }

    /** Runs a command in this JVM and gives what it printed. */
    private static String run(List<String> args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int exit = Main.run(new PrintWriter(out), new PrintWriter(err), args.toArray(String[]::new));
        if (exit != 0) {
            throw new IllegalStateException(args + " ended with " + exit + ":\n" + out + err);
        }
        return out.toString();
    }

    private static List<String> arguments(List<String> extra, Path out) {
        List<String> args = new ArrayList<>(List.of("publish", "--out", out.toString()));
        args.addAll(extra);
        return args;
    }

    /** The most memory the process held (VmHWM, proc(5)), or where there is no such file the peaks of its heap. */
    private static long peakBytes() throws IOException {
        Path status = Path.of("/proc/self/status");
        if (Files.isReadable(status)) {
            Matcher most = Pattern.compile("(?m)^VmHWM:\\s*(\\d+) kB").matcher(Files.readString(status));
            if (most.find()) {
                return Long.parseLong(most.group(1)) * 1024;
            }
        }
        return ManagementFactory.getMemoryPoolMXBeans().stream()
                .filter(pool -> pool.getType() == MemoryType.HEAP)
                .map(MemoryPoolMXBean::getPeakUsage)
                .mapToLong(usage -> usage.getUsed())
                .sum();
    }

    private static double median(List<Double> values) {
        return values.stream().sorted().toList().get(values.size() / 2);
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }
}

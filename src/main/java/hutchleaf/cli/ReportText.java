package hutchleaf.cli;

import hutchleaf.model.Level;
import hutchleaf.model.Routine;
import hutchleaf.model.Subject;
import hutchleaf.proof.Coverage;
import hutchleaf.proof.Finding;
import hutchleaf.proof.Reading;
import hutchleaf.proof.Report;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** A report for people: findings first, then what each level has, and how hard it reads. */
final class ReportText {
    private static final String LEGEND = """
            s in short, t steps, c caution, y say it, f if you find it; then cards/core cards/judge's questions;
            * a place in the score sheet""";

    private final Report report;
    private final PrintWriter out;

    private ReportText(Report report, PrintWriter out) {
        this.report = report;
        this.out = out;
    }

    static void print(Report report, PrintWriter out) {
        new ReportText(report, out).print();
    }

    private void print() {
        report.findings().stream().map(Finding::toString).forEach(out::println);
        if (!report.findings().isEmpty()) {
            out.println();
        }
        if (!report.coverage().stops().isEmpty()) {
            stops();
            subjects();
            readings();
        }
        out.printf(Locale.ROOT, "%d to mend, %d to look at%n", report.errors(), report.warnings());
    }

    private void stops() {
        row("stop", Arrays.stream(Level.values()).map(Level::word));
        for (int no = 1; no <= Routine.STOPS; no++) {
            int stop = no;
            List<Coverage.StopRow> rows = report.coverage().stops().stream()
                    .filter(row -> row.no() == stop)
                    .toList();
            String name = rows.stream().map(Coverage.StopRow::name).findFirst().orElse("");
            row(
                    String.format(Locale.ROOT, "%2d %s", no, name),
                    Arrays.stream(Level.values()).map(level -> cell(rows, level)));
        }
        out.println(LEGEND);
        out.println();
    }

    private static String cell(List<Coverage.StopRow> rows, Level level) {
        return rows.stream()
                .filter(row -> row.level() == level)
                .findFirst()
                .map(row -> texts(row.texts()) + " " + practice(row.practice()) + (row.scored() ? " *" : ""))
                .orElse("not shown");
    }

    private static String texts(Coverage.Texts texts) {
        return (texts.inShort() ? "s" : "-")
                + (texts.steps() ? "t" : "-")
                + (texts.caution() ? "c" : "-")
                + (texts.sayIt() ? "y" : "-")
                + (texts.ifYouFindIt() ? "f" : "-");
    }

    private static String practice(Coverage.Practice practice) {
        return practice.cards() + "/" + practice.core() + "/" + practice.questions();
    }

    private void subjects() {
        row("subject", Arrays.stream(Level.values()).map(Level::word));
        for (Subject subject : Subject.values()) {
            row(
                    subject.title(),
                    report.coverage().subjects().stream()
                            .filter(row -> row.subject() == subject)
                            .map(row -> row.topics() + " " + row.terms() + " " + practice(row.practice())));
        }
        out.println("topics, words to know, cards/core cards/judge's questions");
        out.println();
    }

    private void readings() {
        row("reading", Stream.of("grade", "ease", "words a sentence", "trade words", "Spache", "Dale-Chall"));
        for (Reading reading : report.readings()) {
            if (reading.topic().isEmpty()) {
                List<String> cells = new ArrayList<>();
                cells.add(score(reading.grade()));
                cells.add(score(reading.ease()));
                cells.add(score(reading.wordsASentence()));
                cells.add(Math.round(100 * reading.tradeShare()) + " %");
                cells.add(score(reading.spache()));
                cells.add(score(reading.daleChall()));
                row(reading.level().word() + " " + reading.part().word(), cells.stream());
            }
        }
        out.println("Flesch-Kincaid grade and Flesch reading ease without the syllables of trade words");
        out.println();
    }

    private void row(String name, Stream<String> cells) {
        StringBuilder line = new StringBuilder(String.format(Locale.ROOT, "%-21s", name));
        cells.forEach(cell -> line.append(String.format(Locale.ROOT, " %-17s", cell)));
        out.println(line.toString().stripTrailing());
    }

    private static String score(OptionalDouble score) {
        return score.isPresent() ? String.format(Locale.ROOT, "%.1f", score.getAsDouble()) : "not scored";
    }
}

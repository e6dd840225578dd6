package hutchleaf.cli;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import hutchleaf.problem.Problem;
import hutchleaf.proof.Coverage;
import hutchleaf.proof.Finding;
import hutchleaf.proof.Reading;
import hutchleaf.proof.Report;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.util.Locale;
import java.util.OptionalDouble;

/** A report for machines. Keys, and the keys of rules, do not change. */
final class ReportJson {
    private final JsonGenerator json;

    private ReportJson(JsonGenerator json) {
        this.json = json;
    }

    static void print(Report report, PrintWriter out) {
        try {
            JsonGenerator json = new JsonFactory()
                    .createGenerator(out)
                    .disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET)
                    .useDefaultPrettyPrinter();
            new ReportJson(json).write(report);
            json.close();
        } catch (IOException e) {
            throw new UncheckedIOException("could not write the report", e);
        }
        out.println();
    }

    private void write(Report report) throws IOException {
        json.writeStartObject();
        json.writeNumberField("errors", report.errors());
        json.writeNumberField("warnings", report.warnings());
        json.writeArrayFieldStart("findings");
        for (Finding finding : report.findings()) {
            finding(finding);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("stops");
        for (Coverage.StopRow row : report.coverage().stops()) {
            stop(row);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("subjects");
        for (Coverage.SubjectRow row : report.coverage().subjects()) {
            subject(row);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("reading");
        for (Reading reading : report.readings()) {
            reading(reading);
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void finding(Finding finding) throws IOException {
        Problem problem = finding.problem();
        json.writeStartObject();
        json.writeStringField("rule", finding.rule().key());
        json.writeStringField("severity", problem.severity().name().toLowerCase(Locale.ROOT));
        json.writeStringField("file", problem.place().file());
        json.writeNumberField("line", problem.place().line());
        json.writeStringField("what", problem.what());
        json.writeStringField("mend", problem.mend());
        json.writeEndObject();
    }

    private void stop(Coverage.StopRow row) throws IOException {
        json.writeStartObject();
        json.writeStringField("level", row.level().word());
        json.writeNumberField("stop", row.no());
        json.writeBooleanField("inShort", row.texts().inShort());
        json.writeBooleanField("steps", row.texts().steps());
        json.writeBooleanField("caution", row.texts().caution());
        json.writeBooleanField("sayIt", row.texts().sayIt());
        json.writeBooleanField("ifYouFindIt", row.texts().ifYouFindIt());
        practice(row.practice());
        json.writeBooleanField("scored", row.scored());
        json.writeEndObject();
    }

    private void subject(Coverage.SubjectRow row) throws IOException {
        json.writeStartObject();
        json.writeStringField("level", row.level().word());
        json.writeStringField("subject", row.subject().folder());
        json.writeNumberField("topics", row.topics());
        json.writeNumberField("terms", row.terms());
        practice(row.practice());
        json.writeEndObject();
    }

    private void practice(Coverage.Practice practice) throws IOException {
        json.writeNumberField("cards", practice.cards());
        json.writeNumberField("coreCards", practice.core());
        json.writeNumberField("questions", practice.questions());
    }

    private void reading(Reading reading) throws IOException {
        json.writeStartObject();
        json.writeStringField("level", reading.level().word());
        json.writeStringField("part", reading.part().word());
        json.writeStringField("topic", reading.topic().orElse(""));
        json.writeNumberField("words", reading.words());
        score("grade", reading.grade());
        score("ease", reading.ease());
        score("wordsASentence", reading.wordsASentence());
        json.writeNumberField("tradeShare", reading.tradeShare());
        score("spache", reading.spache());
        score("daleChall", reading.daleChall());
        json.writeEndObject();
    }

    private void score(String key, OptionalDouble score) throws IOException {
        if (score.isPresent()) {
            json.writeNumberField(key, score.getAsDouble());
        } else {
            json.writeNullField(key);
        }
    }
}

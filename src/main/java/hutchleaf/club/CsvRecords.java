package hutchleaf.club;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * The records of a CSV file by RFC 4180 section 2 (with erratum 5714), each parsed alone, so that a fault in one leaves
 * the others as they are. Beside the RFC: line ends of any machine, another delimiter, lines that start with {@code #} and
 * blank lines between records count for nothing.
 */
final class CsvRecords {
    private static final String STRAY = "a quote stands in the middle of a cell";
    private static final String STRAY_MEND = "put quotes round the whole cell and write a quote inside it twice";
    private static final String AFTER = "something stands after the closing quote of a cell";
    private static final String AFTER_MEND = "put the whole cell inside the quotes; not even a space may follow them";
    private static final String OPEN = "a cell starts with a quote that is not closed";
    private static final String OPEN_MEND = "close it, or take the quote out";

    /**
     * One record.
     *
     * @param line where it starts, from 1
     * @param cells as they stand, spaces and line ends included; none where there is a fault
     */
    record Line(int line, List<String> cells, Optional<Fault> fault) {
        Line {
            cells = List.copyOf(cells);
        }
    }

    /** What is wrong with the form of a record. */
    record Fault(String what, String mend) {}

    private final String text;
    private final char delimiter;
    private final CSVFormat format;
    private final List<Line> lines = new ArrayList<>();
    private int at;
    private int line = 1;

    private CsvRecords(String text, char delimiter) {
        this.text = text;
        this.delimiter = delimiter;
        this.format = CSVFormat.RFC4180.builder().setDelimiter(delimiter).get();
    }

    static List<Line> read(String text, char delimiter) {
        CsvRecords records = new CsvRecords(text, delimiter);
        while (records.at < text.length()) {
            records.next();
        }
        return records.lines;
    }

    private void next() {
        int end = lineEnd(at);
        if (text.charAt(at) == '#' || text.substring(at, end).isBlank()) {
            leaveLine(end);
            return;
        }
        int start = at;
        int startLine = line;
        Optional<Fault> fault = passRecord();
        if (fault.isPresent() && line > startLine) {
            // The quote that closed it is most likely the next row's opening one: only the first line is lost.
            line = startLine;
            fault = Optional.of(new Fault(OPEN, OPEN_MEND));
        }
        if (fault.isPresent()) {
            lines.add(new Line(startLine, List.of(), fault));
            leaveLine(lineEnd(start));
        } else {
            lines.add(new Line(startLine, parse(text.substring(start, at)), Optional.empty()));
            leaveLine(at);
        }
    }

    /** Goes to the end of the record, which is the first line end outside quotes. */
    private Optional<Fault> passRecord() {
        while (true) {
            if (at < text.length() && text.charAt(at) == '"') {
                if (!passQuoted()) {
                    return Optional.of(new Fault(OPEN, OPEN_MEND));
                }
                if (!atCellEnd()) {
                    return Optional.of(new Fault(AFTER, AFTER_MEND));
                }
            }
            while (!atCellEnd()) {
                if (text.charAt(at) == '"') {
                    return Optional.of(new Fault(STRAY, STRAY_MEND));
                }
                at++;
            }
            if (at == text.length() || text.charAt(at) != delimiter) {
                return Optional.empty();
            }
            at++;
        }
    }

    /** Goes behind the closing quote; false when there is none. */
    private boolean passQuoted() {
        at++;
        while (at < text.length()) {
            char sign = text.charAt(at);
            if (sign == '"') {
                at++;
                if (at == text.length() || text.charAt(at) != '"') {
                    return true;
                }
            } else if (sign == '\n' || sign == '\r') {
                leaveLine(at);
                continue;
            }
            at++;
        }
        return false;
    }

    private boolean atCellEnd() {
        return at == text.length()
                || text.charAt(at) == delimiter
                || text.charAt(at) == '\n'
                || text.charAt(at) == '\r';
    }

    private int lineEnd(int from) {
        int end = from;
        while (end < text.length() && text.charAt(end) != '\n' && text.charAt(end) != '\r') {
            end++;
        }
        return end;
    }

    /** Goes to the start of the next line: CRLF, LF and CR each end one. */
    private void leaveLine(int end) {
        at = end;
        if (at < text.length()) {
            at += text.startsWith("\r\n", at) ? 2 : 1;
            line++;
        }
    }

    private List<String> parse(String record) {
        try (CSVParser parser = CSVParser.parse(record, format)) {
            return parser.getRecords().stream()
                    .findFirst()
                    .map(CSVRecord::toList)
                    .orElse(List.of());
        } catch (IOException e) {
            throw new UncheckedIOException("could not parse '" + record + "'", e);
        }
    }
}

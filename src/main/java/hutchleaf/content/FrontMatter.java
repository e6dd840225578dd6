package hutchleaf.content;

import hutchleaf.problem.NearMiss;
import hutchleaf.problem.Place;
import hutchleaf.problem.Problems;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The lines between two {@code ---} at the top of a file: flat {@code kebab-case-key: value} or {@code key: a, b}. A line
 * that starts with {@code #} is a comment.
 *
 * @param at the file
 * @param lines how many lines of the file it takes, both fences included
 */
public record FrontMatter(Place at, Map<String, Field> fields, int lines) {
    /** A value and the line it stands on. */
    public record Field(String value, Place at) {
        /** The value as a list: {@code a, b}. */
        public List<String> list() {
            return Arrays.stream(value.split(","))
                    .map(String::strip)
                    .filter(item -> !item.isEmpty())
                    .toList();
        }
    }

    private static final String FENCE = "---";
    private static final String COMMENT = "#";
    private static final Pattern LINE = Pattern.compile("([a-z][a-z0-9]*(?:-[a-z0-9]+)*):(?:\\s+(.*))?");

    public FrontMatter {
        fields = Map.copyOf(fields);
    }

    /** Reads the top of a file; a file without it gives no fields and an error. */
    static FrontMatter read(Place file, List<String> text, Problems problems) {
        if (text.isEmpty() || !text.get(0).strip().equals(FENCE)) {
            problems.add(file.atLine(1), "the file does not start with front matter", "start it with a line of ---");
            return new FrontMatter(file, Map.of(), 0);
        }
        Map<String, Field> fields = new LinkedHashMap<>();
        for (int index = 1; index < text.size(); index++) {
            String line = text.get(index).strip();
            if (line.equals(FENCE)) {
                return new FrontMatter(file, fields, index + 1);
            }
            if (!line.isEmpty() && !line.startsWith(COMMENT)) {
                readLine(file.atLine(index + 1), line, fields, problems);
            }
        }
        problems.add(file.atLine(1), "the front matter has no end", "close it with a line of ---");
        return new FrontMatter(file, fields, text.size());
    }

    private static void readLine(Place at, String line, Map<String, Field> fields, Problems problems) {
        Matcher form = LINE.matcher(line);
        if (!form.matches()) {
            problems.add(at, "cannot read '" + line + "'", "write it as key: value, the key in small letters");
            return;
        }
        String value = form.group(2) == null ? "" : form.group(2).strip();
        Field earlier = fields.putIfAbsent(form.group(1), new Field(value, at));
        if (earlier != null) {
            problems.add(at, "'" + form.group(1) + "' stands twice", "keep one of them");
        } else if (value.isEmpty()) {
            problems.add(at, "'" + form.group(1) + "' has no value", "write one after the colon or take the line out");
        }
    }

    /** Reports every key that is not among the known ones. */
    public void allowOnly(Collection<String> known, Problems problems) {
        fields.forEach((key, field) -> {
            if (!known.contains(key)) {
                problems.add(field.at(), "unknown key '" + key + "'", NearMiss.mend(key, known));
            }
        });
    }

    public Optional<Field> field(String key) {
        return Optional.ofNullable(fields.get(key));
    }

    /** The value of a key that has to be there; reports it and gives an empty text when it is not. */
    public String require(String key, Problems problems) {
        Optional<Field> field = field(key);
        if (field.isEmpty()) {
            problems.add(at.atLine(1), "no '" + key + ":' in the front matter", "add a line " + key + ": ...");
        }
        return field.map(Field::value).orElse("");
    }
}

package hutchleaf.page;

import hutchleaf.model.Club;
import hutchleaf.model.Wording;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One spelling for everything that is printed: finished pages are respelled where a reader sees or hears their words, and
 * nowhere else. Words that a club wrote are {@linkplain #kept kept} as they are.
 */
public final class Spelled {
    /** Stands inside a kept word, so that it is no word of the table; no font draws it, so that no input can hold it. */
    private static final String MARK = "\uE000";

    private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{M}]+");
    /** A style, a comment, a tag, or the text between them. */
    private static final Pattern PIECE = Pattern.compile("(?s)<style.*?</style>|<!--.*?-->|<[^>]*>|[^<]+");
    /** Attributes that a reader sees or hears. */
    private static final Pattern READ_OUT = Pattern.compile("(?<= )(alt|title)=\"[^\"]*\"");

    private static final Pattern BOOKMARK = Pattern.compile("(?<=^<bookmark )name=\"[^\"]*\"");
    private static final List<String> ENDINGS = List.of(
            "", "s", "ed", "er", "ers", "ing", "ings", "able", "al", "ation", "ful", "hood", "ish", "ist", "ite",
            "less", "ly", "y");

    private final String language;
    private final Map<String, String> printed;
    private final Map<String, String> known;

    private Spelled(String language, Map<String, String> printed, Map<String, String> known) {
        this.language = language;
        this.printed = printed;
        this.known = known;
    }

    /** Every word as it is written. */
    static Spelled asWritten(String language) {
        return new Spelled(language, Map.of(), Map.of());
    }

    /** The spelling of a country, by the tables in {@code words/spelling.md}. */
    public static Spelled of(Wording wording, Club.Spelling spelling) {
        Map<String, String> american = new HashMap<>();
        Map<String, String> british = new HashMap<>();
        wording.spellings().forEach(pair -> add(pair.uk(), pair.us(), american));
        wording.spellings().forEach(pair -> add(pair.us(), pair.uk(), british));
        wording.onlyAmerican().forEach(pair -> add(pair.uk(), pair.us(), american));
        Map<String, String> known = new HashMap<>(american);
        known.putAll(british);
        return switch (spelling) {
            case UK -> new Spelled("en-GB", british, known);
            case US -> new Spelled("en-US", american, known);
        };
    }

    /** A word goes on: colours, coloured, colouring. One that only loses its end (programme) loses it in no other form. */
    private static void add(String from, String to, Map<String, String> words) {
        boolean shortened = from.startsWith(to) || to.startsWith(from);
        for (String ending : shortened ? ENDINGS.subList(0, 2) : ENDINGS) {
            words.putIfAbsent(with(from, ending), with(to, ending));
        }
        words.put(from, to);
    }

    /** An e at the end goes before a vowel: organise, organising; centre, centred. */
    private static String with(String word, String ending) {
        boolean drops = word.endsWith("e") && !ending.isEmpty() && "aeiy".indexOf(ending.charAt(0)) >= 0;
        return (drops ? word.substring(0, word.length() - 1) : word) + ending;
    }

    /** BCP 47 tag of what is printed. */
    public String language() {
        return language;
    }

    /** Words in this spelling, kept ones without their mark. */
    public String text(String words) {
        Matcher word = WORD.matcher(words);
        StringBuilder spelled = new StringBuilder(words.length());
        while (word.find()) {
            String other = printed.get(word.group().toLowerCase(Locale.ROOT));
            word.appendReplacement(
                    spelled, Matcher.quoteReplacement(other == null ? word.group() : inCase(other, word.group())));
        }
        word.appendTail(spelled);
        return plain(spelled.toString());
    }

    private static String inCase(String word, String like) {
        if (!Character.isUpperCase(like.charAt(0))) {
            return word;
        }
        return like.length() > 1 && like.equals(like.toUpperCase(Locale.ROOT))
                ? word.toUpperCase(Locale.ROOT)
                : word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1);
    }

    /** A name, or other words of a club's own, marked so that no page changes their spelling. */
    public String kept(String words) {
        return WORD.matcher(words)
                .replaceAll(word -> known.containsKey(word.group().toLowerCase(Locale.ROOT))
                        ? word.group().charAt(0) + MARK + word.group().substring(1)
                        : word.group());
    }

    /** Words without a mark, for what is no page: a file's name, a message. */
    public static String plain(String words) {
        return words.replace(MARK, "");
    }

    /** A whole XHTML document in this spelling: its text, and the attributes that are read out. */
    String page(String xhtml) {
        Matcher piece = PIECE.matcher(xhtml);
        StringBuilder page = new StringBuilder(xhtml.length());
        while (piece.find()) {
            page.append(piece(piece.group()));
        }
        return plain(page.toString());
    }

    private String piece(String piece) {
        if (!piece.startsWith("<")) {
            return text(piece);
        } else if (piece.startsWith("<style") || piece.startsWith("<!")) {
            return piece;
        } else if (piece.startsWith("<html")) {
            return piece.replaceFirst("(?<= )lang=\"[^\"]*\"", Matcher.quoteReplacement("lang=\"" + language + "\""));
        }
        Pattern readOut = piece.startsWith("<bookmark") ? BOOKMARK : READ_OUT;
        return readOut.matcher(piece).replaceAll(found -> {
            int value = found.group().indexOf('"');
            return Matcher.quoteReplacement(
                    found.group().substring(0, value) + text(found.group().substring(value)));
        });
    }
}

package hutchleaf.club;

import hutchleaf.problem.Place;
import hutchleaf.problem.Problems;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * Finds out in which encoding a spreadsheet saved a file: by its byte order mark; as UTF-16 when nearly every other byte
 * is zero; as UTF-8 when it is that without a fault; else as Windows-1252, which nearly any bytes are, so it is told.
 */
final class Decoded {
    private static final Charset WINDOWS = Charset.forName("windows-1252");
    private static final String MEND = "save it again as CSV UTF-8 (plain text UTF-8 for club.md)";
    private static final Pattern UNUSUAL_WORD = Pattern.compile("[\\p{L}\\p{M}'’-]*[^\\p{ASCII}\\s]\\S*");

    /** How many bytes are looked at for zeros. */
    private static final int LOOKED_AT = 512;

    private Decoded() {}

    /** The text without its byte order mark; a warning where it was not UTF-8, an error where nothing fits. */
    static Optional<String> read(byte[] bytes, Place at, Problems problems) {
        if (startsWith(bytes, 'P', 'K', 3, 4)) {
            problems.add(at, "this is no plain text but a spreadsheet's own file", MEND);
            return Optional.empty();
        }
        Charset charset = guess(bytes);
        Optional<String> text = decode(bytes, charset);
        if (text.isEmpty() && charset.equals(StandardCharsets.UTF_8)) {
            charset = WINDOWS;
            text = decode(bytes, charset);
        }
        Optional<String> sound = text.map(read -> read.startsWith("\uFEFF") ? read.substring(1) : read)
                .filter(read -> read.indexOf('\0') < 0);
        if (sound.isEmpty()) {
            problems.add(at, "the file is in no encoding that we know", MEND);
        } else if (!charset.equals(StandardCharsets.UTF_8)) {
            tell(sound.get(), charset, at, problems);
        }
        return sound;
    }

    private static void tell(String text, Charset charset, Place at, Problems problems) {
        String name = charset.equals(WINDOWS) ? "Windows-1252" : charset.name();
        Matcher word = UNUSUAL_WORD.matcher(text);
        String sample = word.find() ? ", with words such as '" + word.group() + "'" : "";
        problems.warn(at, "read as " + name + " and not as UTF-8" + sample, "if letters look wrong, " + MEND);
    }

    private static Charset guess(byte[] bytes) {
        if (startsWith(bytes, 0xFF, 0xFE)) {
            return StandardCharsets.UTF_16LE;
        }
        if (startsWith(bytes, 0xFE, 0xFF)) {
            return StandardCharsets.UTF_16BE;
        }
        int pairs = Math.min(bytes.length, LOOKED_AT) / 2;
        int even = 0;
        int odd = 0;
        for (int pair = 0; pair < pairs; pair++) {
            even += bytes[2 * pair] == 0 ? 1 : 0;
            odd += bytes[2 * pair + 1] == 0 ? 1 : 0;
        }
        if (pairs > 0 && odd > pairs / 2 && even == 0) {
            return StandardCharsets.UTF_16LE;
        }
        return pairs > 0 && even > pairs / 2 && odd == 0 ? StandardCharsets.UTF_16BE : StandardCharsets.UTF_8;
    }

    private static Optional<String> decode(byte[] bytes, Charset charset) {
        try {
            return Optional.of(charset.newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT)
                    .decode(ByteBuffer.wrap(bytes))
                    .toString());
        } catch (CharacterCodingException e) {
            return Optional.empty();
        }
    }

    private static boolean startsWith(byte[] bytes, int... head) {
        return bytes.length >= head.length
                && Arrays.equals(
                        head,
                        IntStream.range(0, head.length)
                                .map(index -> bytes[index] & 0xFF)
                                .toArray());
    }
}

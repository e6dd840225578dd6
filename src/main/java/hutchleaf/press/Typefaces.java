package hutchleaf.press;

import com.openhtmltopdf.css.constants.IdentValue;
import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import com.openhtmltopdf.pdfboxout.PdfBoxFontResolver;
import com.openhtmltopdf.pdfboxout.PdfBoxFontResolver.FontGroup;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.jspecify.annotations.Nullable;

/**
 * Lato for text and DejaVu Sans for the signs that Lato lacks: parsed once, then embedded and subset in each document.
 * Not safe between threads, since a parsed font reads its tables when they are first asked for.
 */
final class Typefaces {
    static final String TEXT = "Lato";
    static final String SIGNS = "DejaVu Sans";

    /**
     * For pages that save ink: a lighter cut of Lato, with the letters of western Europe, whose bold is Lato's regular. A
     * style names Lato behind it.
     */
    private static final String LIGHT = "Lato Light";

    private static final String OWN = "Own";

    /** How a TrueType font begins (OpenType 1.9, font file: sfntVersion). */
    private static final byte[] VERSION = {0, 1, 0, 0};

    private static final String LATO = "/com/mpobjects/jasperreports/fonts/lato/Lato-";
    private static final String LIGHTER = "/META-INF/resources/webjars/lato/0.3.0/font/lato-";
    private static final String DEJAVU = "/net/sf/jasperreports/fonts/dejavu/DejaVuSans";

    private record Face(String family, int weight, IdentValue style, TrueTypeFont font) {}

    private final List<Face> faces = List.of(
            new Face(TEXT, 400, IdentValue.NORMAL, parse(LATO + "Regular.ttf")),
            new Face(TEXT, 700, IdentValue.NORMAL, parse(LATO + "Bold.ttf")),
            new Face(TEXT, 400, IdentValue.ITALIC, parse(LATO + "Italic.ttf")),
            new Face(TEXT, 700, IdentValue.ITALIC, parse(LATO + "BoldItalic.ttf")),
            new Face(SIGNS, 400, IdentValue.NORMAL, parse(DEJAVU + ".ttf")),
            new Face(SIGNS, 700, IdentValue.NORMAL, parse(DEJAVU + "-Bold.ttf")),
            new Face(LIGHT, 400, IdentValue.NORMAL, parse(LIGHTER + "light/lato-light.ttf")),
            new Face(LIGHT, 700, IdentValue.NORMAL, parse(LATO + "Regular.ttf")),
            new Face(LIGHT, 400, IdentValue.ITALIC, parse(LIGHTER + "lightitalic/lato-lightitalic.ttf")),
            new Face(LIGHT, 700, IdentValue.ITALIC, parse(LATO + "Italic.ttf")));

    private final CmapLookup text = glyphs(faces.get(0));
    private final CmapLookup signs = glyphs(faces.get(4));
    private final Optional<Face> own;

    /**
     * @param file a TrueType font for letters that the others lack
     */
    Typefaces(Optional<Path> file) {
        this.own = file.map(path -> new Face(OWN, 400, IdentValue.NORMAL, parse(path)));
    }

    private static TrueTypeFont parse(Path file) {
        try (InputStream in = Files.newInputStream(file)) {
            byte[] bytes = in.readAllBytes();
            if (bytes.length < VERSION.length || !Arrays.equals(bytes, 0, VERSION.length, VERSION, 0, VERSION.length)) {
                throw new IOException("it does not start as one");
            }
            return parse(new ByteArrayInputStream(bytes));
        } catch (IOException e) {
            throw new UncheckedIOException(file + ": this is no TrueType font that can be read; name a .ttf file", e);
        }
    }

    private static TrueTypeFont parse(InputStream in) throws IOException {
        TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(in));
        // Ligatures off: substitution was 58 % of the time a guide took, and page fits are measured without.
        font.setEnableGsub(false);
        return font;
    }

    private static TrueTypeFont parse(String resource) {
        try (InputStream in = Objects.requireNonNull(Typefaces.class.getResourceAsStream(resource), resource)) {
            return parse(in);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read the font " + resource, e);
        }
    }

    /** The face that numbers under pictures are drawn with. */
    static TrueTypeFont numerals() {
        return parse(LATO + "Bold.ttf");
    }

    private static CmapLookup glyphs(Face face) {
        try {
            return face.font().getUnicodeCmapLookup();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Whether one of the families can print this code point. */
    boolean has(int codePoint) {
        return text.getGlyphId(codePoint) != 0
                || signs.getGlyphId(codePoint) != 0
                || own.filter(face -> glyphs(face).getGlyphId(codePoint) != 0).isPresent();
    }

    /** Whether there is a font of the user's own. */
    boolean hasOwn() {
        return own.isPresent();
    }

    /**
     * Makes the families known to one document. DejaVu Sans also stands behind every other family, so that a sign
     * prints even where a style names Lato alone.
     */
    void register(PdfBoxFontResolver resolver, PDDocument document) {
        for (Face face : faces) {
            Embedded font = new Embedded(document, face.font());
            resolver.addFont(font, face.family(), face.weight(), face.style(), true, FontGroup.MAIN);
            if (face.family().equals(SIGNS)) {
                resolver.addFont(font, face.family(), face.weight(), face.style(), true, FontGroup.FINAL_FALLBACK);
            }
        }
        own.ifPresent(face -> resolver.addFont(
                new Embedded(document, face.font()),
                face.family(),
                face.weight(),
                face.style(),
                true,
                FontGroup.FINAL_FALLBACK));
    }

    /** A face as one document uses it, made when its first glyph is wanted. */
    private static final class Embedded extends PDFontSupplier {
        private final PDDocument document;
        private final TrueTypeFont font;
        private @Nullable PDFont made;

        Embedded(PDDocument document, TrueTypeFont font) {
            super(null);
            this.document = document;
            this.font = font;
        }

        @Override
        public PDFont supply() {
            PDFont known = made;
            if (known == null) {
                known = load();
                made = known;
            }
            return known;
        }

        private PDFont load() {
            try {
                return PDType0Font.load(document, font, true);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }
}

package hutchleaf.press;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.verapdf.core.VeraPDFException;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;

/** Asks veraPDF, profile ua1, whether a file is PDF/UA-1 (ISO 14289-1:2014), as far as a machine can tell. */
public final class PdfUa {
    static {
        VeraGreenfieldFoundryProvider.initialise();
    }

    private PdfUa() {}

    /** One line per rule broken, sorted: clause, test number, what is wrong. Empty when the file conforms. */
    public static List<String> violations(byte[] pdf) {
        PDFAFlavour flavour = PDFAFlavour.PDFUA_1;
        try (PDFAParser parser = Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), flavour);
                PDFAValidator validator = Foundries.defaultInstance().createValidator(flavour, false)) {
            return validator.validate(parser).getTestAssertions().stream()
                    .filter(assertion -> assertion.getStatus() == TestAssertion.Status.FAILED)
                    .map(PdfUa::line)
                    .sorted()
                    .distinct()
                    .toList();
        } catch (VeraPDFException e) {
            throw new IllegalStateException("veraPDF could not read the file", e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String line(TestAssertion assertion) {
        var rule = assertion.getRuleId();
        return rule.getClause() + "-" + rule.getTestNumber() + " " + assertion.getMessage();
    }
}

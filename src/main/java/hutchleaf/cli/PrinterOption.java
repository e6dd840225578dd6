package hutchleaf.cli;

import hutchleaf.problem.Place;
import hutchleaf.problem.Problems;
import hutchleaf.sheet.Correction;
import hutchleaf.sheet.PrinterNumbers;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** {@code --printer}, for commands whose sheets must meet front to back. */
final class PrinterOption {
    private static final Place AT = Place.whole("--printer");

    @Option(
            names = "--printer",
            paramLabel = "NUMBERS",
            description = "what 'hutchleaf ruler' measured: scale-x,scale-y,offset-x,offset-y in per cent and mm,"
                    + " for example 99.2,99.5,0.5,-1.0")
    private @Nullable String numbers;

    /** What was asked for; nothing where it was not, or with a problem. */
    PrinterSetting chosen(Problems problems) {
        Optional<Correction> read =
                Optional.ofNullable(numbers).flatMap(text -> PrinterNumbers.read(text, text, AT, problems));
        return read.map(correction -> new PrinterSetting(correction, AT)).orElse(PrinterSetting.NONE);
    }
}

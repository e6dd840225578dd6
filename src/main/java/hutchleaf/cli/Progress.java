package hutchleaf.cli;

import java.io.PrintWriter;
import picocli.CommandLine;

/** Tells how far a long run is, on a terminal only. */
final class Progress {
    private final int all;
    private final PrintWriter err;

    Progress(int all, PrintWriter err) {
        this.all = all;
        this.err = err;
    }

    /** So many are printed. */
    void done(int printed) {
        if (CommandLine.Help.Ansi.AUTO.enabled()) {
            err.print("\r" + printed + " of " + all + " packets" + (printed == all ? "\n" : ""));
            err.flush();
        }
    }
}

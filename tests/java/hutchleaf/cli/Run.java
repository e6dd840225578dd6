package hutchleaf.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;

/** One run of the program: its exit code and what it printed. */
record Run(int exit, String out, String err) {
    static Run of(String... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int exit = Main.run(new PrintWriter(out, true), new PrintWriter(err, true), args);
        return new Run(exit, out.toString(), err.toString());
    }

    List<String> errLines() {
        return err.lines().toList();
    }
}

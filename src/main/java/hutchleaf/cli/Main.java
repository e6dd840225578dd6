package hutchleaf.cli;

import hutchleaf.content.ContentTree;
import hutchleaf.content.LibraryReader;
import hutchleaf.problem.Problems;
import java.nio.file.Path;

/** Where the program starts. */
public final class Main {
    private Main() {}

    public static void main(String... args) {
        Problems problems = new Problems();
        var lib = LibraryReader.read(
                new ContentTree(Path.of(args.length > 0 ? args[0] : "content"), "content"), problems);
        problems.sorted().forEach(System.err::println);
        lib.ifPresent(l -> System.out.println(l.topics().size() + " topics"));
    }
}

package hutchleaf.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** {@code --content} and {@code --templates}, for commands that read a tree; without them the embedded ones are read. */
final class TreeOptions {
    @Option(names = "--content", paramLabel = "DIR", description = "a content tree of your own")
    private @Nullable Path content;

    @Option(names = "--templates", paramLabel = "DIR", description = "templates of your own")
    private @Nullable Path templates;

    Optional<Path> content() {
        return Optional.ofNullable(content);
    }

    Optional<Path> templates() {
        return Optional.ofNullable(templates);
    }

    /** What is wrong with them: the first folder that is not there. */
    Optional<String> wrong() {
        return Stream.of(content(), templates())
                .flatMap(Optional::stream)
                .flatMap(folder -> missing(folder).stream())
                .findFirst();
    }

    /** What to say of a folder that is not there. */
    static Optional<String> missing(Path folder) {
        return Files.isDirectory(folder)
                ? Optional.empty()
                : Optional.of(folder + ": there is no such folder; name one that is there");
    }
}

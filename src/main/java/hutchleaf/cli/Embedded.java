package hutchleaf.cli;

import hutchleaf.content.ContentTree;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.FileSystemAlreadyExistsException;
import java.nio.file.FileSystems;
import java.nio.file.Path;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** The content that is packed into the program. */
final class Embedded {
    private static final String FOLDER = "/embedded/content";
    private static final String DEMO_CLUB = "/demo-club";

    private Embedded() {}

    /** The tree in a folder, or the embedded one. */
    static ContentTree contentOr(Optional<Path> folder) {
        return folder.map(named -> new ContentTree(
                        named,
                        Objects.requireNonNullElse(named.getFileName(), named).toString()))
                .orElseGet(Embedded::content);
    }

    /** The embedded tree, from a folder of classes or from inside the jar. */
    static ContentTree content() {
        return new ContentTree(folder(FOLDER + "/facts.md"), "content");
    }

    /** The folder of the demo club. */
    static Path demoClub() {
        return folder(DEMO_CLUB + "/club.md");
    }

    /** The folder of a packed file. */
    private static Path folder(String file) {
        URL marker = Objects.requireNonNull(Embedded.class.getResource(file), "nothing is packed at " + file);
        try {
            return Objects.requireNonNull(path(marker.toURI()).getParent(), "the file has no folder");
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Path path(URI uri) {
        if (uri.getScheme().equals("jar")) {
            try {
                FileSystems.newFileSystem(uri, Map.of());
            } catch (FileSystemAlreadyExistsException e) {
                // Opened by an earlier command of the same run; it stays open as long as the program.
                return Path.of(uri);
            } catch (IOException e) {
                throw new UncheckedIOException("could not open the program's own jar", e);
            }
        }
        return Path.of(uri);
    }
}

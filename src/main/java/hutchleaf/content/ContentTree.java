package hutchleaf.content;

import hutchleaf.problem.Place;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A folder of files an author edits, on disk or inside the program's own jar. Nothing outside it can be read through it.
 *
 * <p>A broken disk surfaces as {@link UncheckedIOException}.
 */
public final class ContentTree {
    private final Path root;
    private final String shownAs;

    /**
     * @param shownAs how messages name the folder, for example {@code content}
     */
    public ContentTree(Path root, String shownAs) {
        this.root = root.toAbsolutePath().normalize();
        this.shownAs = shownAs;
    }

    /** Paths of all files with the ending, from the root, with forward slashes, sorted. */
    public List<String> files(String ending) {
        try (Stream<Path> walk = Files.walk(root)) {
            return walk.filter(Files::isRegularFile)
                    .map(file -> root.relativize(file).toString().replace('\\', '/'))
                    .filter(path -> path.endsWith(ending))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException("could not list " + shownAs, e);
        }
    }

    /** The text of a file in UTF-8, line ends read as LF; empty when there is no such file inside the root. */
    public Optional<String> text(String path) {
        return bytes(path)
                .map(bytes -> new String(bytes, StandardCharsets.UTF_8)
                        .replace("\uFEFF", "")
                        .replace("\r\n", "\n")
                        .replace('\r', '\n'));
    }

    /** The bytes of a file; empty when there is no such file inside the root, or a link leads out of it. */
    public Optional<byte[]> bytes(String path) {
        Path file = root.resolve(path).normalize();
        try {
            if (!file.startsWith(root)
                    || !Files.isRegularFile(file)
                    || !file.toRealPath().startsWith(root.toRealPath())) {
                return Optional.empty();
            }
            return Optional.of(Files.readAllBytes(file));
        } catch (IOException e) {
            throw new UncheckedIOException("could not read " + shownAs + "/" + path, e);
        }
    }

    /** The place that messages give for a file of this tree. */
    Place place(String path) {
        return Place.whole(shownAs + "/" + path);
    }
}

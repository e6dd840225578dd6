package hutchleaf.cli;

import hutchleaf.press.Printed;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * The folder of finished files. Everything is written beside its place first and moved when all of it is there; only
 * files that an earlier run made are ever removed.
 */
final class Outputs {
    private static final String MANIFEST = ".made-by-hutchleaf";

    private final Path folder;

    Outputs(Path folder) {
        this.folder = folder;
    }

    /**
     * Puts the files into the folder.
     *
     * @param files by path from the folder, with forward slashes
     */
    void replace(Map<String, Printed> files) {
        List<Path> parts = new ArrayList<>();
        try {
            for (Map.Entry<String, Printed> file : files.entrySet()) {
                Path part = folder.resolve(file.getKey() + ".part");
                Files.createDirectories(part.getParent());
                parts.add(part);
                try (InputStream pdf = file.getValue().open()) {
                    Files.copy(pdf, part, StandardCopyOption.REPLACE_EXISTING);
                }
            }
            for (String name : files.keySet()) {
                Files.move(folder.resolve(name + ".part"), folder.resolve(name), StandardCopyOption.REPLACE_EXISTING);
            }
            forgetOld(files);
        } catch (IOException e) {
            throw new UncheckedIOException("could not write into " + folder, e);
        } finally {
            parts.forEach(Outputs::deleteQuietly);
        }
    }

    /** Removes what the last run made and this one did not, then notes what this one made. */
    private void forgetOld(Map<String, Printed> files) throws IOException {
        Path manifest = folder.resolve(MANIFEST);
        if (Files.exists(manifest)) {
            for (String name : Files.readAllLines(manifest)) {
                Path old = folder.resolve(name).normalize();
                // An empty line would name the folder itself; whatever else is no file of ours stays too.
                if (!files.containsKey(name) && old.startsWith(folder.normalize()) && Files.isRegularFile(old)) {
                    Files.deleteIfExists(old);
                }
            }
        }
        Files.write(manifest, files.keySet());
    }

    private static void deleteQuietly(Path part) {
        try {
            Files.deleteIfExists(part);
        } catch (IOException e) {
            // The failure that left it behind is the one to report.
        }
    }
}

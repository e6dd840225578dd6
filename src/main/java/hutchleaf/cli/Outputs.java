package hutchleaf.cli;

import hutchleaf.press.Preview;
import hutchleaf.press.Printed;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The folder of finished files. Everything is written beside its place first and moved when all of it is there; only
 * files that an earlier run of the same command made are ever removed. What was not committed is gone when this is closed.
 */
final class Outputs implements AutoCloseable {
    private static final String MANIFEST = ".made-by-";
    private static final String PART = ".part";
    private static final String PICTURES = "pictures/";

    /** Whether pictures of the pages are made too, to look at before anything is printed. */
    enum Pictures {
        NONE,
        CONTACT_SHEETS;

        /** As an option asks for them. */
        static Pictures when(boolean asked) {
            return asked ? CONTACT_SHEETS : NONE;
        }
    }

    private final Path folder;
    private final Path manifest;
    private final Pictures pictures;
    private final Set<String> names = new LinkedHashSet<>();
    private final Set<String> kept = new LinkedHashSet<>();

    /**
     * @param command whose files these are, for example {@code publish}
     */
    Outputs(Path folder, String command, Pictures pictures) {
        this.folder = folder;
        this.pictures = pictures;
        this.manifest = folder.resolve(MANIFEST + command);
    }

    /**
     * Writes a file beside its place, and the pictures of its pages where they are wanted.
     *
     * @param name path from the folder, with forward slashes
     */
    void add(String name, Printed pdf) {
        add(name, pdf.open());
        if (pictures == Pictures.CONTACT_SHEETS && !name.startsWith(PagesChanged.FOLDER)) {
            String picture = pictureOf(name);
            Preview.of(
                    pdf,
                    (no, png) ->
                            add(picture + String.format(Locale.ROOT, "%02d.png", no), new ByteArrayInputStream(png)));
        }
    }

    /** How the pictures of a file are named, but for their numbers. */
    private static String pictureOf(String pdf) {
        return PICTURES + pdf.replaceFirst("\\.pdf$", "-");
    }

    /** Writes a text beside its place. */
    void add(String name, String text) {
        add(name, stream(text));
    }

    /** Writes a text beside its place that no later run removes: other commands need it too. */
    void keep(String name, String text) {
        synchronized (this) {
            kept.add(name);
        }
        add(name, stream(text));
    }

    private static InputStream stream(String text) {
        return new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
    }

    private synchronized void add(String name, InputStream from) {
        try (InputStream bytes = from) {
            Path part = folder.resolve(name + PART);
            Files.createDirectories(part.getParent());
            names.add(name);
            Files.copy(bytes, part, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            throw new UncheckedIOException("could not write into " + folder, e);
        }
    }

    /** Moves every file into its place and removes what the last run made and this one did not. */
    void commit() {
        try {
            move();
            forgetOld();
            Set<String> made = new LinkedHashSet<>(names);
            made.removeAll(kept);
            Files.write(manifest, made);
        } catch (IOException e) {
            throw new UncheckedIOException("could not write into " + folder, e);
        }
    }

    /** Moves every file into its place and leaves all others as they are. */
    void commitBeside() {
        commitBeside(Set.of());
    }

    /**
     * Moves every file into its place and leaves all others as they are, but for some, and for old pictures of new files.
     *
     * @param replaced names of which those that an earlier run made and this one did not are removed, with their pictures
     */
    void commitBeside(Set<String> replaced) {
        try {
            move();
            Set<String> all = new LinkedHashSet<>(Files.exists(manifest) ? Files.readAllLines(manifest) : Set.of());
            Set<String> gone = new LinkedHashSet<>(all);
            gone.removeIf(old -> names.contains(old) || !(replaced.contains(old) || isPictureOf(old, replaced)));
            for (String old : gone) {
                Files.deleteIfExists(folder.resolve(old));
            }
            all.removeAll(gone);
            all.addAll(names);
            all.removeAll(kept);
            Files.write(manifest, all);
        } catch (IOException e) {
            throw new UncheckedIOException("could not write into " + folder, e);
        }
    }

    private boolean isPictureOf(String file, Set<String> replaced) {
        return Stream.concat(names.stream(), replaced.stream())
                .filter(pdf -> pdf.endsWith(".pdf"))
                .map(Outputs::pictureOf)
                .anyMatch(picture -> file.startsWith(picture)
                        && file.substring(picture.length()).matches("\\d+\\.png"));
    }

    private void move() throws IOException {
        for (String name : names) {
            Files.move(folder.resolve(name + PART), folder.resolve(name), StandardCopyOption.REPLACE_EXISTING);
        }
    }

    private void forgetOld() throws IOException {
        if (!Files.exists(manifest)) {
            return;
        }
        for (String name : Files.readAllLines(manifest)) {
            Path old = folder.resolve(name).normalize();
            // An empty line would name the folder itself; whatever else is no file of ours stays too.
            if (!names.contains(name) && old.startsWith(folder.normalize()) && Files.isRegularFile(old)) {
                Files.deleteIfExists(old);
                deleteIfEmpty(Objects.requireNonNullElse(old.getParent(), folder.normalize()));
            }
        }
    }

    /** A packet's folder goes with its last file. */
    private void deleteIfEmpty(Path parent) throws IOException {
        if (parent.equals(folder.normalize())) {
            return;
        }
        try (var files = Files.list(parent)) {
            if (files.findAny().isPresent()) {
                return;
            }
        }
        Files.deleteIfExists(parent);
        deleteIfEmpty(Objects.requireNonNullElse(parent.getParent(), folder.normalize()));
    }

    @Override
    public void close() {
        for (String name : names) {
            try {
                Files.deleteIfExists(folder.resolve(name + PART));
            } catch (IOException e) {
                // The failure that left it behind is the one to report.
            }
        }
    }
}

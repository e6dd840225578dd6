package hutchleaf.content;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.Heading;
import org.commonmark.node.Node;
import org.commonmark.node.Text;

/**
 * One example of a spec table: files laid over the base tree, then what has to come of them.
 *
 * @param name file, number and heading
 * @param wants {@code error}, {@code model} or {@code finding}
 */
public record SpecExample(String name, List<Overlay> overlays, String wants, List<String> lines) {
    /** A file to write, or a base file to take out. */
    public record Overlay(String path, Optional<String> text) {}

    public SpecExample {
        overlays = List.copyOf(overlays);
        lines = List.copyOf(lines);
    }

    public static List<SpecExample> readAll(Path folder) throws IOException {
        List<SpecExample> examples = new ArrayList<>();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.filter(path -> path.toString().endsWith(".md"))
                    .sorted()
                    .toList()) {
                examples.addAll(read(file.getFileName().toString(), Files.readString(file)));
            }
        }
        return examples;
    }

    /** The examples of one document; a block that belongs to none, or of an unknown kind, is refused. */
    static List<SpecExample> read(String file, String text) {
        List<SpecExample> examples = new ArrayList<>();
        String heading = "";
        List<Overlay> overlays = new ArrayList<>();
        for (Node node = Markdown.parser().parse(text).getFirstChild(); node != null; node = node.getNext()) {
            if (node instanceof Heading opened) {
                refuseOrphan(file, heading, overlays);
                heading = plain(opened);
            } else if (node instanceof FencedCodeBlock block) {
                List<String> info = List.of(block.getInfo().strip().split(" "));
                switch (info.get(0)) {
                    case "file" -> overlays.add(new Overlay(path(file, info), Optional.of(written(file, info, block))));
                    case "without" -> overlays.add(new Overlay(path(file, info), Optional.empty()));
                    case "error", "model", "finding" -> {
                        if (overlays.isEmpty()) {
                            throw new IllegalStateException(
                                    file + ": under '" + heading + "' an expectation stands without a file");
                        }
                        String name = file + " " + (examples.size() + 1) + ": " + heading;
                        examples.add(new SpecExample(
                                name,
                                overlays,
                                info.get(0),
                                block.getLiteral().lines().toList()));
                        overlays.clear();
                    }
                    default ->
                        throw new IllegalStateException(
                                file + ": under '" + heading + "' a block of unknown kind '" + block.getInfo() + "'");
                }
            }
        }
        refuseOrphan(file, heading, overlays);
        return examples;
    }

    private static void refuseOrphan(String file, String heading, List<Overlay> overlays) {
        if (!overlays.isEmpty()) {
            throw new IllegalStateException(file + ": under '" + heading + "' a file stands without an expectation");
        }
    }

    private static String path(String file, List<String> info) {
        if (info.size() < 2 || !info.get(1).startsWith("path=")) {
            throw new IllegalStateException(file + ": the block '" + String.join(" ", info) + "' names no path=");
        }
        return info.get(1).substring("path=".length());
    }

    private static String written(String file, List<String> info, FencedCodeBlock block) {
        String text = block.getLiteral();
        for (String option : info.subList(2, info.size())) {
            text = switch (option) {
                case "crlf" -> text.replace("\n", "\r\n");
                case "cr" -> text.replace('\n', '\r');
                case "bom" -> '\uFEFF' + text;
                default -> throw new IllegalStateException(file + ": unknown option '" + option + "' of a file block");
            };
        }
        return text;
    }

    private static String plain(Heading heading) {
        StringBuilder text = new StringBuilder();
        for (Node node = heading.getFirstChild(); node != null; node = node.getNext()) {
            text.append(node instanceof Text run ? run.getLiteral() : "");
        }
        return text.toString();
    }

    /** Copies the base tree and lays the example's files over it. */
    public void layOver(Path base, Path target) throws IOException {
        try (Stream<Path> walk = Files.walk(base)) {
            for (Path file : walk.filter(Files::isRegularFile).toList()) {
                write(target.resolve(base.relativize(file).toString()), Files.readString(file));
            }
        }
        for (Overlay overlay : overlays) {
            Path file = target.resolve(overlay.path());
            if (overlay.text().isPresent()) {
                write(file, overlay.text().get());
            } else {
                Files.delete(file);
            }
        }
    }

    private static void write(Path file, String text) throws IOException {
        Path folder = file.getParent();
        if (folder != null) {
            Files.createDirectories(folder);
        }
        Files.writeString(file, text, StandardCharsets.UTF_8);
    }
}

package hutchleaf.cli;

import hutchleaf.press.PageDigests;
import hutchleaf.press.Pages;
import hutchleaf.press.Printed;
import hutchleaf.sheet.Sides;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * What is new since the last run into the same folder. A packet that was printed before gets a file with just its changed
 * sheets, so that nobody prints it all again.
 */
final class PagesChanged {
    /** The state of the last run, in the folder of finished files: a file's name and a digest of each of its pages. */
    private static final String STATE = ".packet-pages";

    static final String FOLDER = "changed/";
    static final String LIST = FOLDER + "what-to-print-again.txt";

    private final String version;
    private final Map<String, List<String>> before;
    private final Map<String, List<Integer>> changed = new TreeMap<>();
    private final Map<String, List<String>> now = new TreeMap<>();

    private PagesChanged(String version, Map<String, List<String>> before) {
        this.version = version;
        this.before = before;
    }

    /**
     * Reads the state of the last run.
     *
     * @param version words on every page that tell only the day, and make no difference
     */
    static PagesChanged since(Path folder, String version) {
        Map<String, List<String>> before = new LinkedHashMap<>();
        Path state = folder.resolve(STATE);
        try {
            for (String line : Files.exists(state) ? Files.readAllLines(state) : List.<String>of()) {
                String[] parts = line.split("\t", -1);
                if (parts.length == 2) {
                    before.put(parts[0], List.of(parts[1].split(" ", -1)));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException("could not read " + state, e);
        }
        return new PagesChanged(version, before);
    }

    /** Notes a file's pages, and writes those that changed into a file of their own. */
    void compare(String file, Printed pdf, Outputs outputs) {
        List<String> digests = PageDigests.of(pdf, version);
        List<Integer> pages = different(file, digests);
        synchronized (this) {
            now.put(file, digests);
            if (!pages.isEmpty()) {
                changed.put(file, pages);
            }
        }
        if (!pages.isEmpty() && pages.size() < pdf.pages()) {
            outputs.add(name(file), Pages.only(pdf, pages));
        }
    }

    private static String name(String file) {
        return FOLDER + file.replaceFirst("^packets/", "").replace('/', '-');
    }

    /** The changed pages, with the other side of each sheet; none for a file that was not there before. */
    private List<Integer> different(String file, List<String> digests) {
        List<String> old = before.get(file);
        if (old == null) {
            return List.of();
        }
        TreeSet<Integer> pages = new TreeSet<>();
        for (int page = 1; page <= digests.size(); page++) {
            if (page > old.size() || !old.get(page - 1).equals(digests.get(page - 1))) {
                pages.add(page);
                int other = page % 2 == 0 ? page - 1 : page + 1;
                if (PacketPrinter.sides(file.substring(file.lastIndexOf('/') + 1)) == Sides.TWO
                        && other <= digests.size()) {
                    pages.add(other);
                }
            }
        }
        return new ArrayList<>(pages);
    }

    /** Writes the list for the leader, when there is anything to print again. */
    void list(Outputs outputs) {
        if (changed.isEmpty()) {
            return;
        }
        StringBuilder list = new StringBuilder("Print these again, " + version + ":\n\n");
        changed.forEach((file, pages) -> {
            boolean whole = pages.size() == now.getOrDefault(file, List.of()).size();
            String numbers = pages.stream().map(String::valueOf).collect(Collectors.joining(", "));
            list.append(whole ? file + ": all of it" : name(file) + ": pages " + numbers + " of " + file)
                    .append('\n');
        });
        outputs.add(LIST, list.toString());
    }

    /** How many files differ from what was printed before. */
    int files() {
        return changed.size();
    }

    /** Keeps the state for the next run; what was not printed now stays as it was. */
    void keep(Path folder) {
        Map<String, List<String>> all = new TreeMap<>(before);
        all.putAll(now);
        List<String> lines = all.entrySet().stream()
                .map(entry -> entry.getKey() + "\t" + String.join(" ", entry.getValue()))
                .toList();
        try {
            Files.createDirectories(folder);
            Files.write(folder.resolve(STATE), lines);
        } catch (IOException e) {
            throw new UncheckedIOException("could not write into " + folder, e);
        }
    }
}

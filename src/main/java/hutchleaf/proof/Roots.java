package hutchleaf.proof;

import hutchleaf.model.Library;
import hutchleaf.problem.Place;

/** How messages name the folder of the tree. */
final class Roots {
    private Roots() {}

    /** For example {@code content/}; empty for a tree without topics. */
    static String of(Library library) {
        return library.topics().stream()
                .filter(topic ->
                        topic.head().credits().at().file().endsWith(topic.head().path()))
                .findFirst()
                .map(topic -> {
                    String file = topic.head().credits().at().file();
                    return file.substring(0, file.length() - topic.head().path().length());
                })
                .orElse("");
    }

    /** The tree as a whole, for what no single file is at fault for. */
    static Place place(Library library) {
        return Place.whole(of(library).replaceAll("/$", ""));
    }
}

package hutchleaf.content;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;

/** Paths inside the content tree, as text with forward slashes: never a path of the machine. */
final class TreePath {
    private TreePath() {}

    /**
     * Where a path written in a file leads.
     *
     * @param folder the file's folder from the root; empty at the root
     * @return the path from the root; empty when it leads out of the tree
     */
    static Optional<String> resolve(String folder, String written) {
        if (written.startsWith("/") || written.contains("\\")) {
            return Optional.empty();
        }
        Deque<String> steps = new ArrayDeque<>();
        for (String step : (folder + "/" + written).split("/")) {
            if (step.equals("..")) {
                if (steps.isEmpty()) {
                    return Optional.empty();
                }
                steps.removeLast();
            } else if (!step.isEmpty() && !step.equals(".")) {
                steps.addLast(step);
            }
        }
        return steps.isEmpty() ? Optional.empty() : Optional.of(String.join("/", steps));
    }

    /** The folder of a path; empty at the root. */
    static String folder(String path) {
        int slash = path.lastIndexOf('/');
        return slash < 0 ? "" : path.substring(0, slash);
    }
}

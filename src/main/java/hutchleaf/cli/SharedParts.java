package hutchleaf.cli;

import hutchleaf.press.Printed;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;

/** What many packets have in common, printed once by whichever thread needs it first. */
final class SharedParts {
    private final Map<Object, Optional<Printed>> parts = new ConcurrentHashMap<>();

    /**
     * A part.
     *
     * @param key all that its pages depend on
     * @param print makes it; empty where it cannot be printed, with a problem
     */
    Optional<Printed> get(Object key, Supplier<Optional<Printed>> print) {
        return parts.computeIfAbsent(key, absent -> print.get());
    }
}

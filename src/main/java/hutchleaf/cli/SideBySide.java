package hutchleaf.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/** Runs jobs two at a time: more would not fit the memory of a small computer. */
final class SideBySide {
    private static final int THREADS = 2;

    private SideBySide() {}

    /** What the jobs gave, in their order; they are begun in it too. */
    static <T> List<T> run(List<Callable<T>> jobs) {
        ExecutorService threads = Executors.newFixedThreadPool(THREADS);
        try {
            List<T> results = new ArrayList<>();
            for (Future<T> future : jobs.stream().map(threads::submit).toList()) {
                results.add(future.get());
            }
            return results;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("the run was interrupted", e);
        } catch (ExecutionException e) {
            throw e.getCause() instanceof RuntimeException ours ? ours : new IllegalStateException(e);
        } finally {
            threads.shutdownNow();
        }
    }
}

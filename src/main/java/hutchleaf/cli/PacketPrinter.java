package hutchleaf.cli;

import hutchleaf.edition.Packet;
import hutchleaf.model.Card;
import hutchleaf.model.Member;
import hutchleaf.page.Spelled;
import hutchleaf.press.InkMeter;
import hutchleaf.press.Printed;
import hutchleaf.problem.Problems;
import hutchleaf.sheet.InkUse;
import hutchleaf.sheet.Sides;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** Prints packets side by side, each straight into the folder of finished files, so that memory holds only a few. */
final class PacketPrinter {
    /** A packet to print, and where it goes. */
    record Job(Packet packet, String folder, List<Card> cards, boolean withGuide) {}

    /**
     * A printed packet.
     *
     * @param pages of each file by its name
     * @param ink of each file by its name
     */
    record Made(Job job, Map<String, Integer> pages, Map<String, InkUse> ink) {
        /** Sheets of all its files. */
        int sheets() {
            return pages.entrySet().stream()
                    .mapToInt(file -> sides(file.getKey()).sheets(file.getValue()))
                    .sum();
        }

        String whom() {
            return job.packet().member().map(Member::name).map(Spelled::plain).orElse("filled in by hand") + ", "
                    + job.packet().edition().level().word();
        }
    }

    private static final Set<String> TWO_SIDED = Set.of(PacketPress.READ, PacketPress.BOOKLET, PacketPress.GUIDE);

    /** The reading pages and the guide are printed on both sides. */
    static Sides sides(String file) {
        return TWO_SIDED.contains(file) ? Sides.TWO : Sides.ONE;
    }

    /** Presses at work. More would not fit the memory of a small computer. */
    private static final int SIDE_BY_SIDE = 2;

    private final InkMeter meter = new InkMeter();
    private final Supplier<PacketPress> presses;
    private final PagesChanged changed;
    private final Outputs outputs;
    private final Problems problems;

    PacketPrinter(Supplier<PacketPress> presses, PagesChanged changed, Outputs outputs, Problems problems) {
        this.presses = presses;
        this.changed = changed;
        this.outputs = outputs;
        this.problems = problems;
    }

    /**
     * Prints all of them.
     *
     * @param done told after each
     * @return in the order of the jobs
     */
    List<Made> print(List<Job> jobs, Consumer<Integer> done) {
        LinkedBlockingQueue<Integer> waiting = new LinkedBlockingQueue<>();
        for (int job = 0; job < jobs.size(); job++) {
            waiting.add(job);
        }
        Map<Integer, Made> made = new TreeMap<>();
        ExecutorService threads = Executors.newFixedThreadPool(SIDE_BY_SIDE);
        try {
            List<Future<Problems>> workers = new ArrayList<>();
            for (int worker = 0; worker < SIDE_BY_SIDE; worker++) {
                workers.add(threads.submit(() -> work(jobs, waiting, made, done)));
            }
            for (Future<Problems> worker : workers) {
                problems.addAll(worker.get());
            }
            return List.copyOf(made.values());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("the run was interrupted", e);
        } catch (ExecutionException e) {
            throw e.getCause() instanceof RuntimeException ours ? ours : new IllegalStateException(e);
        } finally {
            threads.shutdownNow();
        }
    }

    private Problems work(
            List<Job> jobs, LinkedBlockingQueue<Integer> waiting, Map<Integer, Made> made, Consumer<Integer> done) {
        PacketPress press = presses.get();
        for (Integer index = waiting.poll(); index != null; index = waiting.poll()) {
            Job job = jobs.get(index);
            Made packet = made(job, press.print(job.packet(), job.cards(), job.withGuide()));
            synchronized (made) {
                made.put(index, packet);
                done.accept(made.size());
            }
        }
        return press.problems();
    }

    private Made made(Job job, Map<String, Printed> files) {
        Map<String, Integer> pages = new TreeMap<>();
        Map<String, InkUse> ink = new TreeMap<>();
        files.forEach((name, pdf) -> {
            outputs.add(job.folder() + name, pdf);
            pages.put(name, pdf.pages());
            ink.put(name, InkUse.of(meter.of(pdf)));
            if (!name.equals(PacketPress.GUIDE)) {
                changed.compare(job.folder() + name, pdf, outputs);
            }
        });
        return new Made(job, pages, ink);
    }
}

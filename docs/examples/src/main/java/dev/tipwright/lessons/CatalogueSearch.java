package dev.tipwright.lessons;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.evidence.Caution;
import dev.tipwright.core.plan.Progress;
import dev.tipwright.core.quantity.Inertia;
import dev.tipwright.swingweight.balance.Balance;
import dev.tipwright.swingweight.scale.SwingWeight;
import dev.tipwright.swingweight.scale.SwingWeightScale;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletionService;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorCompletionService;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.ToDoubleFunction;

/**
 * A search through a million clubs. The customer brings one club that feels right and the shop has shelves of heads, shafts, grips and
 * tip weights: which of all clubs that can be made of them reads the same on the scale and comes nearest to its inertia?
 *
 * <p>The library starts no threads and keeps no state, so any number of threads may call it. The search is cut into slices, each a task
 * of its own; clubs are ordered by cost and then by number, so that the answer does not depend on which slice is done first. Progress is
 * told by the thread that asked. To cancel, interrupt that thread: every slice stops at its next club.
 */
public final class CatalogueSearch {

    static final SwingWeightScale SCALE = SwingWeightScale.LETTERS_AT_14_INCHES;
    static final SwingWeight READS = SCALE.parse("D1");
    static final double WITHIN = 0.25;
    static final Inertia WANTED = Inertia.ofKilogramSquareCentimetres(2650);

    private static final int SLICE = 4096;

    /** A club by its number, and how far it is from what is wanted. */
    record Offer(int number, double cost) implements Comparable<Offer> {
        @Override
        public int compareTo(Offer other) {
            int byCost = Double.compare(cost, other.cost);
            return byCost == 0 ? Integer.compare(number, other.number) : byCost;
        }
    }

    /** The nearest offers, nearest first; how many clubs would do at all, and how many were looked at. */
    record Result(List<Offer> nearest, int possible, int searched) {}

    private final Catalogue catalogue;
    private final ToDoubleFunction<Build> cost;
    private final int keep;

    /**
     * A search that keeps so many of the nearest.
     *
     * @param catalogue what to search
     * @param cost of a club, or infinity for one that will not do; a pure function, because many threads call it
     * @param keep how many to keep
     */
    CatalogueSearch(Catalogue catalogue, ToDoubleFunction<Build> cost, int keep) {
        this.catalogue = catalogue;
        this.cost = cost;
        this.keep = keep;
    }

    /** How far the inertia is off, in kg cm2; infinity for a club that reads another swing weight. */
    static double off(Build club) {
        Balance balance = Balance.of(club);
        boolean reads = Math.abs(balance.on(SCALE).over(READS)) <= WITHIN;
        return reads
                ? Math.abs(balance.inertiaAboutButt().minus(WANTED).kilogramSquareCentimetres())
                : Double.POSITIVE_INFINITY;
    }

    /** Runs on the threads of that pool, whose owner shuts it down. */
    Result run(ExecutorService pool, Progress progress) throws InterruptedException {
        CompletionService<Result> done = new ExecutorCompletionService<>(pool);
        List<Future<Result>> slices = new ArrayList<>();
        try {
            for (int from = 0; from < catalogue.size(); from += SLICE) {
                int first = from;
                slices.add(done.submit(() -> slice(first, Math.min(catalogue.size(), first + SLICE))));
            }
            Result all = new Result(List.of(), 0, 0);
            while (all.searched() < catalogue.size()) {
                all = nearest(all, done.take().get());
                progress.at(all.searched(), catalogue.size());
            }
            return all;
        } catch (ExecutionException e) {
            throw new IllegalStateException("a slice of the search failed", e.getCause());
        } finally {
            slices.forEach(slice -> slice.cancel(true));
        }
    }

    private Result slice(int from, int to) {
        PriorityQueue<Offer> nearest = new PriorityQueue<>(Comparator.reverseOrder());
        int possible = 0;
        for (int number = from; number < to; number++) {
            if (Thread.currentThread().isInterrupted()) {
                throw new CancellationException();
            }
            Offer offer = new Offer(number, cost.applyAsDouble(catalogue.club(number)));
            if (offer.cost() < Double.POSITIVE_INFINITY) {
                possible++;
                nearest.add(offer);
                if (nearest.size() > keep) {
                    nearest.remove();
                }
            }
        }
        return new Result(List.copyOf(nearest), possible, to - from);
    }

    private Result nearest(Result a, Result b) {
        List<Offer> both = new ArrayList<>(a.nearest());
        both.addAll(b.nearest());
        both.sort(null);
        return new Result(
                List.copyOf(both.subList(0, Math.min(keep, both.size()))),
                a.possible() + b.possible(),
                a.searched() + b.searched());
    }

    /** Searches a million clubs on all cores and prints the page; how far it is goes to standard error. */
    public static void main(String[] args) throws InterruptedException {
        Catalogue million = Catalogue.invented(20, 25, 10, 20, 10);
        ExecutorService pool = Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors());
        try {
            Sheet.print(page(million, pool, (done, of) -> System.err.print("\r" + done + " of " + of)));
        } finally {
            pool.shutdownNow();
            System.err.println();
        }
    }

    static String page(Catalogue catalogue, ExecutorService pool, Progress progress) throws InterruptedException {
        Result result = new CatalogueSearch(catalogue, CatalogueSearch::off, 5).run(pool, progress);
        Sheet sheet = new Sheet().title("A search through the shelves");
        sheet.say(
                "%d heads, %d shafts, %d grips, %d tip weights and %d lengths make %d clubs. Wanted is one that reads %s"
                        + " within %.2f of a point and has an inertia near %.0f kg cm2. %d of them read so; the nearest:",
                catalogue.heads().size(),
                catalogue.shafts().size(),
                catalogue.grips().size(),
                catalogue.weights().size(),
                catalogue.lengths().size(),
                catalogue.size(),
                SCALE.designation(READS),
                WITHIN,
                WANTED.kilogramSquareCentimetres(),
                result.possible());
        for (Offer offer : result.nearest()) {
            Build club = catalogue.club(offer.number());
            Balance balance = Balance.of(club);
            sheet.line(
                            "number %d: %s, %s, %s, %s",
                            offer.number(),
                            club.label(),
                            club.parts().shaft().label(),
                            club.parts().grip().label(),
                            club.work().attached().get(0).label())
                    .row("  cut length", "%.3f in", club.cutLength().inches())
                    .row(
                            "  reads",
                            "%s (%.2f points)",
                            SCALE.designation(balance.on(SCALE)),
                            balance.on(SCALE).points())
                    .row(
                            "  inertia about the butt",
                            "%.2f kg cm2, %.2f off",
                            balance.inertiaAboutButt().kilogramSquareCentimetres(),
                            offer.cost())
                    .row("  total mass", "%.1f g", balance.total().grams())
                    .gap();
        }
        sheet.say(
                "Limits: a number that is a hundredth off is not measured to a hundredth. Head, shaft and grip as weighed, the head's"
                        + " centre of mass as balanced: a millimetre of it is worth half a gram of head. Plan the one you choose"
                        + " club by club, with its fit and its findings, before anything is cut.");
        return sheet.cautions(Caution.LEAD, Caution.HEAD_CAN_COME_OFF, Caution.MAKERS_WORD)
                .toString();
    }
}

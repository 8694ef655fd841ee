package dev.tipwright.lessons;

import static dev.tipwright.lessons.Lumps.INCH;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.tipwright.core.plan.Progress;
import dev.tipwright.lessons.CatalogueSearch.Offer;
import dev.tipwright.lessons.CatalogueSearch.Result;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/** The search finds what plain sums over every club find, the same on any number of threads, and stops when it is told to. */
class CatalogueSearchTest {

    static final Catalogue SMALL = Catalogue.invented(14, 12, 6, 10, 10);

    private static Result search(int threads, Progress progress) throws InterruptedException {
        ExecutorService pool = Executors.newFixedThreadPool(threads);
        try {
            return new CatalogueSearch(SMALL, CatalogueSearch::off, 25).run(pool, progress);
        } finally {
            pool.shutdownNow();
        }
    }

    @Test
    void isTheSameOnOneThreadAndOnMany() throws InterruptedException {
        Result one = search(1, Progress.UNHEARD);
        assertThat(search(2, Progress.UNHEARD)).isEqualTo(one);
        assertThat(search(7, Progress.UNHEARD)).isEqualTo(one);
        assertThat(one.searched()).isEqualTo(SMALL.size()).isEqualTo(14 * 12 * 6 * 10 * 10);
        assertThat(one.nearest()).hasSize(25).isSorted();
    }

    /** By the closed forms of statics for every club, in doubles, without the library. */
    @Test
    void findsWhatPlainSumsFind() throws InterruptedException {
        List<Offer> all = new ArrayList<>();
        int edge = 0;
        for (int n = 0; n < SMALL.size(); n++) {
            double[] sums = sums(n);
            double points = Math.abs(((sums[1] - sums[0] * 14 * INCH) / (28.349523125 * INCH) - 161) / 1.75 - 31);
            // A club on the very edge of the quarter point may fall either way by rounding.
            edge += Math.abs(points - 0.25) < 1e-9 ? 1 : 0;
            if (points <= 0.25) {
                all.add(new Offer(n, Math.abs(sums[2] / 1e5 - 2650)));
            }
        }
        all.sort(null);
        Result found = search(2, Progress.UNHEARD);
        assertThat(edge).isZero();
        assertThat(found.possible()).isEqualTo(all.size()).isGreaterThan(1000);
        for (int k = 0; k < 25; k++) {
            assertThat(found.nearest().get(k).number()).isEqualTo(all.get(k).number());
            // Of 2650: rounding of some twenty operations.
            assertThat(found.nearest().get(k).cost()).isCloseTo(all.get(k).cost(), within(1e-8));
        }
    }

    /** Mass, moment and inertia of club {@code n}: the shelves' steps as {@link Catalogue#invented} has them. */
    private static double[] sums(int n) {
        double cut = (36 + .125 * (n % 10)) * INCH;
        double weight = 1 + .5 * (n / 10 % 10);
        double grip = 42 + 1.7 * (n / 100 % 6);
        double shaft = 60 + 2.5 * (n / 600 % 12);
        int shelf = n / 7200;
        double head = 250 + 1.5 * shelf;
        double tip = .125 * INCH + cut;
        double centre = tip - 1.25 * INCH + 2.15 * INCH;
        double place = tip - .25 * INCH;
        double[] rest = rest(shaft, cut, tip);
        return new double[] {
            head + weight + grip + rest[0],
            head * centre + weight * place + grip * 4.4 * INCH + rest[1],
            head * (centre * centre + Math.pow(1.3 * INCH, 2))
                    + 2.4e5
                    + weight * place * place
                    + grip * Math.pow(4.4 * INCH, 2)
                    + rest[2]
        };
    }

    /** The cut shaft: integrals of {@code (a + b z) (t - z)^k} from half an inch up, {@code t} the top of the grip, by the power rule. */
    private static double[] rest(double grams, double cut, double tip) {
        double r = 39 * INCH;
        double balance = 20.2 * INCH;
        double a = (4 * r * grams - 6 * grams * balance) / (r * r);
        double b = (12 * grams * balance - 6 * r * grams) / (r * r * r);
        double t = tip + .5 * INCH;
        double[] sums = new double[3];
        for (int side = 0; side < 2; side++) {
            double z = side == 0 ? .5 * INCH : .5 * INCH + cut;
            double sign = side == 0 ? -1 : 1;
            double m = a * z + b * z * z / 2;
            double mz = a * z * z / 2 + b * z * z * z / 3;
            double mzz = a * z * z * z / 3 + b * z * z * z * z / 4;
            sums[0] += sign * m;
            sums[1] += sign * (t * m - mz);
            sums[2] += sign * (t * t * m - 2 * t * mz + mzz);
        }
        return sums;
    }

    @Test
    void tellsHowFarItIs() throws InterruptedException {
        List<Integer> heard = new ArrayList<>();
        search(2, (done, of) -> {
            assertThat(of).isEqualTo(SMALL.size());
            heard.add(done);
        });
        assertThat(heard).isSorted().doesNotHaveDuplicates().last().isEqualTo(SMALL.size());
    }

    /** Clubs past the first slice wait for good, so only an interrupt can end them. */
    @Test
    void stopsWhenInterrupted() throws InterruptedException {
        CountDownLatch never = new CountDownLatch(1);
        AtomicInteger looked = new AtomicInteger();
        ExecutorService pool = Executors.newFixedThreadPool(2);
        CatalogueSearch search = new CatalogueSearch(
                SMALL,
                club -> {
                    if (looked.incrementAndGet() > 4096) {
                        try {
                            never.await();
                        } catch (InterruptedException e) {
                            Thread.currentThread().interrupt();
                        }
                    }
                    return 0;
                },
                5);
        Thread.currentThread().interrupt();
        assertThatThrownBy(() -> search.run(pool, Progress.UNHEARD)).isInstanceOf(InterruptedException.class);
        pool.shutdown();
        assertThat(pool.awaitTermination(20, TimeUnit.SECONDS)).isTrue();
        assertThat(looked.get()).isLessThan(SMALL.size());
    }

    @Test
    void aFailingSliceIsSaid() {
        ExecutorService pool = Executors.newFixedThreadPool(2);
        try {
            CatalogueSearch search = new CatalogueSearch(
                    SMALL,
                    club -> {
                        throw new IllegalStateException("no such club");
                    },
                    5);
            assertThatThrownBy(() -> search.run(pool, Progress.UNHEARD)).hasRootCauseMessage("no such club");
        } finally {
            pool.shutdownNow();
        }
    }
}

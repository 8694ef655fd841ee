package dev.tipwright.core.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;

import java.util.concurrent.CancellationException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Models that fail, misbehave or never end, and arguments that are none. */
class HostileModelTest {

    private final ExecutorService executor = Executors.newFixedThreadPool(2);

    @AfterEach
    void stop() throws InterruptedException {
        executor.shutdownNow();
        assertThat(executor.awaitTermination(10, TimeUnit.SECONDS)).isTrue();
    }

    private static Measurand measurand(Model model) {
        return Measurand.of("y", "mm", Inputs.of(Input.ofStandard("x", "in", 3, 0.5), Input.exact("k", "1", 2)), model);
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void valueThatIsNoneIsRefusedWithOutputAndInputs(double value) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Budget.of(measurand(x -> value)))
                .withMessage("model output y must be finite, was " + value + " mm at x = 3.0 in, k = 2.0 1");
        assertThatIllegalArgumentException().isThrownBy(() -> SecondOrder.of(measurand(x -> value)));
        assertThatIllegalArgumentException().isThrownBy(() -> LinearityCheck.of(measurand(x -> value), 0.1));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> MonteCarlo.of(10, 1).run(measurand(x -> value)))
                .withMessageStartingWith("model output y must be finite, was " + value + " mm at x = ");
    }

    @Test
    void theFirstFailingTrialIsNamedOnAnyNumberOfThreads() {
        Measurand rare = measurand(x -> x[0] < 1.5 ? Double.NaN : x[0]);
        MonteCarlo run = MonteCarlo.of(100_000, 1);
        String alone = failure(() -> run.run(rare));
        assertThat(alone).startsWith("model output y must be finite, was NaN mm at x = 1.");
        assertThat(failure(() -> run.run(rare, executor))).isEqualTo(alone);
    }

    /** No trial of the first 8192, which one thread does at a stretch, lies below the least of them; a later one does. */
    @Test
    void aFirstFailureInALaterBlockIsNamedOnAnyNumberOfThreads() {
        double[] least = {3};
        MonteCarlo.of(8192, 1).run(measurand(x -> {
            least[0] = Math.min(least[0], x[0]);
            return x[0];
        }));
        Measurand rarer = measurand(x -> x[0] < least[0] ? Double.NaN : x[0]);
        MonteCarlo run = MonteCarlo.of(100_000, 1);
        String alone = failure(() -> run.run(rarer));
        assertThat(alone).startsWith("model output y must be finite, was NaN mm at x = ");
        assertThat(failure(() -> run.run(rarer, executor))).isEqualTo(alone);
    }

    @Test
    void aNegativeZeroOfTheModelIsZero() {
        Measurand none = measurand(x -> -0.0);
        assertThat(Double.doubleToLongBits(Budget.of(none).value())).isZero();
        assertThat(Double.doubleToLongBits(
                        MonteCarlo.of(2, 1).run(none).sorted().min().orElseThrow()))
                .isZero();
    }

    private static String failure(Runnable run) {
        try {
            run.run();
        } catch (IllegalArgumentException e) {
            return e.getMessage();
        }
        return "no failure";
    }

    @Test
    void exceptionsOfTheModelComeOutAsTheyAre() {
        Measurand throwing = measurand(x -> {
            throw new IllegalStateException("mine");
        });
        assertThatIllegalStateException().isThrownBy(() -> Budget.of(throwing)).withMessage("mine");
        assertThatIllegalStateException()
                .isThrownBy(() -> MonteCarlo.of(10, 1).run(throwing, executor))
                .withMessage("mine");
        Measurand failing = measurand(x -> {
            throw new AssertionError("mine");
        });
        assertThatExceptionOfType(AssertionError.class)
                .isThrownBy(() -> MonteCarlo.of(10, 1).run(failing, executor))
                .withMessage("mine");
    }

    @Test
    void blocksNotYetBegunAreDroppedAfterAFailure() throws InterruptedException {
        int block = 8192;
        AtomicInteger calls = new AtomicInteger();
        CountDownLatch failed = new CountDownLatch(1);
        ExecutorService single = Executors.newSingleThreadExecutor();
        // The second block waits in its first trial until the run has failed over the report of the first.
        Measurand waiting = measurand(x -> {
            if (calls.incrementAndGet() > block) {
                await(failed);
            }
            return x[0];
        });
        MonteCarlo run = MonteCarlo.of(100 * block, 1).withProgress((done, total) -> {
            throw new IllegalStateException("enough");
        });
        assertThatIllegalStateException()
                .isThrownBy(() -> run.run(waiting, single))
                .withMessage("enough");
        failed.countDown();
        single.shutdown();
        assertThat(single.awaitTermination(10, TimeUnit.SECONDS)).isTrue();
        assertThat(calls.get()).isBetween(block, 2 * block);
    }

    private static void await(CountDownLatch latch) {
        try {
            latch.await();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    @Test
    void modelThatChangesItsArgumentChangesNothing() {
        Measurand tidy = measurand(x -> x[0] * x[1]);
        Measurand untidy = measurand(x -> {
            double y = x[0] * x[1];
            x[0] = Double.NaN;
            x[1] = -1;
            return y;
        });
        assertThat(Budget.of(untidy).contributions()).isEqualTo(Budget.of(tidy).contributions());
        assertThat(SecondOrder.of(untidy)).isEqualTo(SecondOrder.of(tidy));
        assertThat(LinearityCheck.of(untidy, 0.05)).isEqualTo(LinearityCheck.of(tidy, 0.05));
        assertThat(MonteCarlo.of(1000, 1).run(untidy).sorted().toArray())
                .isEqualTo(MonteCarlo.of(1000, 1).run(tidy).sorted().toArray());
    }

    @Test
    void interruptionEndsTheWaitAndStaysMarked() {
        CountDownLatch never = new CountDownLatch(1);
        Measurand stuck = measurand(x -> {
            await(never);
            return x[0];
        });
        Thread.currentThread().interrupt();
        assertThatExceptionOfType(CancellationException.class)
                .isThrownBy(() -> MonteCarlo.of(10, 1).run(stuck, executor))
                .withMessage("interrupted while waiting for trials")
                .withCauseInstanceOf(InterruptedException.class);
        assertThat(Thread.interrupted()).isTrue();
        never.countDown();
    }

    @Test
    void executorThatTakesNoMoreIsRefused() {
        executor.shutdown();
        assertThatExceptionOfType(RejectedExecutionException.class)
                .isThrownBy(() -> MonteCarlo.of(10, 1).run(measurand(x -> x[0]), executor));
    }

    @Test
    void overflowIsSaid() {
        Measurand steep = measurand(x -> x[0] < 3 ? -1e308 : 1e308);
        assertThatExceptionOfType(ArithmeticException.class)
                .isThrownBy(() -> Budget.of(steep))
                .withMessage("sensitivity of y to x overflows the range of a double");
        assertThatExceptionOfType(ArithmeticException.class)
                .isThrownBy(() -> Budget.of(measurand(x -> 5e307 * x[0])).expanded(1 - 1e-16))
                .withMessage("expanded uncertainty overflows the range of a double");
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 0, -1, 100_000_001, Integer.MIN_VALUE})
    void refusesANumberOfTrialsOutsideItsRange(int trials) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> MonteCarlo.of(trials, 1))
                .withMessage("trials must lie between 2 and 100000000, was " + trials);
    }

    @Test
    void theLeastAndTheMostTrialsCanBeAskedFor() {
        assertThat(MonteCarlo.of(2, 1).run(measurand(x -> x[0])).trials()).isEqualTo(2);
        assertThat(MonteCarlo.of(100_000_000, 1)).hasToString("100000000 trials, seed 1");
    }

    @Test
    void refusesNulls() {
        Measurand fine = measurand(x -> x[0]);
        assertThatNullPointerException().isThrownBy(() -> Budget.of(null)).withMessage("measurand");
        assertThatNullPointerException().isThrownBy(() -> SecondOrder.of(null)).withMessage("measurand");
        MonteCarlo run = MonteCarlo.of(10, 1);
        assertThatNullPointerException().isThrownBy(() -> run.run(null)).withMessage("measurand");
        assertThatNullPointerException()
                .isThrownBy(() -> run.run(null, executor))
                .withMessage("measurand");
        assertThatNullPointerException().isThrownBy(() -> run.run(fine, null)).withMessage("executor");
        assertThatNullPointerException()
                .isThrownBy(() -> run.withProgress(null))
                .withMessage("newProgress");
        Inputs inputs = fine.inputs();
        assertThatNullPointerException()
                .isThrownBy(() -> Measurand.of(null, "mm", inputs, x -> 0))
                .withMessage("name");
        assertThatNullPointerException()
                .isThrownBy(() -> Measurand.of("y", null, inputs, x -> 0))
                .withMessage("unit");
        assertThatNullPointerException()
                .isThrownBy(() -> Measurand.of("y", "mm", null, x -> 0))
                .withMessage("inputs");
        assertThatNullPointerException()
                .isThrownBy(() -> Measurand.of("y", "mm", inputs, null))
                .withMessage("model");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Measurand.of(" ", "mm", inputs, x -> 0))
                .withMessage("name must not be blank");
    }
}

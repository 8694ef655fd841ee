package dev.tipwright.core.internal.root;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;

import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/** Where a test on whole numbers turns, against looking at each of them, and at the ends of a long. */
class GridSearchTest {

    @Test
    void everyTurnInASmallBracket() {
        for (int low = -5; low <= 5; low++) {
            for (int high = low; high <= 5; high++) {
                for (int turn = low; turn <= high; turn++) {
                    int at = turn;
                    assertThat(GridSearch.least(low, high, n -> n >= at)).hasValue(at);
                    assertThat(GridSearch.greatest(low, high, n -> n <= at)).hasValue(at);
                }
                assertThat(GridSearch.least(low, high, n -> false)).isEmpty();
                assertThat(GridSearch.greatest(low, high, n -> false)).isEmpty();
                assertThat(GridSearch.least(low, high, n -> true)).hasValue(low);
                assertThat(GridSearch.greatest(low, high, n -> true)).hasValue(high);
            }
        }
    }

    @Test
    void theWholeRangeOfALongInSixtyFiveCalls() {
        Random random = new Random(7);
        for (int i = 0; i < 1000; i++) {
            long turn = i == 0 ? Long.MIN_VALUE : i == 1 ? Long.MAX_VALUE : random.nextLong();
            AtomicInteger calls = new AtomicInteger();
            assertThat(GridSearch.least(Long.MIN_VALUE, Long.MAX_VALUE, n -> {
                        calls.incrementAndGet();
                        return n >= turn;
                    }))
                    .hasValue(turn);
            assertThat(calls.get()).isLessThanOrEqualTo(65);
            assertThat(GridSearch.greatest(Long.MIN_VALUE, Long.MAX_VALUE, n -> n <= turn))
                    .hasValue(turn);
        }
    }

    @Test
    void theArgumentsAreChecked() {
        assertThatNullPointerException()
                .isThrownBy(() -> GridSearch.least(0, 1, null))
                .withMessage("holds");
        assertThatNullPointerException()
                .isThrownBy(() -> GridSearch.greatest(0, 1, null))
                .withMessage("holds");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> GridSearch.least(1, 0, n -> true))
                .withMessage("high must not be below low 1, was 0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> GridSearch.greatest(1, 0, n -> true))
                .withMessage("high must not be below low 1, was 0");
    }
}

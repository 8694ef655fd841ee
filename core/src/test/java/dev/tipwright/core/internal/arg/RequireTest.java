package dev.tipwright.core.internal.arg;

import static dev.tipwright.core.Bench.len;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;

import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every check names the argument, the rule and the value, and gives back what passes. */
class RequireTest {

    @Test
    void givenNamesTheArgument() {
        assertThat(Require.given("thing", "x")).isEqualTo("x");
        assertThatNullPointerException()
                .isThrownBy(() -> Require.given("thing", null))
                .withMessage("thing must not be null");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "\t", "a\nb", "a\u0000b", "a\u0085b"})
    void aLabelIsPrintable(String label) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Require.label("label", label))
                .withMessageStartingWith("label must be 1 to 80 printable characters, was \"")
                .withMessageMatching("[^\\p{Cntrl}]*");
    }

    @Test
    void aLabelIsAtMostEightyCharacters() {
        assertThat(Require.label("label", "7")).isEqualTo("7");
        assertThat(Require.label("label", "x".repeat(80))).hasSize(80);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Require.label("label", "x".repeat(81)))
                .withMessageContaining("1 to 80");
        assertThatNullPointerException()
                .isThrownBy(() -> Require.label("label", null))
                .withMessage("label must not be null");
    }

    @Test
    void listsAreCopiedAndHoldNoNull() {
        List<String> given = new ArrayList<>(List.of("a", "b"));
        List<String> copy = Require.list("things", given);
        given.set(0, "c");
        assertThat(copy).containsExactly("a", "b").isUnmodifiable();
        assertThatNullPointerException()
                .isThrownBy(() -> Require.list("things", Arrays.asList("a", "b", null)))
                .withMessage("things must not hold null, but element 2 is");
        assertThatNullPointerException()
                .isThrownBy(() -> Require.list("things", null))
                .withMessage("things must not be null");
        assertThat(Require.all("things", new String[] {"a"})).containsExactly("a");
        assertThatNullPointerException()
                .isThrownBy(() -> Require.all("things", new String[] {null}))
                .withMessage("things must not hold null, but element 0 is");
        assertThatNullPointerException()
                .isThrownBy(() -> Require.all("things", null))
                .withMessage("things must not be null");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Require.someOf("things", List.of()))
                .withMessage("things must not be empty, was []");
    }

    @Test
    void distinctNamesWhatComesTwice() {
        List<String> list = List.of("one", "two", "three", "ten", "six");
        assertThat(Require.distinct("things", list, thing -> thing)).isSameAs(list);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Require.distinct("things", list, String::length))
                .withMessage("things must name each one once, but has more than one of [3, 3, 3]");
    }

    @Test
    void signsOfLengthsAndMasses() {
        assertThat(Require.positive("x", len("1 nm"))).isEqualTo(len("1 nm"));
        assertThat(Require.positive("x", Mass.parse("1 pg"))).isEqualTo(Mass.parse("1 pg"));
        assertThat(Require.notNegative("x", Length.ZERO)).isEqualTo(Length.ZERO);
        assertThat(Require.notNegative("x", Mass.ZERO)).isEqualTo(Mass.ZERO);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Require.positive("x", Length.ZERO))
                .withMessage("x must be above zero, was 0 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Require.positive("x", Mass.ZERO))
                .withMessage("x must be above zero, was 0 g");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Require.notNegative("x", len("-1 nm")))
                .withMessage("x must not be negative, was -0.000001 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Require.notNegative("x", Mass.parse("-1 g")))
                .withMessage("x must not be negative, was -1 g");
    }

    @Test
    void rangesIncludeTheirEnds() {
        assertThat(Require.between("x", 1, 1, 3)).isEqualTo(1);
        assertThat(Require.between("x", 3, 1, 3)).isEqualTo(3);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Require.between("x", 0, 1, 3))
                .withMessage("x must be from 1 to 3, was 0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Require.between("x", 4, 1, 3))
                .withMessage("x must be from 1 to 3, was 4");
        assertThat(Require.atMost("x", 3, "y", 3)).isEqualTo(3);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Require.atMost("x", 4, "y", 3))
                .withMessage("x must be at most y, 3, was 4");
        assertThatNullPointerException()
                .isThrownBy(() -> Require.atMost("x", 4, "y", null))
                .withMessage("y must not be null");
        Require.extraDigits(0);
        Require.extraDigits(9);
        for (int bad : new int[] {-1, 10}) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Require.extraDigits(bad))
                    .withMessage("extra must be from 0 to 9, was " + bad);
        }
    }

    @Test
    void lengthsBetweenTwoLimitsIncludeThem() {
        for (String in : new String[] {"-2 mm", "0 mm", "3 mm"}) {
            assertThat(Require.within("x", len(in), -2, 3)).isEqualTo(len(in));
        }
        for (String out : new String[] {"-2.000001 mm", "3.000001 mm"}) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Require.within("x", len(out), -2, 3))
                    .withMessage("x must be from -2 mm to 3 mm, was " + out);
        }
        assertThatNullPointerException()
                .isThrownBy(() -> Require.within("x", null, -2, 3))
                .withMessage("x must not be null");
    }

    @Test
    void lengthsAboveZeroEndAtTheirLimit() {
        for (String in : new String[] {"0.000001 mm", "3 mm"}) {
            assertThat(Require.someUpTo("x", len(in), 3)).isEqualTo(len(in));
        }
        for (String out : new String[] {"-1 mm", "0 mm", "3.000001 mm"}) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Require.someUpTo("x", len(out), 3))
                    .withMessage("x must be from 0.000001 mm to 3 mm, was " + out);
        }
        assertThatNullPointerException()
                .isThrownBy(() -> Require.someUpTo("x", null, 3))
                .withMessage("x must not be null");
    }

    @Test
    void whatHoldsIsHandedOn() {
        assertThat(Require.someOf("things", List.of("a", "b"))).containsExactly("a", "b");
    }
}

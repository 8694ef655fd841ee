package dev.tipwright.core.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;
import static org.assertj.core.api.Assertions.within;

import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class InputTest {

    @Test
    void repeatedReadingsGiveTheirMean() {
        // JCGM 100:2008, 4.4.3, table 1: twenty temperatures; mean 100.145, s 1.489, u 0.333 (from memory).
        Input t = Input.ofReadings(
                "t", "C", 96.90, 98.18, 98.25, 98.61, 99.03, 99.49, 99.56, 99.74, 99.89, 100.07, 100.33, 100.42, 100.68,
                100.95, 101.11, 101.20, 101.57, 101.84, 102.36, 102.72);
        assertThat(t.estimate()).isCloseTo(100.145, within(0.0005));
        assertThat(t.standardUncertainty() * Math.sqrt(20)).isCloseTo(1.489, within(0.0005));
        assertThat(t.standardUncertainty()).isCloseTo(0.333, within(0.0005));
        assertThat(t.degreesOfFreedom()).isEqualTo(DegreesOfFreedom.of(19));
        assertThat(t.distribution()).isEqualTo(Distribution.STUDENT);
        assertThat(t).hasToString("t = 100.14 C, u 0.33 C");
    }

    @Test
    void readingsThatAgreeHaveNoSpread() {
        assertThat(Input.ofReadings("d", "mm", 9.4, 9.4, 9.4)).satisfies(d -> {
            assertThat(d.estimate()).isEqualTo(9.4);
            assertThat(d.standardUncertainty()).isZero();
        });
    }

    @Test
    void readingsFarFromZeroKeepTheirSpread() {
        // 1e9 + {4, 7, 13, 16}: mean 10, squares 36 + 9 + 9 + 36 = 90, s = sqrt 30.
        Input x = Input.ofReadings("x", "nm", 1e9 + 4, 1e9 + 7, 1e9 + 13, 1e9 + 16);
        assertThat(x.estimate()).isEqualTo(1e9 + 10);
        assertThat(x.standardUncertainty()).isCloseTo(Math.sqrt(30) / 2, within(1e-15));
    }

    @Test
    void readingsOneDigitApartKeepTheirSpreadThoughTheirMeanCannotBeShown() {
        // s = ulp / sqrt 2, u = ulp / 2; the mean lies between two doubles.
        Input x = Input.ofReadings("x", "nm", 1e9, Math.nextUp(1e9));
        assertThat(x.standardUncertainty()).isCloseTo(Math.ulp(1e9) / 2, within(1e-15 * Math.ulp(1e9)));
    }

    @Test
    void limitsGiveARectangularInput() {
        // JCGM 100:2008, 4.4.5: 100 C within 4 C, u = 4 / sqrt 3 = 2.3 C.
        Input t = Input.ofLimits("t", "C", 100, 4);
        assertThat(t.standardUncertainty()).isCloseTo(2.3, within(0.05)).isEqualTo(4 / Math.sqrt(3));
        assertThat(t.distribution()).isEqualTo(Distribution.RECTANGULAR);
        assertThat(t.degreesOfFreedom()).isEqualTo(DegreesOfFreedom.INFINITE);
    }

    @Test
    void limitsMayGiveATriangularInput() {
        // JCGM 100:2008, 4.4.6: 100 C within 4 C, u = 4 / sqrt 6 = 1.6 C.
        Input t = Input.ofTriangularLimits("t", "C", 100, 4);
        assertThat(t.standardUncertainty()).isCloseTo(1.6, within(0.05));
        assertThat(t.distribution()).isEqualTo(Distribution.TRIANGULAR);
    }

    @Test
    void anExpandedUncertaintyIsDividedByItsFactor() {
        // JCGM 100:2008, 4.3.3: 240 ug at the three standard deviation level is 80 ug.
        Input m = Input.ofExpanded("m", "ug", 1_000_000_325, 240, 3);
        assertThat(m.standardUncertainty()).isEqualTo(80);
        assertThat(m.distribution()).isEqualTo(Distribution.NORMAL);
    }

    @Test
    void partsCanBeChanged() {
        Input d = Input.exact("d", "mm", 9)
                .withName("e")
                .withEstimate(9.4)
                .withStandardUncertainty(0.02)
                .withDegreesOfFreedom(DegreesOfFreedom.of(3))
                .withDistribution(Distribution.STUDENT);
        assertThat(d)
                .isEqualTo(new Input("e", "mm", 9.4, 0.02, DegreesOfFreedom.of(3), Distribution.STUDENT))
                .hasToString("e = 9.400 mm, u 0.020 mm");
    }

    @Test
    void negativeZeroIsZero() {
        assertThat(Input.ofStandard("d", "mm", -0.0, -0.0)).isEqualTo(Input.exact("d", "mm", 0));
    }

    @Test
    void printsWhateverItsSize() {
        assertThat(Input.exact("d", "mm", 9.4)).hasToString("d = 9.4 mm, u 0 mm");
        assertThat(Input.exact("d", "mm", 0)).hasToString("d = 0 mm, u 0 mm");
        assertThat(Input.exact("d", "mm", 1e100)).hasToString("d = 1E+100 mm, u 0 mm");
        assertThat(Input.exact("d", "nm", 50_000_000)).hasToString("d = 50000000 nm, u 0 nm");
        assertThat(Input.ofStandard("d", "mm", 1, 1e-30)).asString().endsWith(", u 1.0E-30 mm");
        assertThat(Input.ofStandard("d", "mm", 1234, 560)).hasToString("d = 1230 mm, u 560 mm");
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, 1e151, -1e151})
    void refusesAnEstimateThatIsNone(double estimate) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Input.exact("d", "mm", estimate))
                .withMessage("estimate of d must lie between -1e150 and 1e150, was " + estimate + " mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Input.ofReadings("d", "mm", 1, estimate))
                .withMessage("reading of d must lie between -1e150 and 1e150, was " + estimate + " mm");
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, -1, 1e-151, 1e151})
    void refusesAnUncertaintyThatIsNone(double u) {
        String rule = " of d must be 0 or lie between 1e-150 and 1e150, was " + u + " mm";
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Input.ofStandard("d", "mm", 9, u))
                .withMessage("standardUncertainty" + rule);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Input.ofLimits("d", "mm", 9, u))
                .withMessage("halfWidth" + rule);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Input.ofTriangularLimits("d", "mm", 9, u))
                .withMessage("halfWidth" + rule);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Input.ofExpanded("d", "mm", 9, u, 2))
                .withMessage("expandedUncertainty" + rule);
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, 0, -2, 9e-101})
    void refusesACoverageFactorThatIsNone(double k) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Input.ofExpanded("d", "mm", 9, 0.1, k))
                .withMessage("coverageFactor of d must lie between 1e-100 and 1e150, was " + k);
    }

    @Test
    void refusesTooFewReadings() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Input.ofReadings("d", "mm", 9.4))
                .withMessage("readings of d must be two or more, was 1");
    }

    @Test
    void refusesAStudentShapeWithoutDegreesOfFreedom() {
        Input d = Input.ofStandard("d", "mm", 9, 0.1);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> d.withDistribution(Distribution.STUDENT))
                .withMessage("degreesOfFreedom of d must be finite for a Student distribution, was infinite");
    }

    @Test
    void refusesMissingAndBlankParts() {
        assertThatNullPointerException()
                .isThrownBy(() -> Input.exact(null, "mm", 1))
                .withMessage("name");
        assertThatNullPointerException()
                .isThrownBy(() -> Input.exact("d", null, 1))
                .withMessage("unit");
        assertThatNullPointerException()
                .isThrownBy(() -> Input.ofReadings("d", "mm", (double[]) null))
                .withMessage("readings");
        Input d = Input.exact("d", "mm", 1);
        assertThatNullPointerException()
                .isThrownBy(() -> d.withDegreesOfFreedom(null))
                .withMessage("degreesOfFreedom");
        assertThatNullPointerException()
                .isThrownBy(() -> d.withDistribution(null))
                .withMessage("distribution");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Input.exact(" ", "mm", 1))
                .withMessage("name must not be blank");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Input.exact("d", "", 1))
                .withMessage("unit must not be blank");
    }

    @Test
    void theLimitsThemselvesAreIn() {
        assertThat(Input.exact("d", "mm", 1e150).estimate()).isEqualTo(1e150);
        assertThat(Input.exact("d", "mm", -1e150).estimate()).isEqualTo(-1e150);
        assertThat(Input.ofStandard("d", "mm", 9, 1e-150).standardUncertainty()).isEqualTo(1e-150);
        assertThat(Input.ofStandard("d", "mm", 9, 1e150).standardUncertainty()).isEqualTo(1e150);
        // 1e50 over 1e150 is 1e-100, to the rounding of one division.
        assertThat(Input.ofExpanded("d", "mm", 9, 1e50, 1e150).standardUncertainty())
                .isCloseTo(1e-100, within(1e-115));
    }

    /** What passes is handed on as it is, but for a negative zero, which would print unlike its equal. */
    @Test
    void whatPassesACheckIsHandedOn() {
        assertThat(Check.share("probability", 0.3)).isEqualTo(0.3);
        assertThat(Check.coverageProbability(0.5)).isEqualTo(0.5);
        assertThat(Check.result("value", 7)).isEqualTo(7);
        assertThat(Double.doubleToLongBits(Check.result("value", -0.0))).isZero();
        assertThat(new Correlation("a", "b", -0.0)).isEqualTo(new Correlation("a", "b", 0));
    }

    /** A hash that is the same for most values makes a list of every map that they are keys of. */
    @Test
    void hashesOfDifferentDegreesOfFreedomDiffer() {
        Set<Integer> hashes = new HashSet<>();
        for (int nu = 1; nu <= 1000; nu++) {
            hashes.add(DegreesOfFreedom.of(nu).hashCode());
        }
        assertThat(hashes).hasSizeGreaterThan(500);
    }
}

package dev.tipwright.core.evidence;

import static dev.tipwright.core.Bench.len;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;

import dev.tipwright.core.quantity.Angle;
import dev.tipwright.core.quantity.Area;
import dev.tipwright.core.quantity.BendingStiffness;
import dev.tipwright.core.quantity.Density;
import dev.tipwright.core.quantity.FirstMoment;
import dev.tipwright.core.quantity.Frequency;
import dev.tipwright.core.quantity.Inertia;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.LineDensity;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.core.quantity.Stress;
import dev.tipwright.core.quantity.Units;
import dev.tipwright.core.quantity.Volume;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Terms as they are printed in inches and in metric, each by hand, and with more digits. */
class TermTest {

    private static Arguments row(Term term, String inch, String metric, String moreInch, String moreMetric) {
        return Arguments.of(term, inch, metric, moreInch, moreMetric);
    }

    /** 36.38 in = 924.052 mm; .3735 in = 9.4869 mm; 720.077887375 g mm = 1 oz in; 1 g/mm = 25.4 g/in. */
    static List<Arguments> terms() {
        return List.of(
                row(Term.of("L", "l", len("36.375 in")), "36.375 in (36 3/8)", "923.9 mm", "36.37500", "923.925"),
                row(Term.of("L", "l", len("36.38 in")), "36.380 in (near 36 3/8)", "924.1 mm", "36.38000", "924.052"),
                row(Term.of("L", "l", len("-1/4 in")), "-0.250 in (-1/4)", "-6.4 mm", "-0.25000", "-6.350"),
                row(Term.fine("d", "d", len(".3735 in")), "0.3735 in", "9.487 mm", "0.373500", "9.48690"),
                row(Term.of("m", "m", Mass.parse("84.125 g")), "84.12 g", "84.12 g", "84.1250", "84.1250"),
                row(Term.of("m", "m", Mass.parse("0.005 g")), "0.00 g", "0.00 g", "0.0050", "0.0050"),
                row(Term.of("a", "a", Angle.ofDegrees(1.5)), "1.50 deg", "1.50 deg", "1.5000", "1.5000"),
                row(Term.of("A", "a", Area.ofSquareMillimetres(2.25)), "2.2 mm2", "2.2 mm2", "2.250", "2.250"),
                row(Term.of("V", "v", Volume.ofCubicMillimetres(2.75)), "2.8 mm3", "2.8 mm3", "2.750", "2.750"),
                row(
                        Term.of("M", "m", FirstMoment.ofOunceInches(213.5)),
                        "213.50 oz in",
                        "15373.66 g cm",
                        "213.5000",
                        "15373.6629"),
                row(
                        Term.of("J", "j", Inertia.ofKilogramSquareCentimetres(2700)),
                        "2700.0 kg cm2",
                        "2700.0 kg cm2",
                        "2700.000",
                        "2700.000"),
                row(Term.of("n", "n", Frequency.ofHertz(4.5)), "270.0 /min", "270.0 /min", "270.000", "270.000"),
                row(Term.of("s", "s", Stress.ofMegapascals(12.5)), "12.50 MPa", "12.50 MPa", "12.5000", "12.5000"),
                row(
                        Term.of("D", "d", Density.ofGramsPerCubicCentimetre(7.85)),
                        "7.850 g/cm3",
                        "7.850 g/cm3",
                        "7.85000",
                        "7.85000"),
                row(
                        Term.of("mu", "m", LineDensity.ofGramsPerMillimetre(.25)),
                        "6.35 g/in",
                        "250.00 g/m",
                        "6.3500",
                        "250.0000"),
                row(
                        Term.of("EI", "e", BendingStiffness.ofNewtonSquareMetres(18)),
                        "18.00 N m2",
                        "18.00 N m2",
                        "18.0000",
                        "18.0000"),
                row(Term.number("q", "q", .0064), "0.006", "0.006", "0.00640", "0.00640"),
                row(Term.momentFactor(), "28.349523125", "10", "28.349523125", "10"),
                row(Term.volumeFactor(), "16387.064", "1", "16387.064", "1"),
                row(Term.count("n", "n", 12), "12", "12", "12", "12"),
                row(Term.of("club", "club", "7"), "7", "7", "7", "7"));
    }

    @ParameterizedTest
    @MethodSource("terms")
    void isPrintedInBothUnits(Term term, String inch, String metric, String moreInch, String moreMetric) {
        assertThat(term.text(Units.INCH)).isEqualTo(inch);
        assertThat(term.text(Units.METRIC)).isEqualTo(metric);
        assertThat(term.number(Units.INCH, 2)).isEqualTo(moreInch);
        assertThat(term.number(Units.METRIC, 2)).isEqualTo(moreMetric);
        String unit = term.unit(Units.INCH);
        assertThat(inch)
                .startsWith(unit.isEmpty() ? term.number(Units.INCH, 0) : term.number(Units.INCH, 0) + " " + unit);
    }

    @ParameterizedTest
    @MethodSource("terms")
    void refusesBadRequests(Term term) {
        assertThatNullPointerException().isThrownBy(() -> term.number(null, 0)).withMessage("units must not be null");
        assertThatNullPointerException().isThrownBy(() -> term.unit(null)).withMessage("units must not be null");
        assertThatNullPointerException().isThrownBy(() -> term.text(null)).withMessage("units must not be null");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> term.number(Units.INCH, 10))
                .withMessage("extra must be from 0 to 9, was 10");
        assertThat(term.symbol()).isNotBlank();
        assertThat(term.meaning()).isNotBlank();
    }

    @Test
    void refusesWhatIsNoTerm() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Term.of("", "length", Length.ZERO))
                .withMessageStartingWith("symbol must be 1 to 80");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Term.of("L", " ", Length.ZERO))
                .withMessageStartingWith("meaning must be 1 to 80");
        assertThatNullPointerException()
                .isThrownBy(() -> Term.of("L", "length", (Length) null))
                .withMessage("value must not be null");
        for (double bad : new double[] {Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Term.number("q", "rate", bad))
                    .withMessage("value must be finite, was " + bad);
        }
    }

    @Test
    void eachQuantityHasATermOfItsKind() {
        Area area = Area.ofSquareMillimetres(2);
        assertThat(Term.of("A", "a", area)).isEqualTo(new Term.OfArea("A", "a", area));
        Volume volume = Volume.ofCubicMillimetres(2);
        assertThat(Term.of("V", "v", volume)).isEqualTo(new Term.OfVolume("V", "v", volume));
        FirstMoment moment = FirstMoment.ofOunceInches(2);
        assertThat(Term.of("M", "m", moment)).isEqualTo(new Term.OfFirstMoment("M", "m", moment));
        Inertia inertia = Inertia.ofKilogramSquareCentimetres(2);
        assertThat(Term.of("J", "j", inertia)).isEqualTo(new Term.OfInertia("J", "j", inertia));
        Frequency frequency = Frequency.ofHertz(2);
        assertThat(Term.of("n", "n", frequency)).isEqualTo(new Term.OfFrequency("n", "n", frequency));
        Stress stress = Stress.ofMegapascals(2);
        assertThat(Term.of("s", "s", stress)).isEqualTo(new Term.OfStress("s", "s", stress));
        Density density = Density.ofGramsPerCubicCentimetre(2);
        assertThat(Term.of("D", "d", density)).isEqualTo(new Term.OfDensity("D", "d", density));
        LineDensity line = LineDensity.ofGramsPerMillimetre(2);
        assertThat(Term.of("mu", "m", line)).isEqualTo(new Term.OfLineDensity("mu", "m", line));
        BendingStiffness stiffness = BendingStiffness.ofNewtonSquareMetres(2);
        assertThat(Term.of("EI", "e", stiffness)).isEqualTo(new Term.OfBendingStiffness("EI", "e", stiffness));
    }

    /** An ounce is 28.349523125 g and an inch 2.54 cm, so a cubic inch is 25.4 cubed, 16387.064 mm3. */
    @Test
    void factorsBringTheUnitsTogether() {
        assertThat(Term.momentFactor().number(Units.INCH, 0)).isEqualTo("28.349523125");
        assertThat(Term.momentFactor().number(Units.METRIC, 0)).isEqualTo("10");
        assertThat(Term.volumeFactor().number(Units.INCH, 0)).isEqualTo("16387.064");
        assertThat(Term.volumeFactor().number(Units.METRIC, 0)).isEqualTo("1");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Term.OfFactor("c", "c", Double.NaN, 1))
                .withMessage("inch must be finite, was NaN");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Term.OfFactor("c", "c", 1, Double.POSITIVE_INFINITY))
                .withMessage("metric must be finite, was Infinity");
    }
}

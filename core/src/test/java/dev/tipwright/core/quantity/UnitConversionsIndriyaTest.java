package dev.tipwright.core.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static tech.units.indriya.unit.Units.GRAM;
import static tech.units.indriya.unit.Units.HERTZ;
import static tech.units.indriya.unit.Units.KILOGRAM;
import static tech.units.indriya.unit.Units.METRE;
import static tech.units.indriya.unit.Units.NEWTON;
import static tech.units.indriya.unit.Units.PASCAL;
import static tech.units.indriya.unit.Units.RADIAN;

import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import javax.measure.IncommensurableException;
import javax.measure.Unit;
import javax.measure.UnitConverter;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.junit.jupiter.api.Test;
import tech.units.indriya.function.MultiplyConverter;

/**
 * Every conversion against Indriya, the reference implementation of JSR 385, on 10 000 random numbers of 18 orders of magnitude.
 * Both sides multiply or divide by constants that are themselves rounded to a double, and Indriya may do so in two or three
 * steps; each rounding is half a unit in the last place, so the two agree to four units.
 */
class UnitConversionsIndriyaTest {

    private static final int NUMBERS = 10_000;
    private static final double ULPS = 4;

    private static final Unit<Length> MILLIMETRE = METRE.divide(1000);
    private static final Unit<Length> INCH = METRE.multiply(254).divide(10_000);
    private static final Unit<Mass> OUNCE = KILOGRAM.multiply(45_359_237L).divide(1_600_000_000L);
    private static final Unit<Mass> GRAIN = KILOGRAM.multiply(6_479_891L).divide(100_000_000_000L);
    private static final Unit<?> POUND_FORCE =
            NEWTON.multiply(45_359_237L).divide(100_000_000L).multiply(980_665L).divide(100_000L);

    @Test
    void lengthsAndMasses() throws IncommensurableException {
        agree(
                "inch",
                INCH,
                MILLIMETRE,
                x -> dev.tipwright.core.quantity.Length.ofInches(grid(x)).millimetres(),
                UnitConversionsIndriyaTest::grid);
        agree(
                "thou",
                INCH.divide(1000),
                MILLIMETRE,
                x -> dev.tipwright.core.quantity.Length.ofThousandths(Math.rint(1000 * grid(x)))
                        .millimetres(),
                x -> Math.rint(1000 * grid(x)));
        agree(
                "to inch",
                MILLIMETRE,
                INCH,
                x -> dev.tipwright.core.quantity.Length.ofMillimetres(grid(x)).inches(),
                UnitConversionsIndriyaTest::grid);
        agree(
                "to metre",
                MILLIMETRE,
                METRE,
                x -> dev.tipwright.core.quantity.Length.ofMillimetres(grid(x)).metres(),
                UnitConversionsIndriyaTest::grid);
        agree(
                "ounce",
                OUNCE,
                GRAM,
                x -> dev.tipwright.core.quantity.Mass.ofOunces(grid(x)).grams(),
                UnitConversionsIndriyaTest::grid);
        agree(
                "to ounce",
                GRAM,
                OUNCE,
                x -> dev.tipwright.core.quantity.Mass.ofGrams(grid(x)).ounces(),
                UnitConversionsIndriyaTest::grid);
        agree(
                "grain",
                GRAIN,
                GRAM,
                x -> dev.tipwright.core.quantity.Mass.ofGrains(grid(x)).grams(),
                UnitConversionsIndriyaTest::grid);
        agree(
                "to grain",
                GRAM,
                GRAIN,
                x -> dev.tipwright.core.quantity.Mass.ofGrams(grid(x)).grains(),
                UnitConversionsIndriyaTest::grid);
    }

    /** A number of thousandths from 1 to 4096: whole on every grid here. */
    private static double grid(double x) {
        return 1 + Math.floor(Math.abs(x) % 4096_000) / 1000;
    }

    @Test
    void areasVolumesAndMoments() throws IncommensurableException {
        agree("in2", INCH.pow(2), MILLIMETRE.pow(2), x -> Area.ofSquareInches(x).squareMillimetres());
        agree(
                "mm2",
                MILLIMETRE.pow(2),
                INCH.pow(2),
                x -> Area.ofSquareMillimetres(x).squareInches());
        agree(
                "in3",
                INCH.pow(3),
                MILLIMETRE.pow(3),
                x -> Volume.ofCubicInches(x).cubicMillimetres());
        agree(
                "mm3",
                MILLIMETRE.pow(3),
                INCH.pow(3),
                x -> Volume.ofCubicMillimetres(x).cubicInches());
        agree(
                "cm3",
                METRE.divide(100).pow(3),
                MILLIMETRE.pow(3),
                x -> Volume.ofCubicCentimetres(x).cubicMillimetres());
        agree(
                "to cm3",
                MILLIMETRE.pow(3),
                METRE.divide(100).pow(3),
                x -> Volume.ofCubicMillimetres(x).cubicCentimetres());
        Unit<?> gramMillimetre = GRAM.multiply(MILLIMETRE);
        Unit<?> ounceInch = OUNCE.multiply(INCH);
        agree(
                "oz in",
                ounceInch,
                gramMillimetre,
                x -> FirstMoment.ofOunceInches(x).gramMillimetres());
        agree(
                "to oz in",
                gramMillimetre,
                ounceInch,
                x -> FirstMoment.ofGramMillimetres(x).ounceInches());
        agree(
                "g cm",
                GRAM.multiply(METRE.divide(100)),
                gramMillimetre,
                x -> FirstMoment.ofGramCentimetres(x).gramMillimetres());
        agree(
                "to g cm",
                gramMillimetre,
                GRAM.multiply(METRE.divide(100)),
                x -> FirstMoment.ofGramMillimetres(x).gramCentimetres());
        Unit<?> kilogramSquareCentimetre = KILOGRAM.multiply(METRE.divide(100).pow(2));
        Unit<?> ounceSquareInch = OUNCE.multiply(INCH.pow(2));
        agree(
                "oz in2",
                ounceSquareInch,
                kilogramSquareCentimetre,
                x -> Inertia.ofOunceSquareInches(x).kilogramSquareCentimetres());
        agree(
                "to oz in2",
                kilogramSquareCentimetre,
                ounceSquareInch,
                x -> Inertia.ofKilogramSquareCentimetres(x).ounceSquareInches());
        agree(
                "g mm2",
                GRAM.multiply(MILLIMETRE.pow(2)),
                kilogramSquareCentimetre,
                x -> Inertia.ofGramSquareMillimetres(x).kilogramSquareCentimetres());
        agree(
                "to g mm2",
                kilogramSquareCentimetre,
                GRAM.multiply(MILLIMETRE.pow(2)),
                x -> Inertia.ofKilogramSquareCentimetres(x).gramSquareMillimetres());
    }

    @Test
    void densitiesStressesAndTheRest() throws IncommensurableException {
        Unit<?> gramPerCubicCentimetre = GRAM.divide(METRE.divide(100).pow(3));
        Unit<?> kilogramPerCubicMetre = KILOGRAM.divide(METRE.pow(3));
        agree(
                "kg/m3",
                kilogramPerCubicMetre,
                gramPerCubicCentimetre,
                x -> Density.ofKilogramsPerCubicMetre(x).gramsPerCubicCentimetre());
        agree(
                "g/cm3",
                gramPerCubicCentimetre,
                kilogramPerCubicMetre,
                x -> Density.ofGramsPerCubicCentimetre(x).kilogramsPerCubicMetre());
        Unit<?> gramPerMillimetre = GRAM.divide(MILLIMETRE);
        agree(
                "g/in",
                GRAM.divide(INCH),
                gramPerMillimetre,
                x -> LineDensity.ofGramsPerInch(x).gramsPerMillimetre());
        agree(
                "to g/in",
                gramPerMillimetre,
                GRAM.divide(INCH),
                x -> LineDensity.ofGramsPerMillimetre(x).gramsPerInch());
        agree(
                "kg/m",
                KILOGRAM.divide(METRE),
                gramPerMillimetre,
                x -> LineDensity.ofKilogramsPerMetre(x).gramsPerMillimetre());
        agree(
                "to kg/m",
                gramPerMillimetre,
                KILOGRAM.divide(METRE),
                x -> LineDensity.ofGramsPerMillimetre(x).kilogramsPerMetre());
        Unit<?> megapascal = PASCAL.multiply(1_000_000);
        Unit<?> psi = POUND_FORCE.divide(INCH.pow(2));
        agree("psi", psi, megapascal, x -> Stress.ofPoundsPerSquareInch(x).megapascals());
        agree("to psi", megapascal, psi, x -> Stress.ofMegapascals(x).poundsPerSquareInch());
        agree(
                "GPa",
                megapascal.multiply(1000),
                megapascal,
                x -> Stress.ofGigapascals(x).megapascals());
        agree(
                "to GPa",
                megapascal,
                megapascal.multiply(1000),
                x -> Stress.ofMegapascals(x).gigapascals());
        Unit<?> newtonSquareMetre = NEWTON.multiply(METRE.pow(2));
        Unit<?> newtonSquareMillimetre = NEWTON.multiply(MILLIMETRE.pow(2));
        agree(
                "N mm2",
                newtonSquareMillimetre,
                newtonSquareMetre,
                x -> BendingStiffness.ofNewtonSquareMillimetres(x).newtonSquareMetres());
        agree(
                "to N mm2",
                newtonSquareMetre,
                newtonSquareMillimetre,
                x -> BendingStiffness.ofNewtonSquareMetres(x).newtonSquareMillimetres());
        Unit<?> perMinute = HERTZ.divide(60);
        agree("Hz", HERTZ, perMinute, x -> Frequency.ofHertz(x).perMinute());
        agree("to Hz", perMinute, HERTZ, x -> Frequency.ofPerMinute(x).hertz());
        Unit<?> degree = RADIAN.transform(MultiplyConverter.ofPiExponent(1)).divide(180);
        agree("deg", degree, RADIAN, x -> Angle.ofDegrees(x).radians());
        agree("rad", RADIAN, degree, x -> Angle.ofRadians(x).degrees());
    }

    private static void agree(String what, Unit<?> from, Unit<?> to, DoubleUnaryOperator ours)
            throws IncommensurableException {
        agree(what, from, to, ours, x -> x);
    }

    private static void agree(
            String what, Unit<?> from, Unit<?> to, DoubleUnaryOperator ours, DoubleUnaryOperator argument)
            throws IncommensurableException {
        UnitConverter theirs = from.getConverterToAny(to);
        Random random = new Random(20250101);
        for (int i = 0; i < NUMBERS; i++) {
            double x = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(18) - 8);
            double expected = theirs.convert(argument.applyAsDouble(x));
            assertThat(Math.abs(ours.applyAsDouble(x) - expected))
                    .as("%s of %s", what, x)
                    .isLessThanOrEqualTo(ULPS * Math.ulp(expected));
        }
    }
}

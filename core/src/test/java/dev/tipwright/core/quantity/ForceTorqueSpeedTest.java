package dev.tipwright.core.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import org.junit.jupiter.api.Test;

/** Units by their definitions: 1 lb = 0.45359237 kg, g = 9.80665 m/s2, 1 in = 25.4 mm, 1 mile = 1609.344 m. */
class ForceTorqueSpeedTest {

    @Test
    void factoriesAndAccessorsGoByTheDefinitions() {
        assertThat(Force.ofPoundsForce(1).newtons()).isCloseTo(0.45359237 * 9.80665, offset(1e-15));
        assertThat(Force.ofNewtons(44.482216152605).poundsForce()).isCloseTo(10, offset(2e-15));
        assertThat(Torque.ofInchPounds(1).newtonMetres()).isCloseTo(0.45359237 * 9.80665 * 0.0254, offset(1e-16));
        assertThat(Torque.ofNewtonMetres(0.45359237 * 9.80665 * 0.0254).inchPounds())
                .isCloseTo(1, offset(1e-15));
        assertThat(Speed.ofMilesPerHour(90).metresPerSecond()).isCloseTo(90 * 1609.344 / 3600, offset(1e-14));
        assertThat(Speed.ofMetresPerSecond(44.704).milesPerHour()).isCloseTo(100, offset(2e-14));
    }

    @Test
    void textInEveryUnit() {
        assertThat(Force.parse("1.5 kN")).isEqualTo(Force.ofNewtons(1500));
        assertThat(Force.parse("2 lbf")).isEqualTo(Force.ofPoundsForce(2));
        assertThat(Torque.parse("3 in lbf")).isEqualTo(Torque.ofInchPounds(3));
        assertThat(Torque.parse("3 N m")).isEqualTo(Torque.ofNewtonMetres(3));
        assertThat(Speed.parse("100 mph")).isEqualTo(Speed.ofMilesPerHour(100));
    }

    /** A kilogram square centimetre is 1000 g times 100 mm2. */
    @Test
    void aHundredThousandGramSquareMillimetresAreAKilogramSquareCentimetre() {
        assertThat(Inertia.parse("300000 g mm2")).isEqualTo(Inertia.ofKilogramSquareCentimetres(3));
    }
}

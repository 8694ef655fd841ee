package dev.tipwright.core.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class InstrumentTest {

    @Test
    void resolutionGivesTheSpreadWithinOneStep() {
        // JCGM 100:2008, F.2.2.1: u = 0.29 of the resolution.
        Instrument scale = Instrument.ofResolution("scale", "g", 1, 0);
        assertThat(scale.ownUncertainty()).isCloseTo(0.29, within(0.005));
        assertThat(scale.sharedUncertainty()).isZero();
        assertThat(scale.basis()).isEqualTo(Instrument.Basis.DERIVED);
        assertThat(scale.derivation()).isEqualTo("resolution 1 g / sqrt 12 and accuracy limit 0 g / sqrt 3");
        assertThat(scale.reading("m", 12).distribution()).isEqualTo(Distribution.RECTANGULAR);
    }

    @Test
    void bothPartsGoIntoASingleReading() {
        // Resolution 0.6: u^2 = 0.03; limit 0.3: u^2 = 0.03; together 0.06.
        Instrument caliper = Instrument.ofResolution("caliper", "mm", 0.6, 0.3);
        Input d = caliper.reading("d", 9.4);
        assertThat(d.standardUncertainty()).isCloseTo(Math.sqrt(0.06), within(1e-15));
        assertThat(d.distribution()).isEqualTo(Distribution.NORMAL);
        assertThat(caliper.ownReading("d", 9.4))
                .isEqualTo(Input.ofStandard("d", "mm", 9.4, 0.6 / Math.sqrt(12))
                        .withDistribution(Distribution.RECTANGULAR));
        assertThat(caliper.sharedError("e")).isEqualTo(Input.ofLimits("e", "mm", 0, 0.3));
        assertThat(Instrument.ofResolution("pin", "in", 0, 0.3).reading("d", 1).distribution())
                .isEqualTo(Distribution.RECTANGULAR);
    }

    @Test
    void suppliedUncertaintiesAreKept() {
        Instrument rule = Instrument.ofStandard("rule", "in", 3, 4);
        assertThat(rule.standardUncertainty()).isEqualTo(5);
        assertThat(rule.basis()).isEqualTo(Instrument.Basis.SUPPLIED);
        assertThat(rule.ownReading("L", 37)).isEqualTo(Input.ofStandard("L", "in", 37, 3));
        assertThat(rule.sharedError("bias")).isEqualTo(Input.ofStandard("bias", "in", 0, 4));
    }

    @ParameterizedTest
    @EnumSource
    void typicalInstrumentsAreMarkedAsAssumed(TypicalInstrument typical) {
        Instrument instrument = typical.instrument();
        assertThat(instrument.basis()).isEqualTo(Instrument.Basis.ASSUMED);
        assertThat(instrument.derivation())
                .contains("/ sqrt 12 and accuracy limit ")
                .endsWith("; step and limit are assumptions of this library");
        assertThat(instrument.ownUncertainty()).isPositive();
        assertThat(instrument.sharedUncertainty()).isPositive();
    }

    @Test
    void typicalCaliperIsWorkedOutFromItsStepAndLimit() {
        // sqrt(0.01^2 / 12 + 0.03^2 / 3) = sqrt(8.33e-6 + 3e-4) mm
        assertThat(TypicalInstrument.CALIPER.instrument().standardUncertainty()).isCloseTo(0.01756, within(0.000005));
        assertThat(TypicalInstrument.CALIPER.instrument().derivation())
                .startsWith("resolution 0.01 mm / sqrt 12 and accuracy limit 0.03 mm / sqrt 3");
    }

    @Test
    void refusesAStudentShape() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Instrument(
                        "x", "mm", 1, 1, Distribution.STUDENT, Instrument.Basis.SUPPLIED, "by experience"))
                .withMessageContaining("distribution of x must not be Student");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Instrument.ofResolution("x", "mm", -1, 0))
                .withMessage("resolution of x must be 0 or lie between 1e-150 and 1e150, was -1.0 mm");
    }
}

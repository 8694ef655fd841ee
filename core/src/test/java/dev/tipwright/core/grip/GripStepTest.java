package dev.tipwright.core.grip;

import static dev.tipwright.core.TradeBench.club;
import static dev.tipwright.core.TradeBench.codes;
import static dev.tipwright.core.TradeBench.grip;
import static dev.tipwright.core.TradeBench.in;
import static dev.tipwright.core.TradeBench.trimmed;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.tipwright.core.PrintedFormula;
import dev.tipwright.core.club.Build;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.part.GripSize;
import dev.tipwright.core.plan.Operation;
import dev.tipwright.core.plan.StepOutcome;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.core.quantity.Units;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Grips on a shaft 39 in long, .370 in thick up to 8 in and .600 in at the butt: .230 in in 31 in. */
class GripStepTest {

    private static final TapeLayers TWO = new TapeLayers(2, in(".005"), Mass.ofGrams(1.2));

    private static Build sized(Build build, String core, String outside) {
        GripSize size = new GripSize(in(core), in(outside));
        return build.withParts(build.parts().withGrip(grip().withSize(Reading.measured(size))));
    }

    /** 3.1 in off the butt take .023 in off its diameter. */
    @Test
    void theButtIsThinnerAfterItsTrim() {
        GripFit fit = GripFit.of(trimmed(club("6", "M1", "mid"), "1", "3.1"), TapeLayers.NONE);
        assertThat(fit.butt()).isEqualTo(in(".577"));
        assertThat(fit.buttAssumed()).isTrue();
        assertThat(fit.assumptions()).hasSize(1);
        GripFit whole = GripFit.of(trimmed(club("6", "M1", "mid"), "1", "0"), TapeLayers.NONE);
        assertThat(whole.butt()).isEqualTo(in(".600"));
        assertThat(whole.buttAssumed()).isFalse();
        assertThat(whole.assumptions()).isEmpty();
    }

    @Test
    void aShaftThatWasReadUpToItsButtIsBelieved() {
        Build build = trimmed(club("6", "M1", "mid"), "1", "2");
        Build read = build.withParts(build.parts()
                .withShaft(build.parts()
                        .shaft()
                        .withSection(build.parts()
                                .shaft()
                                .section()
                                .withOutside(DiameterProfile.cylinder(in(".580"), in("38"))))));
        GripFit fit = GripFit.of(read, TapeLayers.NONE);
        assertThat(fit.butt()).isEqualTo(in(".580"));
        assertThat(fit.buttAssumed()).isFalse();
    }

    /** .577 in of butt and two layers of .005 in all round make .597 in; on a core of .580 in the grip grows by .017 in. */
    @Test
    void theGripGrowsOverTheTape() throws Exception {
        GripFit fit = GripFit.of(sized(trimmed(club("6", "M1", "mid"), "1", "3.1"), ".580", "1.050"), TWO);
        assertThat(fit.taped()).isEqualTo(in(".597"));
        assertThat(fit.overCore()).contains(in(".017"));
        assertThat(fit.outside()).contains(in("1.067"));
        // sqrt(1.050^2 - .580^2 + .597^2) = sqrt(1.122509)
        assertThat(fit.outsideOfSameVolume().orElseThrow().inches()).isCloseTo(1.0594852523, within(1e-7));
        assertThat(fit.mass()).isEqualTo(Mass.ofGrams(52.4));
        assertThat(fit.mouthFromButt()).isEqualTo(in("10 3/8"));
        assertThat(fit.assumptions()).hasSize(2);
        assertThat(fit.headline()).hasSize(3);
        PrintedFormula.check(fit.working());
        assertThat(fit.working().text(Units.INCH))
                .contains("db + 2 * n * t = 0.597")
                .contains("o + dt - c = 1.067");
        assertThat(fit.operations()).hasSize(3);
    }

    @Test
    void theStepAddsTheTapeToTheClub() {
        Build build = sized(trimmed(club("6", "M1", "mid"), "1", "3.1"), ".580", "1.050");
        StepOutcome outcome = GripStep.over(TWO).take(build);
        assertThat(outcome.findings()).isEmpty();
        assertThat(outcome.after().work().attached()).hasSize(1);
        assertThat(outcome.after().work().attached().get(0).mass()).isEqualTo(Mass.ofGrams(2.4));
        assertThat(outcome.after().work().attached().get(0).place().offset()).isEqualTo(in("5 1/4"));
        assertThat(GripStep.over(TapeLayers.NONE).take(build).after()).isEqualTo(build);
    }

    @Test
    void aClubThatIsPlannedAgainIsNotTapedTwice() {
        Build taped = GripStep.over(TWO)
                .take(sized(trimmed(club("6", "M1", "mid"), "1", "3.1"), ".580", "1.050"))
                .after();
        assertThat(GripStep.over(TWO).take(taped).after()).isEqualTo(taped);
    }

    @Test
    void whatIsWrongWithAGripIsFound() {
        Build build = trimmed(club("6", "M1", "mid"), "1", "3.1");
        assertThat(codes(GripStep.over(TWO).take(build).findings())).containsExactly("SIZE_UNKNOWN");
        assertThat(codes(GripStep.over(TWO).take(sized(build, ".600", "1.050")).findings()))
                .containsExactly("LOOSE");
        Build stub = sized(trimmed(club("6", "M1", "mid"), "1", "30"), ".300", "1.050");
        assertThat(codes(GripStep.over(TWO).take(stub).findings())).containsExactly("TOO_LONG");
    }

    @Test
    void layersAreCounted() {
        assertThat(new TapeLayers(3, in(".005"), Mass.ofGrams(1)).onDiameter()).isEqualTo(in(".030"));
        for (int count : new int[] {-1, 101}) {
            assertThatThrownBy(() -> new TapeLayers(count, Length.ZERO, Mass.ZERO))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("count");
        }
        assertThat(new TapeLayers(100, in(".001"), Mass.ZERO).onDiameter()).isEqualTo(in(".200"));
        assertThat(new TapeLayers(0, in(".001"), Mass.ofGrams(1)).total()).isEqualTo(Mass.ZERO);
    }

    /** .577 in of butt and two layers of .005 in all round fill a core of .597 in, and are .001 in short of one of .598 in. */
    @Test
    void aGripIsLooseAsSoonAsItsCoreIsWiderThanTheTape() {
        Build build = trimmed(club("6", "M1", "mid"), "1", "3.1");
        assertThat(GripStep.over(TWO).take(sized(build, ".597", "1.050")).findings())
                .isEmpty();
        StepOutcome loose = GripStep.over(TWO).take(sized(build, ".598", "1.050"));
        assertThat(loose.findings()).hasSize(1);
        assertThat(loose.findings().get(0).message(Units.INCH))
                .startsWith("the butt with its tape, 0.597")
                .contains("is 0.001", "smaller than the core of grip G: it would turn");
    }

    /** Cap 1/8, shaft 39 less 1 at the tip: with 27 5/8 off the butt the hosel is as far from the top as the grip is long. */
    @Test
    void aGripMayReachTheHoselAndNotPastIt() {
        Build reaches = sized(trimmed(club("6", "M1", "mid"), "1", "27 5/8"), ".300", "1.050");
        StepOutcome outcome = GripStep.over(TWO).take(reaches);
        assertThat(outcome.findings()).isEmpty();
        assertThat(((GripFit) outcome.reports().get(0)).bareBelow()).isEqualTo(Length.ZERO);
        Build past = sized(trimmed(club("6", "M1", "mid"), "1", "27 41/64"), ".300", "1.050");
        StepOutcome over = GripStep.over(TWO).take(past);
        assertThat(over.findings().get(0).message(Units.INCH))
                .startsWith("grip G reaches 0.016 in (1/64) past the hosel");
    }

    /** 10 1/2 in of grip with a cap of 1/8 in: its mouth is 10 3/8 in down from the butt. */
    @Test
    void saysWhatToDoWithAndWithoutTape() {
        Build build = sized(trimmed(club("6", "M1", "mid"), "1", "3.1"), ".570", "1.050");
        List<Operation> taped = GripFit.of(build, TWO).operations();
        assertThat(taped)
                .extracting(Operation::instruction)
                .containsExactly(GripInstruction.CALIPER_BUTT, GripInstruction.WIND_TAPE, GripInstruction.SEAT_GRIP);
        assertThat(taped.get(0).text(Units.INCH)).startsWith("Caliper the cut butt: about 0.577");
        assertThat(taped.get(1).text(Units.INCH))
                .startsWith("Tape in layers: 2, no further than 10.375 in (10 3/8) down from the butt");
        assertThat(taped.get(2).text(Units.INCH))
                .startsWith("The mouth of the grip seats 10.375 in (10 3/8) down from the butt");
        assertThat(GripFit.of(build, TapeLayers.NONE).operations())
                .extracting(Operation::instruction)
                .containsExactly(GripInstruction.CALIPER_BUTT, GripInstruction.SEAT_GRIP);
    }
}

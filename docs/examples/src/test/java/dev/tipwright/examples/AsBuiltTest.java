package dev.tipwright.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.tipwright.core.flex.ClubFrequency;
import dev.tipwright.core.plan.ClubPlan;
import dev.tipwright.core.plan.JobPlan;
import dev.tipwright.core.plan.JobPlanner;
import dev.tipwright.core.plan.StepOutcome;
import dev.tipwright.core.quantity.Frequency;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.doors.Samples;
import dev.tipwright.examples.read.JobFolder;
import dev.tipwright.swingweight.ClubBalance;
import dev.tipwright.swingweight.scale.SwingWeight;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Found against predicted, kept as data. */
class AsBuiltTest {

    private static final JobPlan PLAN = MainJob.plan(
            JobFolder.read(Path.of("scenarios", "practice-set")).job().orElseThrow());

    private static ClubPlan club() {
        return PLAN.clubs().get(0);
    }

    private static AsBuilt asPredicted() {
        AsBuilt.Measures any =
                new AsBuilt.Measures(Optional.empty(), Length.ZERO, new SwingWeight(0), Mass.ZERO, Length.ZERO);
        return AsBuilt.of(club(), any);
    }

    @Test
    void thePredictionsAreThePlans() {
        AsBuilt.Measures predicted = asPredicted().predicted();
        assertThat(predicted.swingWeight())
                .isEqualTo(club().report(ClubBalance.class).reads());
        assertThat(predicted.frequency())
                .contains(club().report(ClubFrequency.class).frequency());
        assertThat(AsBuilt.of(club(), predicted).longer()).isEqualTo(Length.ZERO);
        assertThat(AsBuilt.of(club(), predicted).heavier()).isEqualTo(Mass.ZERO);
    }

    @Test
    void differencesAreFoundLessPredicted() {
        AsBuilt.Measures p = asPredicted().predicted();
        AsBuilt built = AsBuilt.of(
                club(),
                new AsBuilt.Measures(
                        p.frequency().map(f -> f.plus(Frequency.ofPerMinute(1.5))),
                        p.length().plus(Length.ofMillimetres(1)),
                        p.swingWeight().plus(-0.5),
                        p.mass().plus(Mass.ofGrams(2)),
                        p.balance().minus(Length.ofMillimetres(3))));
        // Of two doubles near 280.
        assertThat(built.faster().orElseThrow().perMinute()).isCloseTo(1.5, within(1e-9));
        assertThat(asPredicted().faster()).isEmpty();
        assertThat(built.longer()).isEqualTo(Length.ofMillimetres(1));
        // A difference of two doubles near 30.
        assertThat(built.pointsMore()).isCloseTo(-0.5, within(1e-12));
        assertThat(built.heavier()).isEqualTo(Mass.ofGrams(2));
        assertThat(built.balancesFurtherDown()).isEqualTo(Length.ofMillimetres(-3));
    }

    @Test
    void itIsDataToo() throws Exception {
        AsBuilt built = AsBuilt.of(club(), asPredicted().predicted());
        assertThat(PlanJson.read(PlanJson.write(built), AsBuilt.class)).isEqualTo(built);
    }

    @Test
    void aClubThatWasNotBalancedHasNoRecord() {
        ClubPlan unplanned = JobPlanner.of(StepOutcome::notTaken).plan(Samples.build());
        assertThatThrownBy(() -> AsBuilt.of(unplanned, asPredicted().predicted()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("ClubBalance");
    }
}

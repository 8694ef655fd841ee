package dev.tipwright.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.ObjectMapper;
import dev.tipwright.core.club.ClubSet;
import dev.tipwright.core.flex.ClubFrequency;
import dev.tipwright.core.flex.FlexStep;
import dev.tipwright.core.plan.JobPlan;
import dev.tipwright.core.plan.JobPlanner;
import dev.tipwright.core.plan.PlanText;
import dev.tipwright.core.quantity.Frequency;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Units;
import dev.tipwright.core.rules.ClubLimits;
import dev.tipwright.core.rules.RulesStep;
import dev.tipwright.doors.Samples;
import dev.tipwright.examples.read.JobFolder;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is read back is what was written, for all of a plan, by the public API alone. */
class PlanJsonTest {

    private static JobPlan scenario(String name) {
        return MainJob.plan(JobFolder.read(Path.of("scenarios", name)).job().orElseThrow());
    }

    private static JobPlan withFlexAndRules() {
        return JobPlanner.of(
                        FlexStep.clamping(Length.parse("5 in"), Frequency.ofPerMinute(3)),
                        RulesStep.within(ClubLimits.EQUIPMENT_RULES, Length.parse("1/16 in")))
                .plan(ClubSet.of(Samples.build()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"practice-set", "wedges-and-wood"})
    void aWholePlanComesBackEqual(String name) throws Exception {
        JobPlan plan = scenario(name);
        JobPlan back = PlanJson.read(PlanJson.write(plan), JobPlan.class);
        assertThat(back).isEqualTo(plan);
        assertThat(PlanText.plain(back, Units.INCH)).isEqualTo(PlanText.plain(plan, Units.INCH));
    }

    @Test
    void flexAndRulesComeBackToo() throws Exception {
        JobPlan plan = withFlexAndRules();
        assertThat(plan.club("6").reports()).hasSize(2);
        JobPlan back = PlanJson.read(PlanJson.write(plan), JobPlan.class);
        assertThat(back).isEqualTo(plan);
        assertThat(back.club("6").report(ClubFrequency.class).frequency())
                .isEqualTo(plan.club("6").report(ClubFrequency.class).frequency());
    }

    @Test
    void quantitiesAreTextAndKindsAreClassNames() throws Exception {
        var club =
                new ObjectMapper().readTree(PlanJson.write(withFlexAndRules())).at("/clubs/0");
        assertThat(club.at("/after/parts/shaft/length").asText()).isEqualTo("990.6 mm");
        assertThat(club.at("/after/parts/head/mass/mass").asText()).isEqualTo("263.9 g");
        assertThat(club.at("/reports/0/type").asText()).isEqualTo(ClubFrequency.class.getName());
        assertThat(club.at("/findings/0/code/0").asText()).isEqualTo("dev.tipwright.core.rules.RulesCode");
        assertThat(club.at("/findings/0/code/1").asText()).isEqualTo("NOT_CHECKED");
    }

    @Test
    void aChangedPlanIsAnotherPlanAndABadOneIsRefused() throws Exception {
        String json = PlanJson.write(withFlexAndRules());
        assertThat(PlanJson.read(json.replace("\"263.9 g\"", "\"264 g\""), JobPlan.class))
                .isNotEqualTo(withFlexAndRules());
        assertThatThrownBy(() -> PlanJson.read(json.replace("\"263.9 g\"", "\"-1 g\""), JobPlan.class))
                .hasMessageContaining("mass");
        assertThatThrownBy(() ->
                        PlanJson.read(json.replace(ClubFrequency.class.getName(), "java.lang.Thread"), JobPlan.class))
                .hasMessageContaining("java.lang.Thread");
        assertThatThrownBy(() -> PlanJson.read("{}", JobPlan.class)).hasMessageContaining("clubs");
    }

    @Test
    void theClassThatDoesItIsUnderSixtyLinesAndNothingIsOpenedOrAnnotatedForIt() throws Exception {
        assertThat(Files.readAllLines(Path.of("src/main/java/dev/tipwright/examples/PlanJson.java")))
                .hasSizeLessThan(60);
        for (Class<?> type : new Class<?>[] {Length.class, dev.tipwright.fitcheck.TipFit.class}) {
            assertThat(type.getAnnotations()).isEmpty();
        }
    }
}

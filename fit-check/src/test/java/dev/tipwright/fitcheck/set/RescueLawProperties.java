package dev.tipwright.fitcheck.set;

import static org.assertj.core.api.Assertions.assertThat;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.ClubSet;
import dev.tipwright.core.club.Parts;
import dev.tipwright.core.club.Work;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.length.CutToLengthStep;
import dev.tipwright.core.length.LengthMeasure;
import dev.tipwright.core.length.LengthPlan;
import dev.tipwright.core.length.LengthTarget;
import dev.tipwright.core.part.Blank;
import dev.tipwright.core.part.ClubKind;
import dev.tipwright.core.part.Grip;
import dev.tipwright.core.part.Hand;
import dev.tipwright.core.part.Head;
import dev.tipwright.core.part.HeadGeometry;
import dev.tipwright.core.part.HeadMass;
import dev.tipwright.core.part.Hosel;
import dev.tipwright.core.part.Shaft;
import dev.tipwright.core.part.ShaftMass;
import dev.tipwright.core.part.ShaftMaterial;
import dev.tipwright.core.part.ShaftSection;
import dev.tipwright.core.plan.JobPlanner;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.quantity.Angle;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.core.trim.TipTrimStep;
import dev.tipwright.core.trim.TrimChart;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** Laws of what a spoilt shaft can still become: a metre of shaft, and whole millimetres off either end. */
class RescueLawProperties {

    private static final Shaft SHAFT = new Shaft(
            "S",
            new Blank("mid", mm(150), ShaftMaterial.STEEL),
            mm(1000),
            ShaftMass.of(Mass.ofGrams(90), mm(500)),
            new ShaftSection(
                    DiameterProfile.cylinder(Length.ofMillimetres(9.3), mm(150)),
                    mm(15),
                    Reading.unknown("nobody"),
                    Reading.unknown("nobody")),
            Reading.unknown("nobody"));

    private static Length mm(int millimetres) {
        return Length.ofMillimetres(millimetres);
    }

    private static ClubSet set() {
        Head head = new Head(
                "6",
                ClubKind.IRON,
                Hand.RIGHT,
                HeadMass.of(Mass.ofGrams(260)),
                HeadGeometry.of(Angle.ofDegrees(62), Angle.ofDegrees(30), mm(60)),
                Bore.ofTwoDiameters(Length.ofMillimetres(9.5), Length.ofMillimetres(9.4), mm(30), BoreEnd.FLAT),
                Hosel.of(mm(13)));
        Grip grip = new Grip("G", Mass.ofGrams(50), mm(3), mm(267), mm(110), Reading.unknown("nobody"));
        return ClubSet.of(Build.of(new Parts(head, SHAFT, grip)));
    }

    /** The head asks for so much off the tip, and for a shaft cut so long: 3 mm of cap and 30 mm to the ground come on top. */
    private static JobPlanner planner(int trim, int cut) {
        TrimChart chart = new TrimChart(List.of(new TrimChart.Row("6", "mid", mm(trim))), mm(30));
        LengthTarget target = new LengthTarget("6", mm(cut + 33), LengthMeasure.ALONG_AXIS);
        return JobPlanner.of(
                TipTrimStep.by(chart, Length.ZERO), CutToLengthStep.to(new LengthPlan(List.of(target)), Length.ZERO));
    }

    private static RescueChoice choice(int offTip, int offButt, int trim, int cut) {
        Work done = Work.NONE.withTipTrim(mm(offTip)).withButtTrim(mm(offButt));
        return new Rescue(SHAFT, done).over(set(), planner(trim, cut)).get(0);
    }

    @Property(tries = 300)
    void nothingIsPutBack(
            @ForAll @IntRange(min = 0, max = 100) int offTip,
            @ForAll @IntRange(min = 0, max = 200) int offButt,
            @ForAll @IntRange(min = 0, max = 100) int trim,
            @ForAll @IntRange(min = 800, max = 1000) int cut) {
        Work work = choice(offTip, offButt, trim, cut).plan().after().work();
        assertThat(work.tipTrim()).isGreaterThanOrEqualTo(mm(offTip));
        assertThat(work.buttTrim()).isGreaterThanOrEqualTo(mm(offButt));
    }

    @Property(tries = 300)
    void anUntouchedShaftIsPlannedAsAnyOther(
            @ForAll @IntRange(min = 0, max = 100) int trim, @ForAll @IntRange(min = 800, max = 1000) int cut) {
        Build planned = planner(trim, cut).plan(set().builds().get(0)).after();
        assertThat(choice(0, 0, trim, cut).plan().after().work()).isEqualTo(planned.work());
    }

    @Property(tries = 300)
    void whatServesWithMoreOffTheTipServedWithLess(
            @ForAll @IntRange(min = 0, max = 100) int offTip,
            @ForAll @IntRange(min = 0, max = 40) int more,
            @ForAll @IntRange(min = 0, max = 100) int trim,
            @ForAll @IntRange(min = 800, max = 1000) int cut) {
        if (choice(offTip + more, 0, trim, cut).possible()) {
            assertThat(choice(offTip, 0, trim, cut).possible()).isTrue();
        }
    }
}

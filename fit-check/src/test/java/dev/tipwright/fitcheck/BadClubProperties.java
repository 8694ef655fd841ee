package dev.tipwright.fitcheck;

import static org.assertj.core.api.Assertions.assertThat;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.part.Finish;
import dev.tipwright.core.part.ShaftSection;
import dev.tipwright.core.part.Wall;
import dev.tipwright.core.plan.StepOutcome;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.ThicknessProfile;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Units;
import dev.tipwright.fitcheck.insert.Shapes;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.IntRange;

/** Law of the step: whatever was measured, a club that cannot be built yields findings, and never an exception. */
class BadClubProperties {

    @Provide
    Arbitrary<Shapes.Pair> pairs() {
        return Shapes.pairs();
    }

    @Property(shrinking = ShrinkingMode.BOUNDED)
    void noClubThrows(
            @ForAll("pairs") Shapes.Pair pair,
            @ForAll BoreEnd end,
            @ForAll @IntRange(min = 0, max = 100_000_000) int finish,
            @ForAll @IntRange(min = 0, max = 100_000_000) int wall,
            @ForAll @IntRange(min = 0, max = 900_000_000) int trim,
            @ForAll @IntRange(min = 0, max = 10_000_000) int clearance) {
        Build build = Clubs.club(
                "bad",
                pair.bore().withEnd(end),
                section(pair.tip(), finish % (1 << finish % 27), wall % (1 << wall % 27)));
        Length off = Length.ofNanometres(trim % (1 << trim % 30));
        Build trimmed = build.withWork(build.work().withTipTrim(off).plus(Clubs.ferrule(360)));
        StepOutcome outcome = TipFitStep.with(FitTarget.of(Length.ofNanometres(clearance % (1 << clearance % 24))))
                .take(trimmed);
        assertThat(outcome.findings())
                .isNotEmpty()
                .allSatisfy(finding -> assertThat(finding.message(Units.INCH)).doesNotContain("{"));
        outcome.reports().forEach(report -> {
            assertThat(report.working().text(Units.METRIC)).isNotBlank();
            assertThat(report.operations()).isNotEmpty();
            assertThat(report.headline()).isNotEmpty();
        });
    }

    /** A raw tip is read from 0 on. */
    private static ShaftSection section(DiameterProfile outside, int finish, int wall) {
        Length first = outside.stations().get(0).at();
        DiameterProfile raw = DiameterProfile.of(outside.stations().stream()
                .map(station -> station.withAt(station.at().minus(first)))
                .toList());
        return new ShaftSection(
                raw,
                Length.ofMillimetres(15),
                Reading.measured(new Wall(ThicknessProfile.uniform(Length.ofNanometres(wall)), Clubs.density(1.55))),
                Reading.measured(new Finish(
                        ThicknessProfile.uniform(Length.ofNanometres(finish)), Reading.unknown("the maker"))));
    }
}

package dev.tipwright.fitcheck.taper;

import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.part.Finish;
import dev.tipwright.core.part.Wall;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.ThicknessProfile;
import dev.tipwright.core.quantity.Density;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.fitcheck.insert.Shapes;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;

/** Random jobs of fitting: a tip of any shape with a finish and a wall that vary along it, a bore, an insertion, a clearance. */
final class Sections {

    /** One job. */
    record Job(TipSection tip, Bore bore, Length insertion, Length clearance) {

        MaterialRemoval removal() {
            return MaterialRemoval.of(tip, bore, insertion, clearance);
        }
    }

    private Sections() {}

    /** Finish of 0 to 60 micrometres, wall of 2.1 to 2.4 mm, clearance of 10 nm to 0.15 mm. */
    static Arbitrary<Job> jobs() {
        Arbitrary<ThicknessProfile> finish = thickness(0, 60_000);
        Arbitrary<ThicknessProfile> wall = thickness(2_100_000, 2_400_000);
        Arbitrary<Integer> trim = Arbitraries.integers().between(0, 20_000_000);
        Arbitrary<Integer> part = Arbitraries.integers().between(1, 100);
        Arbitrary<Integer> clearance = Arbitraries.integers().between(10, 150_000);
        return Combinators.combine(Shapes.gentle(), finish, wall, trim, part, clearance)
                .as(Sections::job);
    }

    private static Job job(
            Shapes.Pair pair, ThicknessProfile finish, ThicknessProfile wall, int trim, int part, int clearance) {
        TipSection tip = new TipSection(
                pair.tip(),
                new Finish(finish, Reading.measured(Density.ofGramsPerCubicCentimetre(1.25))),
                Reading.measured(new Wall(wall, Reading.measured(Density.ofGramsPerCubicCentimetre(1.55)))),
                Length.ofNanometres(trim));
        long most = pair.bore().depth().min(pair.tip().length()).nanometres();
        long insertion = Math.max(Math.min(most, 50_000), most * part / 100);
        return new Job(tip, pair.bore(), Length.ofNanometres(insertion), Length.ofNanometres(clearance));
    }

    private static Arbitrary<ThicknessProfile> thickness(int least, int most) {
        Arbitrary<Integer> gap = Arbitraries.integers().between(100_000, 15_000_000);
        Arbitrary<Integer> value = Arbitraries.integers().between(least, most);
        return Combinators.combine(
                        gap.list().ofSize(4), value.list().ofMinSize(1).ofMaxSize(4))
                .as(Sections::profile);
    }

    private static ThicknessProfile profile(List<Integer> gaps, List<Integer> values) {
        long[] place = {0};
        return new ThicknessProfile(IntStream.range(0, values.size())
                .mapToObj(i -> new ThicknessProfile.Knot(
                        Length.ofNanometres(place[0] += gaps.get(i)), Length.ofNanometres(values.get(i))))
                .toList());
    }
}

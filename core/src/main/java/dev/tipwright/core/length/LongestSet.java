package dev.tipwright.core.length;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.ClubSet;
import dev.tipwright.core.evidence.Source;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.evidence.Working;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.List;

/**
 * The longest set with an even step that the given shafts allow: with nothing cut off its butt club {@code n} (0 for the first) plays
 * {@code Lmax_n}, and the first club may be {@code min over n of (Lmax_n + n step)} long.
 *
 * <pre>{@code
 * LongestSet set = LongestSet.of(ClubSet.of(Samples.build()), Length.parse("1/2 in"), LengthMeasure.ALONG_AXIS);
 * set.first().inches();   // = 39.625
 * set.limitedBy();        // = 6
 * }</pre>
 *
 * @param longest what each club would be with nothing cut off its butt, the longest club of the set first
 * @param step how much shorter each next club is; -3 m to 3 m, and a negative step makes it longer
 */
public record LongestSet(List<LengthTarget> longest, Length step) {

    /**
     * Checks the values.
     *
     * @param longest what each club would be with nothing cut off its butt, the longest club of the set first; one measure
     * @param step how much shorter each next club is; -3 m to 3 m, and a negative step makes it longer
     */
    public LongestSet {
        longest = Require.distinct("longest", Require.someOf("longest", longest), LengthTarget::club);
        LengthMeasure measure = longest.get(0).measure();
        Require.that(
                longest.stream().allMatch(target -> target.measure() == measure),
                "longest",
                "must be of one measure",
                longest);
        Require.within("step", step, -3000, 3000);
    }

    /**
     * The longest set of seated clubs, their tip trims as planned.
     *
     * @param set the clubs, the longest first, each seated
     * @param step how much shorter each next club is; -3 m to 3 m, and a negative step makes it longer
     * @param measure what the lengths are measured by
     * @return the set
     * @throws IllegalArgumentException if a tip is not seated
     */
    public static LongestSet of(ClubSet set, Length step, LengthMeasure measure) {
        Require.given("set", set);
        Require.given("measure", measure);
        List<LengthTarget> longest = new ArrayList<>();
        for (Build build : set.builds()) {
            Require.that(
                    build.work().seat().insertion().nanometres() > 0,
                    "set",
                    "must have all clubs seated",
                    build.label());
            Length alongAxis =
                    PlayingLength.alongAxis(build.withWork(build.work().withButtTrim(Length.ZERO)));
            Length length = measure == LengthMeasure.ALONG_AXIS
                    ? alongAxis
                    : SixtyDegreePlane.of(build.parts().head()).length(alongAxis);
            longest.add(new LengthTarget(build.label(), length, measure));
        }
        return new LongestSet(longest, step);
    }

    /**
     * The longest first club.
     *
     * @return {@code min over n of (Lmax_n + n step)}; zero or less if no such set can be built
     */
    public Length first() {
        return allowed(limiting());
    }

    /**
     * The club whose shaft decides: nothing is cut off its butt.
     *
     * @return its label; the first of several
     */
    public String limitedBy() {
        return longest.get(limiting()).club();
    }

    /** What a club allows the first one. */
    private Length allowed(int club) {
        return longest.get(club).length().plus(step.times(club));
    }

    private int limiting() {
        int least = 0;
        for (int club = 1; club < longest.size(); club++) {
            least = allowed(club).lessThan(allowed(least)) ? club : least;
        }
        return least;
    }

    /**
     * The lengths of the set.
     *
     * @return a plan by step from the longest first club
     * @throws IllegalArgumentException if a club would have no length
     */
    public LengthPlan plan() {
        Require.that(
                first().nanometres() > 0
                        && first().minus(step.times(longest.size() - 1)).nanometres() > 0,
                "step",
                "must leave every club a length",
                step);
        return LengthPlan.byStep(
                longest.stream().map(LengthTarget::club).toList(),
                first(),
                step,
                longest.get(0).measure());
    }

    /**
     * How the longest first club came about.
     *
     * @return what each club allows the first one; the least of them counts
     */
    public Working working() {
        Source source = Source.assumption("an even step from club to club");
        List<Working.Line> lines = new ArrayList<>();
        for (int club = 0; club < longest.size(); club++) {
            LengthTarget target = longest.get(club);
            lines.add(new Working.Line(
                    Term.of("F", "first club as club " + target.club() + " allows it", allowed(club)),
                    "Lmax + n * step",
                    List.of(
                            Term.of("Lmax", "longest playing length", target.length()),
                            Term.count("n", "steps from the first club", club),
                            Term.of("step", "step", step)),
                    source));
        }
        return new Working("Longest set", lines);
    }
}

package dev.tipwright.core.flex;

import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.length.PlayingLength;
import dev.tipwright.core.plan.ClubFinding;
import dev.tipwright.core.plan.ClubPlan;
import dev.tipwright.core.plan.SetReview;
import dev.tipwright.core.quantity.Frequency;
import dev.tipwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Draws the line of frequency over playing length through a set, and finds the clubs that are off it, with the tip trim that would
 * bring each there at its length. Two clubs are always on a line, so it looks from three on. A trim changes the tip that goes into the
 * bore: after taking one over, plan the club again.
 *
 * @param tolerance how far off the line a club may be; zero or more
 */
public record FlexReview(Frequency tolerance) implements SetReview {

    /**
     * Checks the value.
     *
     * @param tolerance how far off the line a club may be; zero or more
     */
    public FlexReview {
        Require.given("tolerance", tolerance);
        Require.that(tolerance.perMinute() >= 0, "tolerance", "must not be negative", tolerance);
    }

    /**
     * The line through the clubs whose frequency was planned.
     *
     * @param clubs the planned clubs
     * @return the line; empty if fewer than three have a frequency, or all have one length
     */
    public static Optional<FrequencyLine> line(List<ClubPlan> clubs) {
        List<FrequencyLine.Point> points = new ArrayList<>();
        for (ClubPlan club : Require.list("clubs", clubs)) {
            club.find(ClubFrequency.class)
                    .ifPresent(planned -> points.add(new FrequencyLine.Point(
                            club.label(), PlayingLength.alongAxis(planned.build()), planned.frequency())));
        }
        boolean spread =
                points.stream().map(FrequencyLine.Point::length).distinct().count() > 1;
        return points.size() >= 3 && spread ? Optional.of(new FrequencyLine(points)) : Optional.empty();
    }

    @Override
    public List<ClubFinding> review(List<ClubPlan> clubs) {
        List<ClubFinding> found = new ArrayList<>();
        Optional<FrequencyLine> line = line(clubs);
        for (ClubPlan club : clubs) {
            Optional<ClubFrequency> planned = club.find(ClubFrequency.class);
            if (line.isPresent() && planned.isPresent()) {
                Frequency off = line.get().off(club.label());
                if (Math.abs(off.perMinute()) > tolerance.perMinute()) {
                    found.add(new ClubFinding(club.label(), offLine(planned.get(), off)));
                }
            }
        }
        return found;
    }

    private static Finding offLine(ClubFrequency club, Frequency off) {
        Frequency wanted = club.frequency().minus(off);
        Term f = Term.of("f", "frequency", club.frequency());
        Term l = Term.of("l", "line at this length", wanted);
        Optional<Length> trim = club.tipTrimFor(wanted);
        if (trim.isEmpty()) {
            return Finding.caution(FlexCode.OFF_LINE_FOR_GOOD, f, distance(off), way(off), l);
        }
        Term instead = Term.of("T", "tip trim", trim.get());
        Term planned = Term.of("N", "tip trim as planned", club.build().work().tipTrim());
        return Finding.caution(FlexCode.OFF_LINE, f, distance(off), way(off), l, instead, planned);
    }

    static Term distance(Frequency off) {
        return Term.of("d", "off the line", Frequency.ofPerMinute(Math.abs(off.perMinute())));
    }

    static Term way(Frequency off) {
        return Term.of("way", "which way", off.perMinute() < 0 ? "slower" : "faster");
    }
}

package dev.tipwright.core.flex;

import dev.tipwright.core.evidence.Source;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.evidence.Working;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.Frequency;
import dev.tipwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.List;

/**
 * The straight line of frequency over length that comes nearest to the clubs of a set, by least squares:
 * {@code slope = sum (L - Lm)(f - fm) / sum (L - Lm)^2}, through the mean length {@code Lm} and the mean frequency {@code fm}.
 *
 * <pre>{@code
 * FrequencyLine line = new FrequencyLine(List.of(
 *         new FrequencyLine.Point("5", Length.parse("38 in"), Frequency.ofPerMinute(300)),
 *         new FrequencyLine.Point("6", Length.parse("37 1/2 in"), Frequency.ofPerMinute(306)),
 *         new FrequencyLine.Point("7", Length.parse("37 in"), Frequency.ofPerMinute(306))));
 * line.perInch();                                   // = -6.0 /min
 * line.at(Length.parse("37 1/2 in")).perMinute();   // = 304.0
 * line.off("6").perMinute();                        // = 2.0
 * }</pre>
 *
 * @param points two or more clubs, labels distinct, not all of one length
 */
public record FrequencyLine(List<Point> points) {

    /**
     * Checks the values.
     *
     * @param points two or more clubs, labels distinct, not all of one length
     */
    public FrequencyLine {
        points = Require.distinct("points", Require.list("points", points), Point::club);
        Length first = points.isEmpty() ? Length.ZERO : points.get(0).length();
        Require.that(
                points.stream().anyMatch(point -> !point.length().equals(first)),
                "points",
                "must be two or more, not all of one length",
                points);
    }

    /**
     * A club on the plot.
     *
     * @param club its label
     * @param length its length; above zero
     * @param frequency its frequency; above zero, at most 1e30 a minute
     */
    public record Point(String club, Length length, Frequency frequency) {

        /**
         * Checks the values.
         *
         * @param club its label
         * @param length its length; above zero
         * @param frequency its frequency; above zero, at most 1e30 a minute
         */
        public Point {
            Require.label("club", club);
            Require.positive("length", length);
            Require.given("frequency", frequency);
            Require.that(
                    frequency.perMinute() > 0 && frequency.perMinute() <= 1e30,
                    "frequency",
                    "must be above zero and at most 1e30 /min",
                    frequency);
        }
    }

    /**
     * How the frequency changes with length.
     *
     * @return change for an inch more; below zero where longer clubs swing slower
     */
    public Frequency perInch() {
        return Frequency.ofPerMinute(slope());
    }

    private double meanInches() {
        return points.stream().mapToDouble(point -> point.length().inches()).sum() / points.size();
    }

    private double meanPerMinute() {
        return points.stream()
                        .mapToDouble(point -> point.frequency().perMinute())
                        .sum()
                / points.size();
    }

    private double slope() {
        double length = meanInches();
        double mean = meanPerMinute();
        double together = 0;
        double squares = 0;
        for (Point point : points) {
            double off = point.length().inches() - length;
            together += off * (point.frequency().perMinute() - mean);
            squares += off * off;
        }
        return together / squares;
    }

    /**
     * The line at a length.
     *
     * @param length any
     * @return the frequency there
     */
    public Frequency at(Length length) {
        Require.given("length", length);
        return Frequency.ofPerMinute(meanPerMinute() + slope() * (length.inches() - meanInches()));
    }

    /**
     * How far a club is off the line.
     *
     * @param club its label
     * @return its frequency less that of the line at its length
     * @throws IllegalArgumentException if no point has that label
     */
    public Frequency off(String club) {
        Require.given("club", club);
        for (Point point : points) {
            if (point.club().equals(club)) {
                return point.frequency().minus(at(point.length()));
            }
        }
        throw new IllegalArgumentException("club must be one of the points, was \"" + club + "\"");
    }

    /** The line through the same clubs at the same lengths, with other frequencies a minute. */
    FrequencyLine through(double[] perMinute) {
        List<Point> other = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            Point point = points.get(i);
            other.add(new Point(point.club(), point.length(), Frequency.ofPerMinute(perMinute[i])));
        }
        return new FrequencyLine(other);
    }

    /**
     * How the line came about.
     *
     * @return its slope, and each club's distance from it; lengths and slope by the inch
     */
    public Working working() {
        Source source = Source.assumption("least squares, every club counting alike");
        Term slope = Term.of("s", "slope an inch", perInch());
        Term mean = Term.of("fm", "mean frequency", Frequency.ofPerMinute(meanPerMinute()));
        Term length = Term.number("Lm", "mean length, in", meanInches());
        List<Working.Line> lines = new ArrayList<>();
        List<Term> all = new ArrayList<>();
        for (Point point : points) {
            all.add(Term.of(
                    "f_" + point.club(), "frequency at " + point.length().inches() + " in", point.frequency()));
        }
        lines.add(new Working.Line(slope, "sum((L - Lm) (f - fm)) over sum((L - Lm)^2)", all, source));
        for (Point point : points) {
            lines.add(new Working.Line(
                    Term.of("d", "club " + point.club() + " off the line", off(point.club())),
                    "f - (fm + s * (L - Lm))",
                    List.of(
                            Term.of("f", "frequency", point.frequency()),
                            mean,
                            slope,
                            Term.number("L", "length, in", point.length().inches()),
                            length),
                    source));
        }
        return new Working("Line of frequency", lines);
    }
}

package dev.tipwright.lessons;

import static dev.tipwright.lessons.LessonParts.in;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.evidence.Caution;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.flex.ClubFrequency;
import dev.tipwright.core.flex.FrequencyLine;
import dev.tipwright.core.length.PlayingLength;
import dev.tipwright.core.part.Shaft;
import dev.tipwright.core.part.ShaftFlex;
import dev.tipwright.core.part.StiffnessShape;
import dev.tipwright.core.quantity.BendingStiffness;
import dev.tipwright.core.quantity.Frequency;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.core.quantity.Notation;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A frequency line straightened. Five raw shafts of one model were timed before anything was cut, and one came out softer and one
 * stiffer than its neighbours. The chart would trim them as if they were alike. How far must each tip trim move, at the same
 * length, to bring the set onto one line?
 */
public final class StraightenedLine {

    static final Length CLAMP = in("5");
    static final Mass ON_THE_TIP = Mass.ofGrams(200);
    /** How far off the line a club may be, and what two timings of one shaft may differ by. */
    static final Frequency WITHIN = Frequency.ofPerMinute(1);

    private StraightenedLine() {}

    /** The clubs trimmed by the chart: an inch off the 5, half an inch more for each club after it. */
    static List<Build> byChart() {
        return List.of(
                club("5", 255, "2.08", "1", "36 7/8", 271.0),
                club("6", 262, "2.10", "1 1/2", "36 3/8", 271.6),
                club("7", 269, "2.12", "2", "35 7/8", 267.9),
                club("8", 276, "2.14", "2 1/2", "35 3/8", 271.2),
                club("9", 283.5, "2.16", "3", "34 7/8", 273.9));
    }

    private static Build club(
            String label, double grams, String centre, String trim, String cut, double timedPerMinute) {
        Shaft shaft = LessonParts.shaft("for the " + label, LessonParts.blank("one for all"), "40", 86, "20.7")
                .withFlex(Reading.measured(flex(timedPerMinute)));
        return LessonParts.club(
                LessonParts.head(label, grams, 62, "2 1/4", centre, LessonParts.parallelBore()),
                shaft,
                LessonParts.grip(50),
                in(trim),
                in(cut));
    }

    /** The maker's shape of the stiffness, scaled to what was timed on this one shaft. */
    private static ShaftFlex flex(double timedPerMinute) {
        StiffnessShape shape = new StiffnessShape.AtStations(List.of(
                new StiffnessShape.Knot(Length.ZERO, BendingStiffness.ofNewtonSquareMetres(18)),
                new StiffnessShape.Knot(in("8"), BendingStiffness.ofNewtonSquareMetres(24)),
                new StiffnessShape.Knot(in("40"), BendingStiffness.ofNewtonSquareMetres(60))));
        return new ShaftFlex(
                Reading.measured(shape),
                List.of(new ShaftFlex.Timed(Frequency.ofPerMinute(timedPerMinute), CLAMP, ON_THE_TIP)));
    }

    static ClubFrequency frequency(Build build) {
        return ClubFrequency.of(build, CLAMP).orElseThrow();
    }

    static FrequencyLine line(List<Build> clubs) {
        return new FrequencyLine(clubs.stream()
                .map(club -> new FrequencyLine.Point(
                        club.label(),
                        PlayingLength.alongAxis(club),
                        frequency(club).frequency()))
                .toList());
    }

    /** Each club that is too far off with its cut moved from one end to the other; the others as the chart has them. */
    static List<Build> straightened(List<Build> clubs) {
        FrequencyLine line = line(clubs);
        List<Build> moved = new ArrayList<>();
        for (Build club : clubs) {
            Frequency off = line.off(club.label());
            ClubFrequency now = frequency(club);
            Optional<Length> trim = Math.abs(off.perMinute()) > WITHIN.perMinute()
                    ? now.tipTrimFor(now.frequency().minus(off))
                    : Optional.empty();
            moved.add(trim.map(to -> now.withTipTrim(onTheRule(to)).build()).orElse(club));
        }
        return moved;
    }

    /** What a rule can mark; down, because what is left on can still come off. */
    static Length onTheRule(Length trim) {
        return Notation.SIXTY_FOURTHS.print(trim, Notation.Rounding.DOWN).shown();
    }

    /** Prints the page. */
    public static void main(String[] args) {
        Sheet.print(page());
    }

    static String page() {
        List<Build> before = byChart();
        List<Build> after = straightened(before);
        Sheet sheet = new Sheet().title("A frequency line straightened");
        sheet.say(
                "Five shafts, each timed raw with 5 in clamped and 200 g on its tip. By the chart the set comes out at the"
                        + " frequencies on the left; a club more than %.0f a minute off the line has its tip trim moved, at the same"
                        + " length, in whole 64ths.",
                WITHIN.perMinute());
        table(sheet, before, after);
        sheet.row(
                        "line by the chart",
                        "%.2f a minute for an inch",
                        line(before).perInch().perMinute())
                .row(
                        "line after the moves",
                        "%.2f a minute for an inch",
                        line(after).perInch().perMinute())
                .row("furthest off, by the chart", "%.2f a minute", furthest(before))
                .row("furthest off, after the moves", "%.2f a minute", furthest(after))
                .gap();
        sheet.say(
                "Why this is done before the saw: a trim can only grow. The soft shaft takes more off its tip, which any shaft allows;"
                        + " the stiff one takes less than the chart says, which only an uncut one does.");
        sheet.say(
                "Limits: timed without grip. The stiffness along the shaft is the maker's shape, scaled to one timing; time each"
                        + " club again before its butt is cut. A tip trimmed deeper than the chart allows for, or past the parallel"
                        + " section, is the maker's word, and enters the bore with another diameter: fit it again.");
        return sheet.cautions(Caution.CUTTING, Caution.COMPOSITE_DUST, Caution.MAKERS_WORD)
                .toString();
    }

    private static void table(Sheet sheet, List<Build> before, List<Build> after) {
        FrequencyLine was = line(before);
        FrequencyLine is = line(after);
        sheet.line(
                "%-5s %9s %10s %8s %16s %10s %8s",
                "club", "trim", "a minute", "off", "trim moved to", "a minute", "off");
        for (int i = 0; i < before.size(); i++) {
            String club = before.get(i).label();
            sheet.line(
                    "%-5s %6.3f in %10.1f %+8.1f %13.3f in %10.1f %+8.1f",
                    club,
                    before.get(i).work().tipTrim().inches(),
                    frequency(before.get(i)).frequency().perMinute(),
                    was.off(club).perMinute(),
                    after.get(i).work().tipTrim().inches(),
                    frequency(after.get(i)).frequency().perMinute(),
                    is.off(club).perMinute());
        }
        sheet.gap();
    }

    static double furthest(List<Build> clubs) {
        FrequencyLine line = line(clubs);
        return clubs.stream()
                .mapToDouble(club -> Math.abs(line.off(club.label()).perMinute()))
                .max()
                .orElse(0);
    }
}

package dev.tipwright.fitcheck.taper;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.quantity.Length;
import java.util.List;
import java.util.Optional;

/**
 * What was measured when the belt was stopped: how far the tip went in, where it came out shiny, what a caliper read.
 *
 * @param insertion how far the tip went in, if it was tried; 0 to 3 m
 * @param marks where the bore left witness marks, up from the end of the tip; none without an insertion, none past it
 * @param calipers diameters read, up from the end of the tip
 */
public record StopReading(Optional<Length> insertion, List<Length> marks, List<Station> calipers) {

    /**
     * Checks the values.
     *
     * @param insertion how far the tip went in, if it was tried; 0 to 3 m
     * @param marks where the bore left witness marks
     * @param calipers diameters read
     */
    public StopReading {
        Require.given("insertion", insertion);
        insertion.ifPresent(depth -> Require.within("insertion", depth, 0, 3000));
        marks = Require.list("marks", marks);
        Require.that(insertion.isPresent() || marks.isEmpty(), "marks", "must come with an insertion", marks);
        for (Length mark : marks) {
            Require.between("marks", mark, Length.ZERO, insertion.orElse(Length.ZERO));
        }
        calipers = Require.list("calipers", calipers);
        for (Station caliper : calipers) {
            Require.notNegative("calipers", caliper.at());
        }
    }

    /**
     * The depth alone.
     *
     * @param insertion how far the tip went in
     * @return the reading
     */
    public static StopReading ofDepth(Length insertion) {
        return new StopReading(Optional.of(Require.given("insertion", insertion)), List.of(), List.of());
    }

    /**
     * Diameters alone.
     *
     * @param calipers diameters read, up from the end of the tip
     * @return the reading
     */
    public static StopReading ofCalipers(List<Station> calipers) {
        return new StopReading(Optional.empty(), List.of(), calipers);
    }

    /**
     * This one with witness marks.
     *
     * @param marks where the bore left them, up from the end of the tip
     * @return a copy that differs in that alone
     */
    public StopReading withMarks(List<Length> marks) {
        return new StopReading(insertion, marks, calipers);
    }

    /**
     * This one with diameters.
     *
     * @param calipers diameters read, up from the end of the tip
     * @return a copy that differs in that alone
     */
    public StopReading withCalipers(List<Station> calipers) {
        return new StopReading(insertion, marks, calipers);
    }
}

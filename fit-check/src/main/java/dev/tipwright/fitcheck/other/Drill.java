package dev.tipwright.fitcheck.other;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A cutter of a standard series.
 *
 * <p>Source: ASME B94.11M, twist drills: letters (read), number sizes 1 to 15 (from memory), fractions by 1/64 in from 3/16 to 1/2 in (exact) and
 * metric sizes by 0.1 mm from 3.0 to 13.9 mm. Reamers come in the same fractions, letters and whole tenths of a millimetre; a reamer
 * leaves a bore nearer its size.
 *
 * <pre>{@code
 * Drill.largestUpTo(Length.parse(".370 in")).get().designation();            // = U
 * Drill.standard().stream().filter(drill -> drill.series() == Drill.Series.LETTER).count();   // = 26
 * }</pre>
 *
 * @param series which series
 * @param designation its name in the series
 * @param diameter its nominal diameter
 */
public record Drill(Series series, String designation, Length diameter) {

    /** A series of sizes. */
    public enum Series {
        /** Numbers, which grow as the drill gets thinner. */
        NUMBER,
        /** Letters A to Z. */
        LETTER,
        /** Fractions of an inch. */
        FRACTION,
        /** Millimetres. */
        METRIC
    }

    private static final int NANOMETRES_PER_THOUSANDTH = 25_400;

    /** Numbers 1 to 15, in ten-thousandths of an inch. */
    private static final List<Integer> NUMBERS =
            List.of(2280, 2210, 2130, 2090, 2055, 2040, 2010, 1990, 1960, 1935, 1910, 1890, 1850, 1820, 1800);

    /** A to Z, in thousandths of an inch. */
    private static final List<Integer> LETTERS = List.of(
            234, 238, 242, 246, 250, 257, 261, 266, 272, 277, 281, 290, 295, 302, 316, 323, 332, 339, 348, 358, 368,
            377, 386, 397, 404, 413);

    private static final int FIRST_SIXTY_FOURTH = 12;
    private static final int LAST_SIXTY_FOURTH = 32;
    private static final int FIRST_TENTH = 30;
    private static final int LAST_TENTH = 139;

    /**
     * Checks the values.
     *
     * @param series which series
     * @param designation its name in the series
     * @param diameter its nominal diameter
     */
    public Drill {
        Require.given("series", series);
        Require.label("designation", designation);
        Require.positive("diameter", diameter);
    }

    /**
     * All sizes, by rising diameter.
     *
     * @return the drills; of two of one diameter first the number, then letter, fraction and metric
     */
    public static List<Drill> standard() {
        List<Drill> all = new ArrayList<>();
        for (int k = 0; k < NUMBERS.size(); k++) {
            all.add(new Drill(
                    Series.NUMBER,
                    Integer.toString(k + 1),
                    Length.ofNanometres((long) NUMBERS.get(k) * NANOMETRES_PER_THOUSANDTH / 10)));
        }
        for (int k = 0; k < LETTERS.size(); k++) {
            all.add(new Drill(
                    Series.LETTER,
                    Character.toString('A' + k),
                    Length.ofNanometres((long) LETTERS.get(k) * NANOMETRES_PER_THOUSANDTH)));
        }
        for (int parts = FIRST_SIXTY_FOURTH; parts <= LAST_SIXTY_FOURTH; parts++) {
            int common = Integer.lowestOneBit(parts);
            all.add(new Drill(
                    Series.FRACTION, parts / common + "/" + 64 / common, Length.ofInchFraction(0, parts, 64)));
        }
        for (int tenths = FIRST_TENTH; tenths <= LAST_TENTH; tenths++) {
            all.add(new Drill(
                    Series.METRIC, tenths / 10 + "." + tenths % 10 + " mm", Length.ofNanometres(tenths * 100_000L)));
        }
        all.sort(Comparator.comparing(Drill::diameter).thenComparing(Drill::series));
        return List.copyOf(all);
    }

    /**
     * The largest that does not pass a diameter.
     *
     * @param diameter the most it may be
     * @return the drill; empty below the smallest, 3 mm
     */
    public static Optional<Drill> largestUpTo(Length diameter) {
        Require.given("diameter", diameter);
        return standard().stream()
                .filter(drill -> !drill.diameter().moreThan(diameter))
                .reduce((smaller, larger) -> larger);
    }
}

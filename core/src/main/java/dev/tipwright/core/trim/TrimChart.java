package dev.tipwright.core.trim;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A shaft maker's tip trim chart: for each club and blank what to cut off the tip, for heads whose bore bottoms a
 * stated height over the ground.
 *
 * <pre>{@code
 * TrimChart chart = TrimChart.stepped("mid", List.of("6", "7", "8"),
 *         Length.parse("1/2 in"), Length.parse("1/2 in"), Length.parse("1 in"));
 * chart.trim("8", "mid").orElseThrow().inches();   // = 1.5
 * chart.trim("9", "mid").isPresent();              // = false
 * }</pre>
 *
 * @param rows one a club and blank, no two alike
 * @param groundReference bore bottom to ground the chart assumes ({@code G_ref}); -200 mm to 200 mm
 */
public record TrimChart(List<Row> rows, Length groundReference) {

    /**
     * Checks the values.
     *
     * @param rows one a club and blank, no two alike
     * @param groundReference bore bottom to ground the chart assumes ({@code G_ref}); -200 mm to 200 mm
     */
    public TrimChart {
        rows = Require.distinct("rows", Require.someOf("rows", rows), row -> List.of(row.club(), row.blank()));
        Require.within("groundReference", groundReference, -200, 200);
    }

    private static final Length LONGEST = Length.ofMillimetres(1000);

    /**
     * One row of a chart.
     *
     * @param club label of the club
     * @param blank label of the blank
     * @param trim what to cut off the tip; zero to 1 m
     */
    public record Row(String club, String blank, Length trim) {

        /**
         * Checks the values.
         *
         * @param club label of the club
         * @param blank label of the blank
         * @param trim what to cut off the tip; zero to 1 m
         */
        public Row {
            Require.label("club", club);
            Require.label("blank", blank);
            Require.between("trim", trim, Length.ZERO, LONGEST);
        }
    }

    /**
     * A chart given as a first value and a step from club to club.
     *
     * @param blank label of the blank
     * @param clubs labels of the clubs, longest first, distinct
     * @param first trim of the first club; zero or more
     * @param step what each further club is trimmed more; zero or more
     * @param groundReference bore bottom to ground the chart assumes
     * @return the chart
     */
    public static TrimChart stepped(
            String blank, List<String> clubs, Length first, Length step, Length groundReference) {
        Require.label("blank", blank);
        Require.between("first", first, Length.ZERO, LONGEST);
        Require.between("step", step, Length.ZERO, LONGEST);
        List<String> labels = Require.distinct("clubs", Require.someOf("clubs", clubs), club -> club);
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < labels.size(); i++) {
            rows.add(new Row(labels.get(i), blank, first.plus(step.times(i))));
        }
        return new TrimChart(rows, groundReference);
    }

    /**
     * What the chart says for a club.
     *
     * @param club label of the club
     * @param blank label of the blank
     * @return the trim, empty if the chart does not name the club on that blank
     */
    public Optional<Length> trim(String club, String blank) {
        Require.given("club", club);
        Require.given("blank", blank);
        for (Row row : rows) {
            if (row.club().equals(club) && row.blank().equals(blank)) {
                return Optional.of(row.trim());
            }
        }
        return Optional.empty();
    }

    /**
     * This one with another value in one place.
     *
     * @param rows one a club and blank, no two alike
     * @return a copy that differs in that alone
     */
    public TrimChart withRows(List<Row> rows) {
        return new TrimChart(rows, groundReference);
    }

    /**
     * This one with another value in one place.
     *
     * @param groundReference bore bottom to ground the chart assumes ({@code G_ref}); -200 mm to 200 mm
     * @return a copy that differs in that alone
     */
    public TrimChart withGroundReference(Length groundReference) {
        return new TrimChart(rows, groundReference);
    }
}

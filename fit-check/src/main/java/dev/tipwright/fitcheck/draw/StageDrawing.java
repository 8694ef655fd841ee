package dev.tipwright.fitcheck.draw;

import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.internal.svg.Svg;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Units;
import dev.tipwright.fitcheck.taper.Stage;
import dev.tipwright.fitcheck.taper.StageTable;
import java.util.ArrayList;
import java.util.List;

/**
 * The stages of working a tip down: insertion against the stock still to come off, which runs out to the right, the stops as dots with
 * their numbers in a table below, and pale bands where depth says nothing a rule could show: where a thousandth of an inch is worth
 * less than a sixty-fourth.
 *
 * <pre>{@code
 * Bore bore = Bore.ofTwoDiameters(
 *         Length.parse(".363 in"), Length.parse(".355 in"), Length.parse("1 1/4 in"), BoreEnd.FLAT);
 * TipSection tip = TipSection.of(
 *         DiameterProfile.cylinder(Length.parse(".3685 in"), Length.parse("8 in")), Finish.NONE);
 * TipFit fit = TipFit.of(tip, bore, bore.depth(), Length.parse(".004 in"));
 * StageDrawing.svg(fit.stages(), Units.INCH).contains("0.0175 in");    // = true
 * }</pre>
 */
public final class StageDrawing {

    private static final int WIDTH = 760;
    private static final int PLOT_BOTTOM = 330;
    private static final double LEFT = 110;
    private static final double RIGHT = 720;
    private static final double TOP = 50;
    private static final int STEPS = 120;
    private static final int ROW = 18;

    /** What a rule shows; an assumption of this library. */
    private static final Length RULE = Length.ofInchFraction(0, 1, 64);

    private final StageTable table;
    private final Units units;
    private final double stock;
    private final double depth;

    private StageDrawing(StageTable table, Units units) {
        this.table = table;
        this.units = units;
        this.stock = Math.max(1e-6, table.stages().get(0).stock().millimetres());
        this.depth = table.tip().insertion().millimetres();
    }

    /**
     * The drawing.
     *
     * @param table the stages
     * @param units unit of the numbers
     * @return SVG text
     */
    public static String svg(StageTable table, Units units) {
        return new StageDrawing(Require.given("table", table), Require.given("units", units)).draw();
    }

    private String draw() {
        List<Stage> stages = table.stages();
        Svg svg = new Svg(
                WIDTH,
                PLOT_BOTTOM + 80 + ROW * stages.size(),
                "Stages of working the tip down",
                "From " + stock(stages.get(0)) + " still to come off, in " + (stages.size() - 1)
                        + " stops, to none; the tip then goes in " + insertion(stages.get(stages.size() - 1)) + ".");
        List<Svg.Point> curve = curve();
        bands(svg, curve);
        svg.line(at(LEFT, TOP), at(LEFT, PLOT_BOTTOM), Svg.Style.THIN);
        svg.line(at(LEFT, PLOT_BOTTOM), at(RIGHT, PLOT_BOTTOM), Svg.Style.THIN);
        svg.polyline(curve, Svg.Style.FIRM);
        for (Stage stage : stages) {
            dot(svg, across(stage.stock().millimetres()), down(stage.insertion().millimetres()));
        }
        svg.text(at(LEFT - 8, TOP + 4), Svg.Anchor.END, words(table.tip().insertion()));
        svg.text(at(LEFT - 8, PLOT_BOTTOM + 4), Svg.Anchor.END, "0");
        svg.text(
                at(LEFT, TOP - 22),
                Svg.Anchor.START,
                "insertion; pale where a thousandth off moves it by less than 1/64 in");
        svg.text(at(LEFT, PLOT_BOTTOM + 18), Svg.Anchor.START, stock(stages.get(0)) + " to come off");
        svg.text(at(RIGHT, PLOT_BOTTOM + 18), Svg.Anchor.END, "none");
        rows(svg, stages);
        return svg.text();
    }

    private static Svg.Point at(double x, double y) {
        return new Svg.Point(x, y);
    }

    private double across(double stockMillimetres) {
        return LEFT + (1 - stockMillimetres / stock) * (RIGHT - LEFT);
    }

    private double down(double insertionMillimetres) {
        return PLOT_BOTTOM - insertionMillimetres / depth * (PLOT_BOTTOM - TOP);
    }

    private List<Svg.Point> curve() {
        List<Svg.Point> curve = new ArrayList<>();
        for (int k = 0; k <= STEPS; k++) {
            double left = stock * (STEPS - k) / STEPS;
            Length insertion = table.tip().contact(Length.ofMillimetres(left)).insertion();
            curve.add(at(across(left), down(insertion.millimetres())));
        }
        return curve;
    }

    /** Pale where the curve is so level that a thousandth does not show on a rule. */
    private void bands(Svg svg, List<Svg.Point> curve) {
        double level = RULE.millimetres() / Length.ofThousandths(1).millimetres() * stock / depth;
        double slope = level * (PLOT_BOTTOM - TOP) / (RIGHT - LEFT);
        double from = LEFT;
        for (int k = 1; k < curve.size(); k++) {
            Svg.Point before = curve.get(k - 1);
            Svg.Point here = curve.get(k);
            boolean silent = before.y() - here.y() < slope * (here.x() - before.x());
            double to = silent ? here.x() : before.x();
            if ((!silent || k == curve.size() - 1) && from < to) {
                svg.polygon(
                        List.of(at(from, TOP), at(to, TOP), at(to, PLOT_BOTTOM), at(from, PLOT_BOTTOM)),
                        Svg.Style.PALE);
            }
            from = silent ? from : here.x();
        }
    }

    private static void dot(Svg svg, double x, double y) {
        svg.polygon(List.of(at(x - 4, y), at(x, y - 4), at(x + 4, y), at(x, y + 4)), Svg.Style.BLACK);
    }

    private void rows(Svg svg, List<Stage> stages) {
        int y = PLOT_BOTTOM + 52;
        svg.text(at(LEFT + 130, y), Svg.Anchor.END, "still to come off");
        svg.text(at(LEFT + 320, y), Svg.Anchor.END, "goes in");
        svg.text(at(LEFT + 560, y), Svg.Anchor.END, "the next thousandth is worth");
        for (Stage stage : stages) {
            y += ROW;
            svg.text(at(LEFT + 130, y), Svg.Anchor.END, stock(stage));
            svg.text(at(LEFT + 320, y), Svg.Anchor.END, insertion(stage));
            svg.text(at(LEFT + 560, y), Svg.Anchor.END, words(stage.perThousandth()));
        }
    }

    private String stock(Stage stage) {
        return Term.fine("e", "stock", stage.stock()).text(units);
    }

    private String insertion(Stage stage) {
        return words(stage.insertion());
    }

    private String words(Length length) {
        Term term = Term.of("i", "insertion", length);
        return term.number(units, 0) + " " + term.unit(units);
    }
}

package dev.tipwright.swingweight.set;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.internal.svg.Svg;
import dev.tipwright.core.internal.svg.Svg.Anchor;
import dev.tipwright.core.internal.svg.Svg.Point;
import dev.tipwright.core.internal.svg.Svg.Style;
import dev.tipwright.core.internal.text.Decimals;
import dev.tipwright.core.quantity.Inertia;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.swingweight.scale.SwingWeight;
import dev.tipwright.swingweight.scale.SwingWeightScale;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;

/**
 * A picture of a set as SVG text: swing weight, total mass and inertia, one panel each, club by club. A dot is what a club comes to, the bar
 * through it its expanded uncertainty, a dash what was wanted. Black on white, and told in words for those who cannot see it.
 *
 * <pre>{@code
 * ChartClub six = new ChartClub(
 *         "6", new SwingWeight(30), 0.5, Mass.ofGrams(420), Mass.ofGrams(0.4),
 *         Inertia.ofKilogramSquareCentimetres(2700), Inertia.ofKilogramSquareCentimetres(8), ChartClub.Wanted.NOTHING);
 * SetChart chart = new SetChart(SwingWeightScale.LETTERS_AT_14_INCHES, List.of(six));
 * chart.description();   // = Swing weight: 6 D0.0. Total mass: 6 420.0 g. Inertia about the butt: 6 2700 kg cm2.
 * chart.svg().startsWith("<svg");   // = true
 * }</pre>
 *
 * @param scale the scale of the swing weights
 * @param clubs in the order of the set, one to a hundred
 */
public record SetChart(SwingWeightScale scale, List<ChartClub> clubs) {

    private static final int LEFT = 64;

    private static final int ACROSS = 56;

    private static final int PANEL = 150;

    private static final int TOP = 40;

    private static final int GAP = 52;

    private static final int MOST = 100;

    /** A panel: its title and its clubs as numbers. */
    private record Panel(String title, DoubleFunction<String> written, List<Mark> marks) {

        double low() {
            return marks.stream().mapToDouble(Mark::low).min().orElseThrow();
        }

        double high() {
            return marks.stream().mapToDouble(Mark::high).max().orElseThrow();
        }
    }

    private record Mark(String club, double value, double uncertainty, OptionalDouble wanted) {

        double low() {
            return Math.min(value - uncertainty, wanted.orElse(value));
        }

        double high() {
            return Math.max(value + uncertainty, wanted.orElse(value));
        }
    }

    /**
     * Checks the values.
     *
     * @param scale the scale of the swing weights
     * @param clubs in the order of the set, one to a hundred, labels distinct
     */
    public SetChart {
        Require.given("scale", scale);
        clubs = Require.distinct("clubs", Require.someOf("clubs", clubs), ChartClub::label);
        Require.that(clubs.size() <= MOST, "clubs", "must be at most " + MOST, clubs.size());
    }

    /**
     * The picture.
     *
     * @return SVG text
     */
    public String svg() {
        int width = Math.max(420, LEFT + ACROSS * clubs.size() + 24);
        List<Panel> panels = panels();
        Svg svg =
                new Svg(width, TOP + panels.size() * (PANEL + GAP) + 22, "The set against its targets", description());
        for (int i = 0; i < panels.size(); i++) {
            draw(svg, panels.get(i), TOP + i * (PANEL + GAP), LEFT + ACROSS * clubs.size());
        }
        double foot = TOP + panels.size() * (PANEL + GAP) + 6.0;
        svg.text(new Point(12, foot), Anchor.START, "Dot: the club. Bar: expanded uncertainty. Dash: wanted.");
        return svg.text();
    }

    private static void draw(Svg svg, Panel panel, int top, int right) {
        Axis axis = Axis.over(panel.low(), panel.high());
        svg.text(new Point(12, top - 16.0), Anchor.START, panel.title());
        for (int k = 0; k <= axis.steps(); k++) {
            double y = axis.y(axis.from() + k * axis.step(), top);
            svg.line(new Point(LEFT, y), new Point(right, y), Style.DASHED);
            svg.text(new Point(LEFT - 6.0, y + 4), Anchor.END, panel.written().apply(axis.from() + k * axis.step()));
        }
        for (int i = 0; i < panel.marks().size(); i++) {
            mark(svg, panel.marks().get(i), axis, LEFT + ACROSS * (i + 0.5), top);
        }
    }

    private static void mark(Svg svg, Mark mark, Axis axis, double x, int top) {
        mark.wanted().ifPresent(wanted -> {
            double y = axis.y(wanted, top);
            svg.line(new Point(x - 16, y), new Point(x + 16, y), Style.FIRM);
        });
        if (mark.uncertainty() > 0) {
            double high = axis.y(mark.value() + mark.uncertainty(), top);
            double low = axis.y(mark.value() - mark.uncertainty(), top);
            svg.line(new Point(x, high), new Point(x, low), Style.FIRM);
            svg.line(new Point(x - 5, high), new Point(x + 5, high), Style.FIRM);
            svg.line(new Point(x - 5, low), new Point(x + 5, low), Style.FIRM);
        }
        double y = axis.y(mark.value(), top);
        List<Point> dot = new ArrayList<>();
        for (int[] corner : new int[][] {{-4, 0}, {-3, -3}, {0, -4}, {3, -3}, {4, 0}, {3, 3}, {0, 4}, {-3, 3}}) {
            dot.add(new Point(x + corner[0], y + corner[1]));
        }
        svg.polygon(dot, Style.BLACK);
        svg.text(new Point(x, top + PANEL + 16.0), Anchor.MIDDLE, shortened(mark.club()));
    }

    private static String shortened(String label) {
        return label.length() <= 8 ? label : label.substring(0, 7) + ".";
    }

    /** A scale of round numbers: from, step and how many. */
    private record Axis(double from, double step, int steps) {

        /** 1, 2 or 5 times a power of ten, so that about four lines cover the range. */
        static Axis over(double low, double high) {
            double range = Math.max(high - low, Math.max(1e-3, 1e-3 * Math.abs(high)));
            double power = 1e-9;
            while (power * 10 <= range / 2.5) {
                power *= 10;
            }
            double step = power;
            for (int times : new int[] {2, 5, 10}) {
                step = step * 5 < range ? power * times : step;
            }
            double from = Math.floor(low / step) * step;
            int steps = (int) Math.max(1, Math.ceil((high - from) / step - 1e-9));
            return new Axis(from, step, Math.min(20, steps));
        }

        double y(double value, int top) {
            return top + PANEL - PANEL * (value - from) / (step * steps);
        }
    }

    private List<Panel> panels() {
        List<Mark> reads = new ArrayList<>();
        List<Mark> masses = new ArrayList<>();
        List<Mark> inertias = new ArrayList<>();
        for (ChartClub club : clubs) {
            ChartClub.Wanted wanted = club.wanted();
            reads.add(new Mark(
                    club.label(),
                    club.reads().points(),
                    club.readsUncertainty(),
                    number(wanted.reads().map(SwingWeight::points))));
            masses.add(new Mark(
                    club.label(),
                    club.total().grams(),
                    club.totalUncertainty().grams(),
                    number(wanted.total().map(Mass::grams))));
            inertias.add(new Mark(
                    club.label(),
                    club.inertia().kilogramSquareCentimetres(),
                    club.inertiaUncertainty().kilogramSquareCentimetres(),
                    number(wanted.inertia().map(Inertia::kilogramSquareCentimetres))));
        }
        return List.of(
                new Panel("Swing weight", points -> scale.designation(new SwingWeight(points)), reads),
                new Panel("Total mass, g", grams -> Decimals.fixed(grams, 1), masses),
                new Panel("Inertia about the butt, kg cm2", inertia -> Decimals.fixed(inertia, 0), inertias));
    }

    private static OptionalDouble number(Optional<Double> value) {
        return value.isPresent() ? OptionalDouble.of(value.get()) : OptionalDouble.empty();
    }

    /**
     * The picture in words.
     *
     * @return what each club comes to and what was wanted, panel by panel
     */
    public String description() {
        StringBuilder words = new StringBuilder();
        for (Panel panel : panels()) {
            String[] title = panel.title().split(", ", 2);
            String unit = title.length == 2 ? " " + title[1] : "";
            words.append(words.length() == 0 ? "" : " ").append(title[0]).append(": ");
            for (int i = 0; i < panel.marks().size(); i++) {
                Mark mark = panel.marks().get(i);
                words.append(i == 0 ? "" : ", ")
                        .append(mark.club())
                        .append(' ')
                        .append(panel.written().apply(mark.value()))
                        .append(unit);
                mark.wanted()
                        .ifPresent(wanted -> words.append(" (wanted ")
                                .append(panel.written().apply(wanted))
                                .append(')'));
            }
            words.append('.');
        }
        return words.toString();
    }
}

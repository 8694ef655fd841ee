package dev.tipwright.swingweight.set;

import static dev.tipwright.swingweight.Refusals.missing;
import static dev.tipwright.swingweight.Refusals.refused;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.plan.ClubPlan;
import dev.tipwright.core.plan.JobPlanner;
import dev.tipwright.core.quantity.Inertia;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.core.uncertainty.BenchInput;
import dev.tipwright.core.uncertainty.BenchUncertainty;
import dev.tipwright.core.uncertainty.Instrument;
import dev.tipwright.swingweight.Clubs;
import dev.tipwright.swingweight.SwingWeightStep;
import dev.tipwright.swingweight.aim.SwingWeightTarget;
import dev.tipwright.swingweight.aim.SwingWeightTargets;
import dev.tipwright.swingweight.scale.SwingWeight;
import dev.tipwright.swingweight.scale.SwingWeightScale;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Pins down the picture of a set: what is drawn where, and what it says to those who cannot see it. */
class SetChartTest {

    private static final SwingWeightScale SCALE = SwingWeightScale.LETTERS_AT_14_INCHES;

    static ChartClub club(String label, double points, double grams, double inertia) {
        return new ChartClub(
                label,
                new SwingWeight(points),
                0.5,
                Mass.ofGrams(grams),
                Mass.ofGrams(0.4),
                Inertia.ofKilogramSquareCentimetres(inertia),
                Inertia.ofKilogramSquareCentimetres(8),
                new ChartClub.Wanted(
                        Optional.of(new SwingWeight(30)),
                        Optional.of(Mass.ofGrams(grams - 1)),
                        Optional.of(Inertia.ofKilogramSquareCentimetres(2700))));
    }

    /** One drawn line or area: the numbers of its corners, and the whole element. */
    private record Drawn(List<Double> at, String element) {}

    private static List<Drawn> drawn(String tag, String svg) {
        List<Drawn> all = new ArrayList<>();
        Matcher elements =
                Pattern.compile("<" + tag + " points=\"([^\"]*)\"[^>]*/>").matcher(svg);
        while (elements.find()) {
            List<Double> at = Pattern.compile("[ ,]")
                    .splitAsStream(elements.group(1))
                    .map(Double::valueOf)
                    .toList();
            all.add(new Drawn(at, elements.group()));
        }
        return all;
    }

    /** Dots are areas, whose first corner lies 4 to the left of the middle; places go with the values, a point apart as far as a point. */
    @Test
    void theDotsStandWhereTheValuesAre() {
        SetChart chart = new SetChart(
                SCALE, List.of(club("4", 29, 400, 2690), club("5", 30, 405, 2700), club("6", 32, 413, 2705)));
        List<Drawn> dots = drawn("polygon", chart.svg());
        assertThat(dots).hasSize(9);
        double[] x = dots.stream().mapToDouble(dot -> dot.at().get(0)).toArray();
        double[] y = dots.stream().mapToDouble(dot -> dot.at().get(1)).toArray();
        // printed to a hundredth of a pixel
        assertThat(y[0] - y[1]).isCloseTo((y[1] - y[2]) / 2, within(0.02)).isPositive();
        assertThat((y[3] - y[4]) / 5).isCloseTo((y[4] - y[5]) / 8, within(0.02)).isPositive();
        assertThat((y[6] - y[7]) / 10)
                .isCloseTo((y[7] - y[8]) / 5, within(0.02))
                .isPositive();
        assertThat(x[1] - x[0]).isEqualTo(x[2] - x[1]).isPositive();
        assertThat(x[0]).isEqualTo(x[3]).isEqualTo(x[6]);
    }

    @Test
    void theWordsSayWhatThePictureShows() {
        SetChart chart = new SetChart(
                SCALE,
                List.of(club("4", 29, 400, 2690), club("5", 30, 405, 2700).withWanted(ChartClub.Wanted.NOTHING)));
        assertThat(chart.description())
                .isEqualTo(
                        "Swing weight: 4 C9.0 (wanted D0.0), 5 D0.0. Total mass: 4 400.0 g (wanted 399.0), 5 405.0 g."
                                + " Inertia about the butt: 4 2690 kg cm2 (wanted 2700), 5 2700 kg cm2.");
        assertThat(chart.svg())
                .contains("<desc id=\"desc\">" + chart.description() + "</desc>")
                .contains("role=\"img\"");
        assertThat(chart.svg()).doesNotContainPattern("(fill|stroke)=\"(?!none|black|white|url|#e4e4e4)");
    }

    /** Three lines a bar and one a dash: without either, only the grid is left. */
    @Test
    void barsAndDashesAreDrawnWhereThereAreAny() {
        ChartClub bare = new ChartClub(
                "6",
                new SwingWeight(30),
                0,
                Mass.ofGrams(400),
                Mass.ZERO,
                Inertia.ofKilogramSquareCentimetres(2700),
                Inertia.ZERO,
                ChartClub.Wanted.NOTHING);
        int grid = firm(new SetChart(SCALE, List.of(bare)));
        assertThat(grid).isZero();
        assertThat(firm(new SetChart(SCALE, List.of(club("6", 30, 400, 2700))))).isEqualTo(3 * (3 + 1));
    }

    private static int firm(SetChart chart) {
        return (int) drawn("polyline", chart.svg()).stream()
                .filter(line -> line.element().contains("stroke-width=\"1.6\""))
                .count();
    }

    /** A chart as it was looked at by a person; after a change that is meant, {@code -Ddrawings.write=true} writes it anew. */
    @Test
    void isDrawnAsItWasLookedAt() throws IOException {
        SetChart chart = new SetChart(
                SCALE,
                List.of(
                        club("4", 29.3, 400.2, 2690),
                        club("5", 30, 405, 2700).withWanted(ChartClub.Wanted.NOTHING),
                        club("pitching", 31.8, 413.7, 2705),
                        club("gap wedge", 33, 421, 2731)));
        Path file = Path.of("src/test/resources/drawings/set.svg");
        if (Boolean.getBoolean("drawings.write")) {
            Files.createDirectories(file.getParent());
            Files.writeString(file, chart.svg());
        }
        assertThat(chart.svg()).isEqualTo(Files.readString(file));
    }

    /** Everything drawn lies in the picture, for values of any size and sets of any length. */
    @Test
    void nothingIsDrawnOutside() {
        for (double size : new double[] {0, 1e-6, 0.3, 1, 7, 1e3, 1e4}) {
            for (int clubs : new int[] {1, 2, 14, 100}) {
                List<ChartClub> set = new ArrayList<>();
                for (int i = 0; i < clubs; i++) {
                    set.add(club(
                            "a label too long to be written " + i, 30 + size * i, 400 + size * i, 2700 - size * i));
                }
                String svg = new SetChart(SCALE, set).svg();
                Matcher box =
                        Pattern.compile("viewBox=\"0 0 ([0-9]+) ([0-9]+)\"").matcher(svg);
                assertThat(box.find()).isTrue();
                for (String tag : List.of("polyline", "polygon")) {
                    for (Drawn drawn : drawn(tag, svg)) {
                        for (int k = 0; k < drawn.at().size(); k += 2) {
                            String as = size + ", " + clubs + " clubs: " + drawn.element();
                            assertThat(drawn.at().get(k)).as(as).isBetween(0.0, Double.parseDouble(box.group(1)));
                            assertThat(drawn.at().get(k + 1)).as(as).isBetween(0.0, Double.parseDouble(box.group(2)));
                        }
                    }
                }
            }
        }
    }

    /** Plain club, head known to a tenth of a point, 0.2 expanded; 15 oz; its target D2. */
    @Test
    void aPlannedClubIsDrawnWithItsBudget() {
        BenchUncertainty dowel = BenchUncertainty.of(BenchUncertainty.Tool.of(
                Instrument.ofStandard("dowel", "mm", 0.0175 * 25.4, 0), BenchInput.HEAD_CENTRE));
        SwingWeightTargets targets =
                new SwingWeightTargets(SCALE, List.of(new SwingWeightTarget("6", SCALE.parse("D2"), 5)));
        Build plain = Clubs.plain();
        ClubPlan plan =
                JobPlanner.of(SwingWeightStep.towards(targets, List.of())).plan(plain);
        ChartClub club = ChartClub.of(plan, dowel).orElseThrow();
        assertThat(club.label()).isEqualTo("6");
        assertThat(club.reads().points()).isCloseTo(61 / 1.75, within(1e-9));
        // the step of the budget is on the nanometre grid
        assertThat(club.readsUncertainty()).isCloseTo(0.2, within(1e-4));
        assertThat(club.total().ounces()).isCloseTo(15, within(1e-9));
        assertThat(club.totalUncertainty()).isEqualTo(Mass.ZERO);
        // 10 oz at 37 in: 2 x 37 x 10 x 0.0175 oz in2 for a standard uncertainty
        assertThat(club.inertiaUncertainty().ounceSquareInches()).isCloseTo(2 * 12.95, within(0.01));
        assertThat(club.wanted().reads()).contains(SCALE.parse("D2"));
        assertThat(ChartClub.of(new ClubPlan(plain, plain, List.of(), List.of()), dowel))
                .isEmpty();
    }

    @Test
    void hostileInputIsNamed() {
        ChartClub club = club("6", 30, 400, 2700);
        missing("scale", () -> new SetChart(null, List.of(club)));
        missing("clubs", () -> new SetChart(SCALE, null));
        refused("clubs must not be empty, was []", () -> new SetChart(SCALE, List.of()));
        refused(
                "clubs must name each one once, but has more than one of [6]",
                () -> new SetChart(SCALE, List.of(club, club)));
        List<ChartClub> many = new ArrayList<>();
        for (int i = 0; i < 101; i++) {
            many.add(club("c" + i, 30, 400, 2700));
        }
        refused("clubs must be at most 100, was 101", () -> new SetChart(SCALE, many));
        missing("wanted", () -> club.withWanted(null));
        missing("reads", () -> new ChartClub.Wanted(null, Optional.empty(), Optional.empty()));
        missing("plan", () -> ChartClub.of(null, null));
        for (double bad : new double[] {-1, 1001, Double.NaN}) {
            assertThatThrownBy(() -> new ChartClub(
                            "6",
                            club.reads(),
                            bad,
                            club.total(),
                            Mass.ZERO,
                            club.inertia(),
                            Inertia.ZERO,
                            club.wanted()))
                    .hasMessageStartingWith("readsUncertainty must be from 0 to 1000 points");
        }
        assertThatThrownBy(() -> new ChartClub(
                        "6",
                        club.reads(),
                        0,
                        club.total(),
                        Mass.ZERO,
                        club.inertia(),
                        Inertia.ofKilogramSquareCentimetres(-1),
                        club.wanted()))
                .hasMessageStartingWith("inertiaUncertainty must not be negative");
    }
}

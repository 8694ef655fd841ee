package dev.tipwright.fitcheck.set;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;

import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.evidence.Working;
import dev.tipwright.core.part.Finish;
import dev.tipwright.core.part.Wall;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.ThicknessProfile;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Units;
import dev.tipwright.core.quantity.Volume;
import dev.tipwright.fitcheck.insert.Clearance;
import dev.tipwright.fitcheck.taper.MaterialRemoval;
import dev.tipwright.fitcheck.taper.TipSection;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.jgrapht.Graph;
import org.jgrapht.alg.matching.HopcroftKarpMaximumCardinalityBipartiteMatching;
import org.jgrapht.alg.matching.KuhnMunkresMinimalWeightBipartitePerfectMatching;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleWeightedGraph;
import org.junit.jupiter.api.Test;

/** Tips to bores: by hand, and random sets against the matchings of a general graph library, JGraphT. */
class SelectiveAssemblyTest {

    private static final Length WANTED = mil(4);
    private static final Reading<Length> NO_LIMIT = Reading.unknown("the shaft's maker");

    /** In place of a pair that gives no fit; dearer than all that do together. */
    private static final double NEVER = 1e9;

    @Test
    void leastMaterialByHand() {
        // The thin tip clears both bores and costs nothing; the thick one costs least in the wide one.
        SelectiveAssembly assembly = assembly(
                List.of(tip("A", 373.5), tip("B", 350)),
                List.of(bore("7", 363, 355), bore("8", 366, 358)),
                AssemblyAim.LEAST_MATERIAL);
        assertThat(assembly.pairs()).extracting(FittedPair::tip).containsExactly("A", "B");
        assertThat(assembly.pairs()).extracting(FittedPair::bore).containsExactly("8", "7");
        assertThat(assembly.pairs().get(1).structure().cubicMillimetres()).isZero();
        assertThat(assembly.structure()).isEqualTo(assembly.pairs().get(0).structure());
        assertThat(assembly.tipsLeft()).isEmpty();
        assertThat(assembly.boresLeft()).isEmpty();
        assertThat(assembly.findings()).isEmpty();
    }

    @Test
    void mostEvenByHand() {
        // Parallel bores of .370 and .360; tips of .362 and .352. Crosswise one would be .018 loose.
        SelectiveAssembly assembly = assembly(
                List.of(tip("A", 352), tip("B", 362)),
                List.of(bore("7", 370, 370), bore("8", 360, 360)),
                AssemblyAim.MOST_EVEN);
        assertThat(assembly.pairs()).extracting(FittedPair::bore).containsExactly("8", "7");
        assertThat(assembly.pairs()).extracting(FittedPair::clearance).containsExactly(mil(8), mil(8));
        assertThat(assembly.worst()).isEqualTo(mil(4));
    }

    /** Two pairings cost the same: the tip first by label takes the bore first by label, however they are given. */
    @Test
    void tiesGoByLabelAndOrderMakesNoDifference() {
        List<LabelledTip> tips = new ArrayList<>(List.of(tip("A", 368), tip("B", 368), tip("C", 368)));
        List<LabelledBore> bores = new ArrayList<>(List.of(bore("1", 363, 355), bore("2", 363, 355)));
        SelectiveAssembly first = assembly(tips, bores, AssemblyAim.LEAST_MATERIAL);
        assertThat(first.pairs()).extracting(FittedPair::bore).containsExactly("1", "2");
        assertThat(first.tipsLeft()).containsExactly("C");
        Collections.reverse(tips);
        Collections.reverse(bores);
        assertThat(assembly(tips, bores, AssemblyAim.LEAST_MATERIAL)).isEqualTo(first);
    }

    @Test
    void aPairThatGivesNoFitIsNotMade() {
        // A short reading, a bore narrower than the clearance, a finish as thick as the tip, a wall under the limit.
        LabelledTip read =
                new LabelledTip("A", TipSection.of(DiameterProfile.cylinder(mil(368), mil(1000)), Finish.NONE));
        LabelledTip thick = new LabelledTip(
                "A",
                TipSection.of(
                        DiameterProfile.cylinder(mil(368), mil(8000)),
                        Finish.NONE.withThickness(ThicknessProfile.uniform(mil(184)))));
        List<LabelledBore> bores = List.of(bore("7", 363, 355), bore("8", 4, 4));
        for (LabelledTip tip : List.of(read, thick)) {
            assertThat(assembly(List.of(tip), bores, AssemblyAim.MOST_EVEN).pairs())
                    .isEmpty();
        }
        SelectiveAssembly one = assembly(List.of(tip("A", 368)), bores, AssemblyAim.MOST_EVEN);
        assertThat(one.pairs()).extracting(FittedPair::bore).containsExactly("7");
        assertThat(one.boresLeft()).containsExactly("8");
        // .368 down to .351 at the end leaves .0815 of a wall of .090.
        LabelledTip tube = tip("A", 368)
                .withSection(tip("A", 368)
                        .section()
                        .withWall(Reading.measured(
                                new Wall(ThicknessProfile.uniform(mil(90)), Reading.unknown("a weighed offcut")))));
        assertThat(limited(tube, 81).pairs()).hasSize(1);
        assertThat(limited(tube, 82).pairs()).isEmpty();
    }

    private static SelectiveAssembly limited(LabelledTip tip, double leastWall) {
        return SelectiveAssembly.of(
                List.of(tip),
                List.of(bore("7", 363, 355)),
                WANTED,
                Reading.measured(mil(leastWall)),
                AssemblyAim.LEAST_MATERIAL);
    }

    @Test
    void aShortageSaysWhoCompetesForWhat() {
        LabelledBore far =
                new LabelledBore("9", Bore.ofTwoDiameters(mil(363), mil(355), mil(1250), BoreEnd.FLAT), mil(1250));
        LabelledTip shortTip =
                new LabelledTip("A", TipSection.of(DiameterProfile.cylinder(mil(360), mil(900)), Finish.NONE));
        SelectiveAssembly none = assembly(
                List.of(shortTip, shortTip.withLabel("B")),
                List.of(far, far.withLabel("8").withInsertion(mil(900))),
                AssemblyAim.LEAST_MATERIAL);
        assertThat(none.pairs()).isEmpty();
        assertThat(none.tipsLeft()).containsExactly("A", "B");
        assertThat(none.boresLeft()).containsExactly("8", "9");
        assertThat(none.structure().cubicMillimetres()).isZero();
        assertThat(none.worst()).isEqualTo(Length.ZERO);
        assertThat(none.working().lines()).isEmpty();
        assertThat(none.findings().get(0).message(Units.INCH))
                .startsWith("B go without: A, B can be paired with 8 only, so nothing was paired");
        SelectiveAssembly fewer = assembly(
                List.of(shortTip, shortTip.withLabel("B"), shortTip.withLabel("C")),
                List.of(far, bore("8", 363, 355)),
                AssemblyAim.LEAST_MATERIAL);
        assertThat(fewer.findings().get(0).message(Units.INCH))
                .startsWith("8, 9 go without: 8, 9 can be paired with nothing only");
    }

    /** Labels may be eighty characters long, and so may what is said of them. */
    @Test
    void longLabelsAreCounted() {
        String longest = "x".repeat(80);
        LabelledTip shortTip =
                new LabelledTip(longest, TipSection.of(DiameterProfile.cylinder(mil(360), mil(900)), Finish.NONE));
        SelectiveAssembly none = assembly(
                List.of(shortTip, shortTip.withLabel("B")),
                List.of(bore("7", 363, 355), bore("8", 363, 355)),
                AssemblyAim.LEAST_MATERIAL);
        assertThat(none.findings().get(0).message(Units.INCH)).startsWith("2 of them go without");
        SelectiveAssembly one = assembly(
                List.of(tip("A", 368).withLabel(longest)), List.of(bore("7", 363, 355)), AssemblyAim.MOST_EVEN);
        assertThat(one.working().lines().get(0).inputs().get(0).meaning()).isEqualTo("structure off the tip of pair 1");
    }

    @Test
    void theWorkingAddsUp() {
        SelectiveAssembly assembly = assembly(
                List.of(tip("A", 373.5), tip("B", 368)),
                List.of(bore("7", 363, 355), bore("8", 366, 358)),
                AssemblyAim.LEAST_MATERIAL);
        Working.Line line = assembly.working().lines().get(0);
        assertThat(line.formula()).isEqualTo("V1 + V2");
        double sum = 0;
        for (Term input : line.inputs()) {
            sum += Double.parseDouble(input.number(Units.METRIC, 9));
        }
        // Each is printed to 1e-10 mm3.
        assertThat(sum).isCloseTo(Double.parseDouble(line.result().number(Units.METRIC, 9)), offset(1.5e-10));
    }

    /** Random sets, some pairs of which give no fit: totals and bounds of the graph library. */
    @Test
    void randomSetsCostWhatTheGraphLibrarySays() {
        Random random = new Random(20);
        int none = 0;
        for (int round = 0; round < 300; round++) {
            List<LabelledTip> tips = new ArrayList<>();
            List<LabelledBore> bores = new ArrayList<>();
            int rows = 1 + random.nextInt(6);
            int columns = 1 + random.nextInt(6);
            for (int k = 0; k < rows; k++) {
                double length = random.nextInt(4) == 0 ? 1100 : 8000;
                tips.add(new LabelledTip(
                        "t" + k,
                        TipSection.of(
                                DiameterProfile.cylinder(mil(345 + random.nextInt(300) / 10.0), mil(length)),
                                Finish.NONE)));
            }
            for (int k = 0; k < columns; k++) {
                double bottom = 350 + random.nextInt(100) / 10.0;
                double depth = 1000 + random.nextInt(300);
                Bore bore =
                        Bore.ofTwoDiameters(mil(bottom + random.nextInt(10)), mil(bottom), mil(depth), BoreEnd.FLAT);
                bores.add(new LabelledBore("b" + k, bore, bore.depth()));
            }
            SelectiveAssembly least = assembly(tips, bores, AssemblyAim.LEAST_MATERIAL);
            SelectiveAssembly even = assembly(tips, bores, AssemblyAim.MOST_EVEN);
            double total = leastTotal(costs(tips, bores, AssemblyAim.LEAST_MATERIAL));
            if (total >= NEVER) {
                none++;
                assertThat(least.pairs()).isEmpty();
                assertThat(even.pairs()).isEmpty();
                continue;
            }
            assertThat(least.pairs()).hasSize(Math.min(rows, columns));
            // Volumes of some hundred mm3 are put on a grid of 1e-6 each.
            assertThat(least.structure().cubicMillimetres()).isCloseTo(total, offset(1e-5));
            double[][] uneven = costs(tips, bores, AssemblyAim.MOST_EVEN);
            double worst = even.worst().millimetres();
            assertThat(mostPairs(uneven, worst + 1e-9)).isEqualTo(Math.min(rows, columns));
            assertThat(mostPairs(uneven, worst - 1e-9)).isLessThan(Math.min(rows, columns));
        }
        assertThat(none).isBetween(1, 200);
    }

    private static double[][] costs(List<LabelledTip> tips, List<LabelledBore> bores, AssemblyAim aim) {
        double[][] costs = new double[tips.size()][bores.size()];
        for (int row = 0; row < tips.size(); row++) {
            for (int column = 0; column < bores.size(); column++) {
                TipSection tip = tips.get(row).section();
                LabelledBore bore = bores.get(column);
                if (bore.insertion().moreThan(tip.outside().length())) {
                    costs[row][column] = NEVER;
                    continue;
                }
                MaterialRemoval removal = MaterialRemoval.of(tip, bore.bore(), bore.insertion(), WANTED);
                costs[row][column] = aim == AssemblyAim.LEAST_MATERIAL
                        ? removal.structureVolume().cubicMillimetres()
                        : Clearance.of(removal.profile(), bore.bore(), bore.insertion())
                                .mean()
                                .minus(WANTED)
                                .abs()
                                .millimetres();
            }
        }
        return costs;
    }

    /** Filled up to a square with blank lines at no cost. */
    private static double leastTotal(double[][] costs) {
        int size = Math.max(costs.length, costs[0].length);
        Graph<Integer, DefaultWeightedEdge> graph = new SimpleWeightedGraph<>(DefaultWeightedEdge.class);
        Set<Integer> rows = lines(graph, size, 1);
        Set<Integer> columns = lines(graph, size, -1);
        for (int row = 0; row < size; row++) {
            for (int column = 0; column < size; column++) {
                boolean real = row < costs.length && column < costs[0].length;
                graph.setEdgeWeight(graph.addEdge(1 + row, -1 - column), real ? costs[row][column] : 0);
            }
        }
        return new KuhnMunkresMinimalWeightBipartitePerfectMatching<>(graph, rows, columns)
                .getMatching()
                .getWeight();
    }

    private static int mostPairs(double[][] costs, double bound) {
        Graph<Integer, DefaultWeightedEdge> graph = new SimpleWeightedGraph<>(DefaultWeightedEdge.class);
        Set<Integer> rows = lines(graph, costs.length, 1);
        Set<Integer> columns = lines(graph, costs[0].length, -1);
        for (int row = 0; row < costs.length; row++) {
            for (int column = 0; column < costs[0].length; column++) {
                if (costs[row][column] <= bound) {
                    graph.addEdge(1 + row, -1 - column);
                }
            }
        }
        return new HopcroftKarpMaximumCardinalityBipartiteMatching<>(graph, rows, columns)
                .getMatching()
                .getEdges()
                .size();
    }

    private static Set<Integer> lines(Graph<Integer, DefaultWeightedEdge> graph, int count, int sign) {
        Set<Integer> lines = new LinkedHashSet<>();
        for (int k = 1; k <= count; k++) {
            graph.addVertex(sign * k);
            lines.add(sign * k);
        }
        return lines;
    }

    @Test
    void hostileInput() {
        List<LabelledBore> bores = List.of(bore("7", 363, 355));
        assertThatThrownBy(() -> assembly(List.of(), bores, AssemblyAim.MOST_EVEN))
                .hasMessageContaining("tips");
        assertThatThrownBy(() -> assembly(List.of(tip("A", 360), tip("A", 361)), bores, AssemblyAim.MOST_EVEN))
                .hasMessageContaining("tips");
        assertThatThrownBy(() -> assembly(Collections.nCopies(1025, tip("A", 360)), bores, AssemblyAim.MOST_EVEN))
                .hasMessageContaining("tips");
        assertThatThrownBy(() -> new FittedPair("A", "7", Volume.ofCubicMillimetres(-1), WANTED))
                .hasMessageContaining("structure");
        assertThatThrownBy(() -> new LabelledBore("7", bores.get(0).bore(), mil(1251)))
                .hasMessageContaining("insertion");
        assertThat(bores.get(0).withBore(bores.get(0).bore())).isEqualTo(bores.get(0));
    }

    private static SelectiveAssembly assembly(List<LabelledTip> tips, List<LabelledBore> bores, AssemblyAim aim) {
        return SelectiveAssembly.of(tips, bores, WANTED, NO_LIMIT, aim);
    }

    private static LabelledTip tip(String label, double diameter) {
        return new LabelledTip(label, TipSection.of(DiameterProfile.cylinder(mil(diameter), mil(8000)), Finish.NONE));
    }

    private static LabelledBore bore(String label, double mouth, double bottom) {
        return new LabelledBore(
                label, Bore.ofTwoDiameters(mil(mouth), mil(bottom), mil(1250), BoreEnd.FLAT), mil(1250));
    }

    private static Length mil(double thousandths) {
        return Length.ofThousandths(thousandths);
    }
}

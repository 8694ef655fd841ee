package dev.tipwright.fitcheck.set;

import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.evidence.Source;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.evidence.Working;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.internal.assign.Aim;
import dev.tipwright.core.internal.assign.Assignment;
import dev.tipwright.core.internal.assign.CostTable;
import dev.tipwright.core.internal.assign.Pairing;
import dev.tipwright.core.internal.assign.Shortage;
import dev.tipwright.core.internal.shape.Polyline;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Volume;
import dev.tipwright.fitcheck.insert.Clearance;
import dev.tipwright.fitcheck.taper.MaterialRemoval;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Which tip goes to which bore, so that the set costs least structure or comes out most even. Every pair that gives a fit is worked out:
 * the tip reaches the insertion, the bore is wider than the wanted clearance, the finish leaves some tip, and the wall left is not under
 * the caller's limit. Of the pairings that serve the shorter side in full the best is found exactly, costs put on a grid of a millionth
 * of a cubic millimetre, or of a nanometre; of pairings equally good the one that gives the tip first by label the bore first by label,
 * and so on. The order in which they are given makes no difference.
 *
 * <pre>{@code
 * Bore narrow = Bore.ofTwoDiameters(
 *         Length.parse(".363 in"), Length.parse(".355 in"), Length.parse("1 1/4 in"), BoreEnd.FLAT);
 * Bore wide = Bore.ofTwoDiameters(
 *         Length.parse(".366 in"), Length.parse(".358 in"), Length.parse("1 1/4 in"), BoreEnd.FLAT);
 * LabelledTip thick = new LabelledTip("A", TipSection.of(
 *         DiameterProfile.cylinder(Length.parse(".3735 in"), Length.parse("8 in")), Finish.NONE));
 * LabelledTip thin = new LabelledTip("B", TipSection.of(
 *         DiameterProfile.cylinder(Length.parse(".356 in"), Length.parse("8 in")), Finish.NONE));
 * SelectiveAssembly assembly = SelectiveAssembly.of(
 *         List.of(thick, thin),
 *         List.of(new LabelledBore("7", narrow, narrow.depth()), new LabelledBore("8", wide, wide.depth())),
 *         Length.parse(".004 in"), Reading.unknown("the shaft's maker"), AssemblyAim.LEAST_MATERIAL);
 * assembly.pairs().get(0).bore();       // = 8
 * assembly.pairs().get(1).bore();       // = 7
 * }</pre>
 *
 * @param aim what was made least
 * @param clearance wanted clearance on the diameter ({@code w}); zero or more
 * @param pairs the pairs, by the label of the tip; empty if the shorter side cannot be served
 * @param tipsLeft labels of the tips that go to no bore, in order
 * @param boresLeft labels of the bores that take no tip, in order
 * @param findings why nothing could be paired, if so
 */
public record SelectiveAssembly(
        AssemblyAim aim,
        Length clearance,
        List<FittedPair> pairs,
        List<String> tipsLeft,
        List<String> boresLeft,
        List<Finding> findings) {

    /**
     * Checks the values.
     *
     * @param aim what was made least
     * @param clearance wanted clearance on the diameter; zero or more
     * @param pairs the pairs
     * @param tipsLeft labels of the tips that go to no bore
     * @param boresLeft labels of the bores that take no tip
     * @param findings why nothing could be paired
     */
    public SelectiveAssembly {
        Require.given("aim", aim);
        Require.notNegative("clearance", clearance);
        pairs = Require.list("pairs", pairs);
        tipsLeft = Require.list("tipsLeft", tipsLeft);
        boresLeft = Require.list("boresLeft", boresLeft);
        findings = Require.list("findings", findings);
    }

    /**
     * Pairs tips with bores.
     *
     * @param tips the tips; 1 to 1024, no two of one label
     * @param bores the bores; 1 to 1024, no two of one label
     * @param clearance wanted clearance on the diameter ({@code w}); zero or more
     * @param leastWall the caller's limit for the wall of structure left; unknown sets none, and so does a tip whose wall is unknown
     * @param aim what to make least
     * @return the pairs, or a finding that says who goes without
     */
    public static SelectiveAssembly of(
            List<LabelledTip> tips,
            List<LabelledBore> bores,
            Length clearance,
            Reading<Length> leastWall,
            AssemblyAim aim) {
        List<LabelledTip> up = sorted(Require.distinct("tips", some("tips", tips), LabelledTip::label));
        List<LabelledBore> down = Require.distinct("bores", some("bores", bores), LabelledBore::label).stream()
                .sorted(Comparator.comparing(LabelledBore::label))
                .toList();
        Require.notNegative("clearance", clearance);
        Require.given("leastWall", leastWall);
        Require.given("aim", aim);
        List<List<Optional<FittedPair>>> fits = new ArrayList<>();
        double[][] costs = new double[up.size()][down.size()];
        for (int row = 0; row < up.size(); row++) {
            List<Optional<FittedPair>> line = new ArrayList<>();
            for (int column = 0; column < down.size(); column++) {
                Optional<FittedPair> fit = fit(up.get(row), down.get(column), clearance, leastWall);
                line.add(fit);
                costs[row][column] = fit.map(pair -> cost(pair, clearance, aim)).orElse(CostTable.FORBIDDEN);
            }
            fits.add(line);
        }
        Assignment best = Assignment.best(
                CostTable.of(costs, GRID), aim == AssemblyAim.LEAST_MATERIAL ? Aim.LEAST_TOTAL : Aim.LEAST_WORST);
        return best instanceof Pairing pairing
                ? paired(pairing, up, down, fits, clearance, aim)
                : unpaired((Shortage) best, up, down, clearance, aim);
    }

    /** A millionth of a cubic millimetre of structure, a nanometre of clearance. */
    private static final double GRID = 1e-6;

    private static final int MOST = CostTable.MOST_LINES;

    /** As long as a term may be. */
    private static final int READABLE = 80;

    private static <T> List<T> some(String name, List<T> list) {
        List<T> given = Require.someOf(name, list);
        Require.that(given.size() <= MOST, name, "must be at most " + MOST, given.size());
        return given;
    }

    private static List<LabelledTip> sorted(List<LabelledTip> tips) {
        return tips.stream().sorted(Comparator.comparing(LabelledTip::label)).toList();
    }

    private static Optional<FittedPair> fit(
            LabelledTip tip, LabelledBore bore, Length clearance, Reading<Length> leastWall) {
        Polyline around = Polyline.of(bore.bore().profile(), Polyline.Diameter.LEAST)
                .between(0, bore.insertion().millimetres());
        boolean made = !bore.insertion().moreThan(tip.section().outside().length())
                && clearance.millimetres() < around.value(around.least())
                && tip.section().leastBare().moreThan(Length.ZERO);
        if (!made) {
            return Optional.empty();
        }
        MaterialRemoval removal = MaterialRemoval.of(tip.section(), bore.bore(), bore.insertion(), clearance);
        boolean thin = removal.leastWall()
                .flatMap(wall -> leastWall.known().map(wall::lessThan))
                .orElse(false);
        return thin
                ? Optional.empty()
                : Optional.of(new FittedPair(
                        tip.label(),
                        bore.label(),
                        Volume.ofCubicMillimetres(
                                Math.max(0, removal.structureVolume().cubicMillimetres())),
                        Clearance.of(removal.profile(), bore.bore(), bore.insertion())
                                .mean()));
    }

    private static double cost(FittedPair pair, Length clearance, AssemblyAim aim) {
        return aim == AssemblyAim.LEAST_MATERIAL
                ? pair.structure().cubicMillimetres()
                : pair.clearance().minus(clearance).abs().millimetres();
    }

    private static SelectiveAssembly paired(
            Pairing pairing,
            List<LabelledTip> tips,
            List<LabelledBore> bores,
            List<List<Optional<FittedPair>>> fits,
            Length clearance,
            AssemblyAim aim) {
        List<FittedPair> pairs = new ArrayList<>();
        List<String> tipsLeft = new ArrayList<>();
        List<String> boresLeft =
                new ArrayList<>(bores.stream().map(LabelledBore::label).toList());
        for (int row = 0; row < tips.size(); row++) {
            int column = pairing.columnOf(row);
            if (column == Pairing.NONE) {
                tipsLeft.add(tips.get(row).label());
            } else {
                fits.get(row).get(column).ifPresent(pairs::add);
                boresLeft.remove(bores.get(column).label());
            }
        }
        return new SelectiveAssembly(aim, clearance, pairs, tipsLeft, boresLeft, List.of());
    }

    private static SelectiveAssembly unpaired(
            Shortage shortage, List<LabelledTip> tips, List<LabelledBore> bores, Length clearance, AssemblyAim aim) {
        List<String> up = tips.stream().map(LabelledTip::label).toList();
        List<String> down = bores.stream().map(LabelledBore::label).toList();
        boolean served = shortage.side() == Shortage.Side.ROWS;
        Finding finding = Finding.stop(
                SetCode.TOO_FEW,
                Term.of("who", "without a partner", named(served ? up : down, shortage.unserved())),
                Term.of("contenders", "who compete", named(served ? up : down, shortage.contenders())),
                Term.of("contested", "what they compete for", named(served ? down : up, shortage.contested())));
        return new SelectiveAssembly(aim, clearance, List.of(), up, down, List.of(finding));
    }

    /** By name where the names are short enough to read, else by number. */
    private static String named(List<String> labels, List<Integer> which) {
        String names = which.stream().map(labels::get).collect(Collectors.joining(", "));
        if (names.length() > READABLE) {
            return which.size() + " of them";
        }
        return which.isEmpty() ? "nothing" : names;
    }

    private static String named(FittedPair pair, int number) {
        String names = "structure off tip " + pair.tip() + " for bore " + pair.bore();
        return names.length() > READABLE ? "structure off the tip of pair " + number : names;
    }

    /**
     * The structure that comes off in total.
     *
     * @return the sum over the pairs; zero without any
     */
    public Volume structure() {
        Volume sum = Volume.ZERO;
        for (FittedPair pair : pairs) {
            sum = sum.plus(pair.structure());
        }
        return sum;
    }

    /**
     * How far the mean clearance of a pair is from the wanted one at worst.
     *
     * @return the greatest difference, on the diameter; zero without pairs
     */
    public Length worst() {
        Length worst = Length.ZERO;
        for (FittedPair pair : pairs) {
            worst = worst.max(pair.clearance().minus(clearance).abs());
        }
        return worst;
    }

    /**
     * How the total comes about. That no other pairing is better is by search and not shown.
     *
     * @return the structure of each pair and their sum; without pairs no line
     */
    public Working working() {
        List<Term> terms = new ArrayList<>();
        StringBuilder sum = new StringBuilder();
        for (FittedPair pair : pairs) {
            String symbol = "V" + (terms.size() + 1);
            sum.append(sum.length() == 0 ? "" : " + ").append(symbol);
            terms.add(Term.of(symbol, named(pair, terms.size() + 1), pair.structure()));
        }
        return new Working(
                "Selective assembly",
                terms.isEmpty()
                        ? List.of()
                        : List.of(new Working.Line(
                                Term.of("V", "structure in total", structure()),
                                sum.toString(),
                                terms,
                                Source.assumption("the best of all pairings, by exact search"))));
    }
}

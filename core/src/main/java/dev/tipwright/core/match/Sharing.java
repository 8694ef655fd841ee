package dev.tipwright.core.match;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.ClubSet;
import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.evidence.FindingCode;
import dev.tipwright.core.evidence.Severity;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.internal.assign.Aim;
import dev.tipwright.core.internal.assign.Assignment;
import dev.tipwright.core.internal.assign.CostTable;
import dev.tipwright.core.internal.assign.Pairing;
import dev.tipwright.core.internal.assign.Shortage;
import dev.tipwright.core.part.Shaft;
import dev.tipwright.core.plan.ClubPlan;
import dev.tipwright.core.plan.Progress;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

/** One sharing out. Heads and shafts are taken by label, so that the order they came in makes no difference. */
final class Sharing {

    /** Costs keep 47 of their 53 bits: differences below that are rounding, and are ties. */
    private static final double FINENESS = 0x1p-47;

    /** A sentence names as many as fit in so many letters; more are counted. */
    private static final int NAMED = 60;

    private final ShaftMatcher matcher;
    private final ClubSet set;
    private final List<Build> heads;
    private final List<Shaft> shafts;
    private final List<String> labels;
    private final Set<ForbiddenPair> forbidden;
    private final double[][] costs;

    Sharing(ShaftMatcher matcher, ClubSet set, List<Shaft> stock) {
        this.matcher = matcher;
        this.set = set;
        this.heads =
                set.builds().stream().sorted(Comparator.comparing(Build::label)).toList();
        this.shafts = stock.stream().sorted(Comparator.comparing(Shaft::label)).toList();
        this.labels = shafts.stream().map(Shaft::label).toList();
        this.forbidden = new HashSet<>(matcher.forbidden());
        this.costs = new double[heads.size()][];
    }

    ShaftMatch match(Progress progress) {
        for (int row = 0; row < costs.length; row++) {
            costs[row] = row(heads.get(row));
            progress.at(row + 1, costs.length);
        }
        Aim aim = matcher.aim() == MatchAim.LEAST_TOTAL ? Aim.LEAST_TOTAL : Aim.LEAST_WORST;
        Assignment best = Assignment.best(CostTable.of(costs, grid()), aim);
        return best instanceof Pairing pairing ? shared(pairing) : impossible((Shortage) best);
    }

    /** A stop that every shaft brings is the head's own. */
    private double[] row(Build head) {
        double[] row = new double[shafts.size()];
        List<List<FindingCode>> stops = new ArrayList<>();
        List<FindingCode> always = null;
        for (int column = 0; column < row.length; column++) {
            row[column] = CostTable.FORBIDDEN;
            stops.add(new ArrayList<>());
            Shaft shaft = shafts.get(column);
            if (!forbidden.contains(new ForbiddenPair(head.label(), shaft.label()))) {
                ClubPlan plan =
                        matcher.planner().plan(head.withParts(head.parts().withShaft(shaft)));
                row[column] = cost(plan);
                stops.get(column).addAll(stops(plan));
                if (always == null) {
                    always = new ArrayList<>(stops.get(column));
                } else {
                    always.retainAll(stops.get(column));
                }
            }
        }
        for (int column = 0; column < row.length; column++) {
            if (always != null && !always.containsAll(stops.get(column))) {
                row[column] = CostTable.FORBIDDEN;
            }
        }
        return row;
    }

    private double cost(ClubPlan plan) {
        OptionalDouble cost = matcher.cost().of(plan);
        if (cost.isEmpty()) {
            return CostTable.FORBIDDEN;
        }
        if (!Double.isFinite(cost.getAsDouble())) {
            throw new IllegalArgumentException(
                    "cost must be finite, was " + cost.getAsDouble() + " for club " + plan.label() + " with shaft "
                            + plan.after().parts().shaft().label());
        }
        return cost.getAsDouble();
    }

    private static List<FindingCode> stops(ClubPlan plan) {
        return plan.findings().stream()
                .filter(finding -> finding.severity() == Severity.STOP)
                .map(Finding::code)
                .toList();
    }

    private double grid() {
        double greatest = 0;
        for (double[] row : costs) {
            for (double cost : row) {
                if (cost != CostTable.FORBIDDEN) {
                    greatest = Math.max(greatest, Math.abs(cost));
                }
            }
        }
        return Math.max(greatest * FINENESS, Double.MIN_NORMAL);
    }

    private ShaftMatch shared(Pairing pairing) {
        int[] columns = pairing.columns();
        List<Shaft> left = new ArrayList<>(shafts);
        for (int column : columns) {
            left.remove(shafts.get(column));
        }
        List<String> rows = heads.stream().map(Build::label).toList();
        List<Build> builds = set.builds().stream()
                .map(build ->
                        build.withParts(build.parts().withShaft(shafts.get(columns[rows.indexOf(build.label())]))))
                .toList();
        List<MatchedPair> pairs = pairs(columns);
        ShaftMatch match = new ShaftMatch(new ClubSet(builds), pairs, left, List.of());
        return new ShaftMatch(match.set(), pairs, left, List.of(finding(match)));
    }

    private List<MatchedPair> pairs(int[] columns) {
        List<MatchedPair> pairs = new ArrayList<>();
        for (int row = 0; row < columns.length; row++) {
            int own = own(row);
            pairs.add(new MatchedPair(
                    heads.get(row).label(),
                    shafts.get(own).label(),
                    optional(costs[row][own]),
                    shafts.get(columns[row]).label(),
                    optional(costs[row][columns[row]])));
        }
        return pairs;
    }

    private int own(int row) {
        return labels.indexOf(heads.get(row).parts().shaft().label());
    }

    private static OptionalDouble optional(double cost) {
        return cost == CostTable.FORBIDDEN ? OptionalDouble.empty() : OptionalDouble.of(cost);
    }

    private static Finding finding(ShaftMatch match) {
        int changed = (int) match.pairs().stream().filter(MatchedPair::changed).count();
        if (changed == 0) {
            return Finding.note(MatchCode.AS_IT_WAS);
        }
        Term count = Term.count("n", "heads that change their shaft", changed);
        Term after = number("after", "cost of the set", match.totalAfter());
        Term worstAfter = number("worstAfter", "cost of the worst club", match.worstAfter());
        return match.totalBefore().isEmpty()
                ? Finding.note(MatchCode.MENDED, count, after, worstAfter)
                : Finding.note(
                        MatchCode.BETTER,
                        count,
                        number("before", "cost of the set as it came", match.totalBefore()),
                        after,
                        number("worstBefore", "cost of the worst club as it came", match.worstBefore()),
                        worstAfter);
    }

    private static Term number(String symbol, String meaning, OptionalDouble value) {
        return Term.number(symbol, meaning, value.getAsDouble());
    }

    private ShaftMatch impossible(Shortage shortage) {
        int[] own = new int[heads.size()];
        for (int row = 0; row < own.length; row++) {
            own[row] = own(row);
        }
        List<Shaft> left = new ArrayList<>(shafts);
        heads.forEach(head -> left.remove(head.parts().shaft()));
        Finding finding = Finding.stop(
                MatchCode.TOO_FEW_SHAFTS,
                Term.of("head", "heads without a shaft", heads(shortage.unserved())),
                Term.of("heads", "heads that compete", heads(shortage.contenders())),
                Term.of("shafts", "shafts they compete for", shafts(shortage.contested())));
        return new ShaftMatch(set, pairs(own), left, List.of(finding));
    }

    private String heads(List<Integer> rows) {
        return named("head", rows.stream().map(row -> heads.get(row).label()).toList());
    }

    private String shafts(List<Integer> columns) {
        return named(
                "shaft",
                columns.stream().map(column -> shafts.get(column).label()).toList());
    }

    private static String named(String kind, List<String> labels) {
        String names = String.join(", ", labels);
        if (labels.isEmpty()) {
            return "no " + kind;
        }
        return names.length() > NAMED ? labels.size() + " of the " + kind + "s" : kind + " " + names;
    }
}

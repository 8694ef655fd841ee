package dev.tipwright.evidence;

import dev.tipwright.core.club.ClubSet;
import dev.tipwright.core.club.Work;
import dev.tipwright.core.length.CutToLengthStep;
import dev.tipwright.core.length.LengthMeasure;
import dev.tipwright.core.length.LengthPlan;
import dev.tipwright.core.length.LengthTarget;
import dev.tipwright.core.match.ClubCost;
import dev.tipwright.core.match.MatchAim;
import dev.tipwright.core.match.ShaftMatch;
import dev.tipwright.core.match.ShaftMatcher;
import dev.tipwright.core.part.Head;
import dev.tipwright.core.part.Shaft;
import dev.tipwright.core.plan.JobPlanner;
import dev.tipwright.core.plan.StepOutcome;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.core.trim.TipTrimStep;
import dev.tipwright.core.trim.TrimChart;
import dev.tipwright.fitcheck.set.Rescue;
import dev.tipwright.fitcheck.set.RescueChoice;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Shafts and heads of a set. */
final class SetChecks {

    private SetChecks() {}

    static void shaftMatching(Tally tally) {
        tally.cases("shaft-matching").forEach(row -> {
            Map<String, Double> wanted = new TreeMap<>();
            row.words("heads_g").stream()
                    .map(word -> word.split(":", -1))
                    .forEach(head -> wanted.put(head[0], Double.parseDouble(head[1])));
            ClubCost cost = plan -> OptionalDouble.of(
                    Math.abs(plan.after().parts().shaft().mass().mass().grams() - wanted.get(plan.label())));
            JobPlanner nothing = JobPlanner.of(build -> new StepOutcome(build, List.of(), List.of()));
            boolean total = row.text("aim").equals("total");
            ShaftMatch match = ShaftMatcher.by(nothing, cost)
                    .withAim(total ? MatchAim.LEAST_TOTAL : MatchAim.LEAST_WORST)
                    .match(heads(wanted, shafts(row)), shafts(row));
            row.says("pairs", pairs(match));
            row.check("total_g", match.totalAfter().orElseThrow(), Bound.of(1e-12, "the arithmetic of doubles"));
            row.check("worst_g", match.worstAfter().orElseThrow(), Bound.of(1e-12, "the arithmetic of doubles"));
        });
    }

    private static String pairs(ShaftMatch match) {
        return match.pairs().stream()
                .map(pair -> pair.head() + "-" + pair.after())
                .sorted()
                .collect(Collectors.joining(" "));
    }

    /** The heads with the first of the shafts, as they came. */
    private static ClubSet heads(Map<String, Double> wanted, List<Shaft> shafts) {
        Iterator<Shaft> next = shafts.iterator();
        return new ClubSet(wanted.keySet().stream()
                .map(label -> Club.of(Club.head().withLabel(label), next.next(), Club.grip()))
                .toList());
    }

    private static List<Shaft> shafts(Case row) {
        return row.words("shafts_g").stream()
                .map(word -> word.split(":", -1))
                .map(shaft -> Club.shaft(Club.mm(1000), Mass.ofGrams(Double.parseDouble(shaft[1])))
                        .withLabel(shaft[0]))
                .toList();
    }

    static void rescue(Tally tally) {
        tally.cases("rescue").forEach(row -> {
            Shaft shaft = Club.shaft(row.length("raw_in"), Mass.ofGrams(85));
            Work done = Work.NONE.withTipTrim(row.length("off_tip_in")).withButtTrim(row.length("off_butt_in"));
            RescueChoice choice = new Rescue(shaft, done)
                    .over(ClubSet.of(Club.of(Club.head(), shaft, Club.grip())), planner(row))
                    .get(0);
            Work work = choice.plan().after().work();
            row.same("tip_trim_in", work.tipTrim());
            row.says("serves", choice.possible() ? "yes" : "no");
            if (choice.possible()) {
                row.same("butt_trim_in", work.buttTrim());
            }
        });
    }

    /** A chart for bores as high as this one, and the length at which the cut length is that of the row. */
    private static JobPlanner planner(Case row) {
        Head head = Club.head();
        TrimChart chart = new TrimChart(
                List.of(new TrimChart.Row(head.label(), "mid", row.length("chart_in"))), head.bottomToGround());
        Length length = Club.grip().cap().plus(row.length("cut_length_in")).plus(head.bottomToGround());
        LengthTarget target = new LengthTarget(head.label(), length, LengthMeasure.ALONG_AXIS);
        return JobPlanner.of(
                TipTrimStep.by(chart, Length.ZERO), CutToLengthStep.to(new LengthPlan(List.of(target)), Length.ZERO));
    }
}

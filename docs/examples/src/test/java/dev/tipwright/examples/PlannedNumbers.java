package dev.tipwright.examples;

import static java.util.Map.entry;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.length.CutToLength;
import dev.tipwright.core.mass.ShaftCut;
import dev.tipwright.core.part.TipWeight;
import dev.tipwright.core.plan.ClubPlan;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.trim.TipTrim;
import dev.tipwright.fitcheck.TipFit;
import dev.tipwright.fitcheck.insert.Chamfer;
import dev.tipwright.fitcheck.insert.Clearance;
import dev.tipwright.swingweight.ClubBalance;
import dev.tipwright.swingweight.balance.Balance;
import dev.tipwright.swingweight.scale.SwingWeight;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The numbers of a planned club, by the names and in the units of the tables of expected values. */
final class PlannedNumbers {
    private static final String READS = "reads";
    private static final Pattern WITH_WEIGHT = Pattern.compile("(.*) with a tip weight of ([0-9]+) g");
    private static final String LONGEST = " at the longest playing length";

    private static final Map<String, ToDoubleFunction<PlannedNumbers>> NUMBERS = Map.ofEntries(
            entry("bore bottom to ground", n -> n.trim().bottomToGround().inches()),
            entry("tip trim", n -> n.trim().trim().inches()),
            entry("tip offcut", n -> n.trim().offcut().inches()),
            entry("cut length", n -> n.cut().cutLength().inches()),
            entry("butt trim", n -> n.cut().buttTrim().inches()),
            entry("too short by", n -> -n.cut().buttTrim().inches()),
            entry("longest playing length", n -> n.cut().longest().inches()),
            entry(
                    "first contact untouched",
                    n -> n.fit().untouched().insertion().inches()),
            entry(
                    "first contact with the finish off",
                    n -> n.fit().bare().insertion().inches()),
            entry("stock at the tip end", n -> n.fit().removal().stockAtEnd().thousandths()),
            entry("of it structure", n -> n.fit().removal().structureAtEnd().thousandths()),
            entry("volume removed", n -> n.fit().removal().volume().cubicMillimetres()),
            entry("of it finish", n -> n.fit().removal().finishVolume().cubicMillimetres()),
            entry("mass removed", n -> n.fit().removal().mass().orElseThrow().grams()),
            entry(
                    "structural wall left at the tip end",
                    n -> n.fit().removal().leastWall().orElseThrow().inches()),
            entry(
                    "second moment left at the tip end",
                    n -> n.fit().removal().leastStiffness().orElseThrow()),
            entry(
                    "second moment left at the mouth",
                    n -> n.fit().removal().stiffnessAtMouth().orElseThrow()),
            entry("clearance at the mouth", n -> n.clearanceAtMouth().inches()),
            entry("clearance at the tip end", n -> n.clearanceAtTip().inches()),
            entry("least clearance", n -> n.clearance().least().inches()),
            entry("shim wall at the mouth", n -> n.shimWall(n.clearanceAtMouth())),
            entry("shim wall at the tip end", n -> n.shimWall(n.clearanceAtTip())),
            entry(
                    "exact tip weight to the target",
                    n -> n.report().exactWeight().orElseThrow().grams()),
            // The cut shaft and the balance are those of the club as it is planned, and so at the longest length where
            // it is too short.
            entry(
                    "cut length at the longest playing length",
                    n -> n.withoutWeight.cutLength().inches()),
            entry(
                    "butt trim at the longest playing length",
                    n -> n.withoutWeight.work().buttTrim().inches()),
            entry(
                    "cut shaft before tip preparation",
                    n -> ShaftCut.of(n.withoutWeight).mass().grams()),
            entry("total mass", n -> n.balance().total().grams()),
            entry("balance from the top", n -> n.balance().balancePoint().inches()),
            entry("points from D0", n -> n.reading().over(n.report().scale().parse("D0"))));

    private final ClubPlan plan;
    private final Build withoutWeight;
    private final List<TipWeight> stock;
    private final Optional<TipWeight> weight;

    private PlannedNumbers(ClubPlan plan, List<TipWeight> stock, Optional<TipWeight> weight) {
        this.plan = plan;
        this.withoutWeight = plan.after()
                .withWork(plan.after().work().withAttached(plan.before().work().attached()));
        this.stock = stock;
        this.weight = weight;
    }

    /** The numbers of a club, with the tip weights that could be put in it. */
    static PlannedNumbers of(ClubPlan plan, List<TipWeight> stock) {
        return new PlannedNumbers(plan, stock, Optional.empty());
    }

    /** Whether the library works out such a number today. */
    static boolean known(String quantity) {
        return NUMBERS.containsKey(quantity) || quantity.equals(READS);
    }

    /** Holds what was planned against what is expected; a quantity that is not known here is an error. */
    void check(Expected expected) {
        Matcher weighted = WITH_WEIGHT.matcher(expected.quantity());
        if (weighted.matches()) {
            with(weighted.group(2)).check(expected, weighted.group(1));
        } else {
            check(expected, expected.quantity());
        }
    }

    private void check(Expected expected, String quantity) {
        boolean shortened = quantity.endsWith(LONGEST) && !known(quantity);
        String name = shortened ? quantity.substring(0, quantity.length() - LONGEST.length()) : quantity;
        if (!known(name)) {
            throw new AssertionError(expected.where() + ": no such number in a plan: " + expected.quantity());
        }
        if (name.equals(READS)) {
            expected.matches(report().scale().designation(reading()));
        } else {
            expected.matches(NUMBERS.get(name).applyAsDouble(this));
        }
    }

    private PlannedNumbers with(String label) {
        TipWeight one = stock.stream()
                .filter(candidate -> candidate.label().equals(label))
                .findFirst()
                .orElseThrow();
        return new PlannedNumbers(plan, stock, Optional.of(one));
    }

    private TipTrim trim() {
        return plan.report(TipTrim.class);
    }

    private CutToLength cut() {
        return plan.report(CutToLength.class);
    }

    private TipFit fit() {
        return plan.report(TipFit.class);
    }

    private ClubBalance report() {
        return plan.report(ClubBalance.class);
    }

    private Balance balance() {
        return weight.map(one ->
                        Balance.of(withoutWeight.withWork(withoutWeight.work().plus(one))))
                .orElse(report().before());
    }

    private SwingWeight reading() {
        return report().scale().read(balance().momentAbout(report().scale().fulcrum()));
    }

    private Clearance clearance() {
        return Clearance.of(fit().tip().stripped(), fit().bore(), fit().insertion());
    }

    private Length clearanceAtTip() {
        return clearanceAt(fit().insertion());
    }

    /** At the foot of the chamfer, because the chamfer itself holds nothing. */
    private Length clearanceAtMouth() {
        return clearanceAt(Chamfer.depth(fit().bore()));
    }

    /** What fills a clearance but for what is wanted, on one side. */
    private double shimWall(Length clearance) {
        return clearance.minus(fit().clearance()).inches() / 2;
    }

    private Length clearanceAt(Length depth) {
        Bore bore = fit().bore();
        Length fromTip = fit().insertion().minus(depth);
        return bore.profile().diameterAt(depth).minus(fit().tip().stripped().diameterAt(fromTip));
    }
}

package dev.tipwright.swingweight.aim;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.evidence.Source;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.evidence.Working;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.internal.root.GridSearch;
import dev.tipwright.core.plan.StepReport;
import dev.tipwright.core.quantity.Inertia;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.swingweight.balance.Balance;
import dev.tipwright.swingweight.balance.BalancePart;
import java.util.List;

/**
 * Brings the inertia of a club about its butt to a wanted one, by its length, by the mass of its head, or by both. Length takes its share
 * first, looked for by halving on the grid of nanometres; the head makes up what is left, {@code m = m0 + (J_wanted - J) / r^2}, with
 * {@code r} the distance of its centre of mass from the top of the grip. The head's own inertia stays as it is.
 *
 * <pre>{@code
 * Build build = Samples.build();
 * Inertia wanted = Balance.of(build).inertiaAboutButt().scaledBy(1.01);
 * InertiaSolve solve = new InertiaSolve(build, wanted, 0);
 * Math.round(1e6 * solve.inertia().ratioTo(wanted));   // = 1000000
 * solve.longer();                                      // = 0 mm
 * }</pre>
 *
 * @param build the club, seated
 * @param wanted inertia about the top of the grip; 1 g mm2 to 1e12 g mm2
 * @param byLength share of what is missing that the length takes: 0 by head mass alone, 1 by length alone
 */
public record InertiaSolve(Build build, Inertia wanted, double byLength) implements StepReport {

    /** Nearer than this part of it an inertia is the wanted one: a nanometre of length is 1e-9 of a metre's. */
    private static final double HIT = 1e-8;

    /**
     * Checks the values.
     *
     * @param build the club, seated
     * @param wanted inertia about the top of the grip; 1 g mm2 to 1e12 g mm2
     * @param byLength share of what is missing that the length takes: 0 by head mass alone, 1 by length alone
     */
    public InertiaSolve {
        Require.given("build", build);
        Require.that(
                build.work().seat().insertion().moreThan(Length.ZERO),
                "build",
                "must be seated",
                build.work().seat());
        Require.given("wanted", wanted);
        Require.between("wanted", wanted, Inertia.ofGramSquareMillimetres(1), Inertia.ofGramSquareMillimetres(1e12));
        Require.that(byLength >= 0 && byLength <= 1, "byLength", "must be from 0 to 1", byLength);
    }

    /**
     * The club as it should be built.
     *
     * @return another butt trim, another head mass; as near as shaft and head allow
     */
    public Build after() {
        Build cut = cut();
        Mass mass = headMass(cut);
        return cut.withParts(cut.parts()
                .withHead(cut.parts().head().withMass(cut.parts().head().mass().withMass(mass))));
    }

    private Build cut() {
        if (byLength == 0) {
            return build;
        }
        double now = Balance.of(build).inertiaAboutButt().gramSquareMillimetres();
        double aim = now + byLength * (wanted.gramSquareMillimetres() - now);
        Length whole = build.parts().shaft().length().minus(build.work().tipTrim());
        long shortest = build.work().seat().insertion().nanometres();
        long cut = GridSearch.least(
                        shortest,
                        whole.nanometres(),
                        length -> Balance.of(cutTo(whole, length))
                                        .inertiaAboutButt()
                                        .gramSquareMillimetres()
                                >= aim)
                .orElse(whole.nanometres());
        return cutTo(whole, cut);
    }

    private Build cutTo(Length whole, long nanometres) {
        return build.withWork(build.work().withButtTrim(whole.minus(Length.ofNanometres(nanometres))));
    }

    /** All that is still missing goes to the head, unless length alone was asked for; a head keeps some mass. */
    private Mass headMass(Build cut) {
        Mass present = cut.parts().head().mass().mass();
        if (byLength == 1) {
            return present;
        }
        Balance balance = Balance.of(cut);
        double missing =
                wanted.gramSquareMillimetres() - balance.inertiaAboutButt().gramSquareMillimetres();
        return present.plus(Mass.ofGrams(missing / radiusSquared(cut, balance))).max(Mass.ofPicograms(1));
    }

    private static double radiusSquared(Build cut, Balance balance) {
        BalancePart head = balance.part("head");
        Inertia own = cut.parts().head().mass().inertia().orElse(Inertia.ZERO);
        return head.inertia().minus(own).gramSquareMillimetres() / head.mass().grams();
    }

    /**
     * The inertia it comes to.
     *
     * @return about the top of the grip
     */
    public Inertia inertia() {
        return Balance.of(after()).inertiaAboutButt();
    }

    /**
     * Whether what is wanted can be had.
     *
     * @return true if the inertia comes within a hundred-millionth of it
     */
    public boolean reached() {
        return Math.abs(inertia().ratioTo(wanted) - 1) <= HIT;
    }

    /**
     * How much longer the shaft is cut.
     *
     * @return below zero if shorter
     */
    public Length longer() {
        return after().cutLength().minus(build.cutLength());
    }

    /**
     * How much heavier the head is to be.
     *
     * @return below zero if lighter
     */
    public Mass heavier() {
        return after().parts()
                .head()
                .mass()
                .mass()
                .minus(build.parts().head().mass().mass());
    }

    @Override
    public List<Term> headline() {
        return List.of(
                Term.of("J", "inertia about the butt", inertia()),
                Term.of("S", "cut length", after().cutLength()),
                Term.of("m", "head mass", after().parts().head().mass().mass()));
    }

    /** What length and head leave over. */
    @Override
    public Working working() {
        return new Working(
                "Inertia for a target",
                List.of(new Working.Line(
                        Term.of("rest", "inertia over what is wanted", inertia().minus(wanted)),
                        "J - Jw",
                        List.of(
                                Term.of("J", "inertia about the butt with what was found", inertia()),
                                Term.of("Jw", "inertia wanted", wanted)),
                        Source.published("any text on mechanics", "a club is the sum of its parts"))));
    }
}

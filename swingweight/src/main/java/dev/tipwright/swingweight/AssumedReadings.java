package dev.tipwright.swingweight;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.TipWork;
import dev.tipwright.core.evidence.Assumption;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.part.Head;
import dev.tipwright.core.part.HeadCentre;
import dev.tipwright.core.part.HeadCentreRule;
import dev.tipwright.core.part.HeadMass;
import dev.tipwright.core.part.Shaft;
import dev.tipwright.core.part.ShaftSection;
import dev.tipwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** The assumed readings that the balance of a build touches, and what stands in for those of the head that are unknown. */
final class AssumedReadings {

    private AssumedReadings() {}

    static List<Assumption> of(Build build) {
        Shaft shaft = build.parts().shaft();
        List<Assumption> assumed = new ArrayList<>(1);
        head(build.parts().head(), assumed);
        add(
                assumed,
                shaft.mass().along(),
                along -> Term.of(
                        "mu",
                        "mass for length at the raw tip",
                        along.knots().get(0).density()));
        if (!build.work().tip().equals(TipWork.NONE)) {
            tip(shaft.section(), build.work().tipTrim(), assumed);
        }
        return assumed;
    }

    private static void head(Head head, List<Assumption> assumed) {
        HeadMass mass = head.mass();
        Reading<HeadCentre> centre = mass.centre() instanceof Reading.Unknown<HeadCentre>
                ? Reading.assumed(HeadCentreRule.of(head), HeadCentreRule.SOURCE)
                : mass.centre();
        add(assumed, centre, at -> Term.of("c", "centre of mass of the head below the hosel mouth", at.along()));
        add(assumed, mass.inertiaOrNone(), own -> Term.of("J_head", "inertia of the head about its own centre", own));
    }

    /** What comes off the tip depends on finish, wall and their densities. */
    private static void tip(ShaftSection section, Length at, List<Assumption> assumed) {
        add(
                assumed,
                section.finish(),
                finish -> Term.fine("p", "finish thickness", finish.thickness().at(at)));
        add(
                assumed,
                section.wall(),
                wall -> Term.fine("wall", "wall", wall.thickness().at(at)));
        section.finish()
                .known()
                .ifPresent(finish ->
                        add(assumed, finish.density(), density -> Term.of("rho_f", "density of the finish", density)));
        section.wall()
                .known()
                .ifPresent(wall ->
                        add(assumed, wall.density(), density -> Term.of("rho_w", "density of the wall", density)));
    }

    private static <Q> void add(List<Assumption> assumed, Reading<Q> reading, Function<? super Q, Term> term) {
        if (reading instanceof Reading.Assumed<Q> taken) {
            assumed.add(new Assumption(term.apply(taken.value()), taken.source()));
        }
    }
}

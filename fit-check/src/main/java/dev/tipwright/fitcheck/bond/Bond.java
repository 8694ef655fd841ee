package dev.tipwright.fitcheck.bond;

import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.evidence.Source;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.evidence.Working;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.internal.shape.Polyline;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.quantity.Area;
import dev.tipwright.core.quantity.Force;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.core.quantity.Speed;
import dev.tipwright.core.quantity.Stress;
import dev.tipwright.core.quantity.Torque;
import dev.tipwright.core.quantity.Volume;
import dev.tipwright.fitcheck.insert.Clearance;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The bond of a tip in its bore. The area is that of the tip, {@code integral of pi d(z) dz}; its slant adds less than a thousandth part and is
 * left out. The bond line is half the clearance with the tip centred. The gap alone is only a fraction of the adhesive that is used.
 *
 * <pre>{@code
 * Bore bore = Bore.ofTwoDiameters(
 *         Length.parse("9.4 mm"), Length.parse("9.4 mm"), Length.parse("30 mm"), BoreEnd.FLAT);
 * DiameterProfile tip = DiameterProfile.cylinder(Length.parse("9.2 mm"), Length.parse("200 mm"));
 * Bond bond = Bond.of(tip, bore, bore.depth());
 * bond.meanLine();                                                              // = 0.1 mm
 * Math.round(bond.area().squareMillimetres());                                  // = 867
 * Math.round(bond.shear(Torque.ofNewtonMetres(12)).megapascals() * 1000);       // = 3009
 * Math.round(bond.shear(Force.ofNewtons(2000)).megapascals() * 1000);           // = 2307
 * }</pre>
 *
 * @param length bonded length
 * @param area bonded area of the tip
 * @param leastLine least bond line of a centred tip, radial; negative where it binds
 * @param meanLine mean bond line of a centred tip, radial
 * @param gap volume of the gap around the tip
 * @param torsion integral of {@code pi d^2 / 2}: torque over it is the mean shear
 */
public record Bond(Length length, Area area, Length leastLine, Length meanLine, Volume gap, Volume torsion) {

    private static final double STANDARD_GRAVITY = 9.80665;

    /**
     * Checks the values.
     *
     * @param length bonded length; above zero
     * @param area bonded area of the tip; above zero
     * @param leastLine least bond line of a centred tip
     * @param meanLine mean bond line of a centred tip
     * @param gap volume of the gap around the tip
     * @param torsion integral of {@code pi d^2 / 2}; above zero
     */
    public Bond {
        Require.positive("length", length);
        Require.given("area", area);
        Require.that(area.squareMillimetres() > 1e-9, "area", "must be above 1e-9 mm2", area);
        Require.given("leastLine", leastLine);
        Require.given("meanLine", meanLine);
        Require.given("gap", gap);
        Require.given("torsion", torsion);
        Require.that(torsion.cubicMillimetres() > 1e-9, "torsion", "must be above 1e-9 mm3", torsion);
    }

    /**
     * The bond of a tip at an insertion.
     *
     * @param tip finished diameter up from the end of the tip
     * @param bore the bore
     * @param insertion how far it is in; 1 mm or more, at most the depth of the bore and what was read of the tip
     * @return area, bond line and gap
     */
    public static Bond of(DiameterProfile tip, Bore bore, Length insertion) {
        Require.given("tip", tip);
        Require.given("bore", bore);
        Require.between(
                "insertion", insertion, Length.ofMillimetres(1), bore.depth().min(tip.length()));
        Clearance clearance = Clearance.of(tip, bore, insertion);
        double depth = insertion.millimetres();
        Polyline inside = Polyline.of(tip, Polyline.Diameter.MEAN).between(0, depth);
        Polyline around = Polyline.of(bore.profile(), Polyline.Diameter.MEAN).between(0, depth);
        return new Bond(
                insertion,
                Area.ofSquareMillimetres(Math.PI * inside.integral()),
                clearance.least().half(),
                clearance.mean().half(),
                Volume.ofCubicMillimetres(
                        around.solid().volume() - inside.solid().volume()),
                Volume.ofCubicMillimetres(2 * inside.solid().volume()));
    }

    /**
     * The adhesive used: what fills the gap and what the caller adds for squeeze-out, the bottom of the bore and the ferrule.
     *
     * @param added what is added; zero or more
     * @return the volume
     */
    public Volume adhesive(Volume added) {
        Require.given("added", added);
        Require.that(added.cubicMillimetres() >= 0, "added", "must not be negative", added);
        return gap.plus(added);
    }

    /**
     * Mean shear under a torque about the shaft.
     *
     * @param torque the torque
     * @return {@code T / integral of pi d^2 / 2}
     */
    public Stress shear(Torque torque) {
        Require.given("torque", torque);
        return within("torque", torque.newtonMetres() * 1000 / torsion.cubicMillimetres());
    }

    /**
     * Mean shear under a pull along the shaft.
     *
     * @param pull the pull
     * @return {@code F / integral of pi d}
     */
    public Stress shear(Force pull) {
        Require.given("pull", pull);
        return within("pull", pull.newtons() / area.squareMillimetres());
    }

    private static Stress within(String name, double megapascals) {
        if (!Double.isFinite(megapascals)) {
            throw new ArithmeticException(name + " must give a finite shear, was " + megapascals);
        }
        return Stress.ofMegapascals(megapascals);
    }

    /**
     * The pull of a head on its shaft in a swing: {@code m (v^2 / radius + g)}.
     *
     * @param head mass of the head
     * @param speed its speed; up to 1000 m/s
     * @param radius radius of its path; 0.1 to 10 m
     * @return the pull
     */
    public static Force pull(Mass head, Speed speed, Length radius) {
        Require.notNegative("head", head);
        Require.between("speed", speed, Speed.ZERO, Speed.ofMetresPerSecond(1000));
        Require.within("radius", radius, 100, 10_000);
        double v = speed.metresPerSecond();
        return Force.ofNewtons(head.grams() / 1000 * (v * v / radius.metres() + STANDARD_GRAVITY));
    }

    /**
     * What a builder must know of the bond.
     *
     * @param beads diameter of the filler beads; empty for none
     * @param limits the caller's limits
     * @param torque the torque it is to carry
     * @param pull the pull it is to carry
     * @return findings
     */
    public List<Finding> review(Optional<Length> beads, BondLimits limits, Torque torque, Force pull) {
        Require.given("beads", beads);
        Require.given("limits", limits);
        List<Finding> findings = new ArrayList<>();
        if (leastLine.lessThan(Length.ZERO)) {
            findings.add(
                    Finding.stop(BondCode.TIP_TOO_WIDE, Term.fine("b", "wider on the diameter", leastLine.times(-2))));
        }
        Term least = Term.fine("ta", "least bond line", leastLine);
        beads.filter(bead -> bead.moreThan(leastLine))
                .ifPresent(bead -> findings.add(
                        Finding.stop(BondCode.BEADS_TOO_THICK, Term.fine("b", "bead diameter", bead), least)));
        limits.leastLength()
                .known()
                .filter(length::lessThan)
                .ifPresent(limit -> findings.add(Finding.stop(
                        BondCode.TOO_SHORT,
                        Term.of("l", "bonded length", length),
                        Term.of("lmin", "least length", limit))));
        limits.thickestLine()
                .known()
                .filter(meanLine::moreThan)
                .ifPresent(limit -> findings.add(Finding.stop(
                        BondCode.THICK_LINE,
                        Term.fine("ta", "mean bond line", meanLine),
                        Term.fine("tamax", "thickest bond line", limit))));
        strength(limits.shear(), shear(torque), shear(pull), findings);
        return findings;
    }

    private static void strength(Reading<Stress> allowed, Stress torque, Stress pull, List<Finding> findings) {
        if (allowed instanceof Reading.Unknown<Stress> unknown) {
            findings.add(Finding.caution(BondCode.NO_ALLOWABLE, Term.of("ask", "whom to ask", unknown.ask())));
            return;
        }
        Stress limit = allowed.orElse(Stress.ZERO);
        over("torque", torque, limit).ifPresent(findings::add);
        over("pull", pull, limit).ifPresent(findings::add);
        if (pull.megapascals() > 0 && pull.compareTo(limit) <= 0) {
            findings.add(Finding.note(
                    BondCode.PULL_NO_COMFORT,
                    Term.number("n", "allowable over shear under pull", limit.ratioTo(pull))));
        }
    }

    private static Optional<Finding> over(String load, Stress shear, Stress limit) {
        return shear.compareTo(limit) > 0
                ? Optional.of(Finding.stop(
                        BondCode.OVER_ALLOWABLE,
                        Term.of("load", "load", load),
                        Term.of("tau", "mean shear", shear),
                        Term.of("allowed", "allowable shear", limit)))
                : Optional.empty();
    }

    /**
     * How the mean shears come about.
     *
     * @param torque the torque it is to carry
     * @param pull the pull it is to carry
     * @return a line for each; area and torsion are integrals over the tip and stand as they are
     */
    public Working working(Torque torque, Force pull) {
        Source thin = Source.assumption("a bond line thin against the diameter, with shear the same all over it");
        return new Working(
                "Bond",
                List.of(
                        new Working.Line(
                                Term.of("tau", "mean shear under torque", shear(torque)),
                                "1000 * T / W",
                                List.of(
                                        Term.number("T", "torque, N m", torque.newtonMetres()),
                                        Term.of("W", "integral of pi d^2 / 2", torsion)),
                                thin),
                        new Working.Line(
                                Term.of("sigma", "mean shear under pull", shear(pull)),
                                "F / A",
                                List.of(
                                        Term.number("F", "pull, N", pull.newtons()),
                                        Term.of("A", "integral of pi d", area)),
                                thin)));
    }
}

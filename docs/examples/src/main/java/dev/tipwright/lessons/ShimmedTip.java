package dev.tipwright.lessons;

import static dev.tipwright.lessons.LessonParts.in;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.evidence.Caution;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.part.Finish;
import dev.tipwright.core.part.ShaftSection;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.quantity.Density;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.core.quantity.Speed;
import dev.tipwright.core.quantity.Stress;
import dev.tipwright.core.quantity.Torque;
import dev.tipwright.fitcheck.bond.Bond;
import dev.tipwright.fitcheck.bond.BondLimits;
import dev.tipwright.fitcheck.insert.Clearance;
import dev.tipwright.fitcheck.limits.Lean;
import dev.tipwright.fitcheck.other.ShimFit;
import dev.tipwright.fitcheck.other.WayToFit;
import dev.tipwright.fitcheck.taper.MaterialRemoval;
import dev.tipwright.fitcheck.taper.TipSection;
import dev.tipwright.swingweight.aim.Worth;
import dev.tipwright.swingweight.scale.SwingWeightScale;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A taper tip in a parallel bore. The customer's favourite head is bored .370 in all the way; the only shaft of the right length in the
 * rack has a taper tip, .355 in at its end. Can a shim from the drawer make up for it, and is that better than another blank?
 */
public final class ShimmedTip {

    static final Bore BORE = LessonParts.parallelBore();
    static final DiameterProfile TIP = DiameterProfile.of(
            Station.of(Length.ZERO, in(".355")), Station.of(in("1 1/4"), in(".358")), Station.of(in("8"), in(".374")));
    static final List<Length> DRAWER = List.of(in(".002"), in(".003"), in(".004"), in(".005"));

    /** What the builder wants at the tightest place, and allows at the loosest. */
    static final Length WANTED = in(".003");

    static final Length LOOSEST = in(".0075");
    static final Density BRASS = Density.ofGramsPerCubicCentimetre(8.5);
    static final Torque OFF_CENTRE_HIT = Torque.ofNewtonMetres(12);
    static final Stress ALLOWABLE = Stress.ofMegapascals(6);

    private ShimmedTip() {}

    static ShimFit shim() {
        return ShimFit.of(TIP, BORE, BORE.depth(), WANTED, LOOSEST, DRAWER);
    }

    /** Prints the page. */
    public static void main(String[] args) {
        Sheet.print(page());
    }

    static String page() {
        Sheet sheet = new Sheet().title("A taper tip in a parallel bore");
        sheet.say(
                "The head is bored .370 in all the way; the shaft's tip runs from .355 in at its end to .358 in, 1 1/4 in up."
                        + " It falls in. How loose is it, and what does a shim leave?"
                        + " Sizes below are thousandths of an inch, clearances on the diameter.");
        fit(sheet);
        club(sheet);
        joint(sheet);
        ways(sheet);
        sheet.say(
                "Limits: sizes as they were read; the brass is not counted on to carry any load, and both layers of adhesive, tip to"
                        + " shim and shim to hosel, must hold by themselves. Shear is a mean; the peak at the ends is higher. Loads and"
                        + " allowables are the builder's and the adhesive maker's.");
        return sheet.cautions(Caution.ADHESIVE, Caution.HEAD_CAN_COME_OFF, Caution.MAKERS_WORD)
                .toString();
    }

    private static void fit(Sheet sheet) {
        Clearance bare = Clearance.of(TIP, BORE, BORE.depth());
        ShimFit shim = shim();
        sheet.row(
                        "clearance without a shim",
                        "%s at the mouth to %s at its end",
                        mils(bare.least()),
                        mils(bare.greatest()))
                .row(
                        "lean without a shim",
                        "%.3f degrees",
                        Lean.of(TIP, BORE, BORE.depth()).angle().degrees())
                .row(
                        "shim taken",
                        "wall %s, of the %d in the drawer",
                        mils(shim.wall().orElseThrow()),
                        DRAWER.size())
                .row(
                        "clearance beside it",
                        "%s to %s, at most %s allowed",
                        mils(shim.least()),
                        mils(shim.greatest()),
                        mils(LOOSEST))
                .row("lean beside it", "%.3f degrees", shim.lean().angle().degrees())
                .row("verdict", "%s", shim.verdict())
                .gap();
        sheet.say(
                "A shim takes the same off everywhere; the taper of the tip stays open beside it, so the loosest place is at the"
                        + " bottom, where nobody looks. Centre the tip there while the adhesive cures.");
    }

    private static void club(Sheet sheet) {
        Build club = LessonParts.club(
                LessonParts.head("6", 262, 61.5, "2 1/4", "2.1", BORE),
                LessonParts.shaft("taper tip", LessonParts.blank("taper"), "39", 84, "20.2"),
                LessonParts.grip(50),
                Length.ZERO,
                in("36 3/8"));
        Mass brass = shim().mass(TIP, BRASS);
        Length middle = club.mouthFromTop().plus(shim().length().half());
        double points = brass.grams()
                * Worth.of(club, SwingWeightScale.LETTERS_AT_14_INCHES).gramAt(middle);
        sheet.row("the shim weighs, in brass", "%.2f g", brass.grams())
                .row("which is worth", "%.2f of a swing weight point", points)
                .gap();
    }

    private static void joint(Sheet sheet) {
        DiameterProfile shimmed = TIP.widenedBy(shim().wall().orElseThrow().times(2));
        Bond outer = Bond.of(shimmed, BORE, BORE.depth());
        Bond inner = Bond.of(TIP, BORE, BORE.depth());
        BondLimits limits = new BondLimits(
                Reading.measured(ALLOWABLE), Reading.measured(in("1")), BondLimits.UNKNOWN.thickestLine());
        sheet.row("bond line, shim to hosel", "least %s, mean %s", mils(outer.leastLine()), mils(outer.meanLine()))
                .row(
                        "shear at 12 N m, shim to hosel",
                        "%.2f MPa",
                        outer.shear(OFF_CENTRE_HIT).megapascals())
                .row(
                        "shear at 12 N m, tip to shim",
                        "%.2f MPa",
                        inner.shear(OFF_CENTRE_HIT).megapascals())
                .row("allowed by the adhesive's maker", "%.1f MPa", ALLOWABLE.megapascals())
                .gap();
        sheet.findings(outer.review(
                Optional.of(in(".003")),
                limits,
                OFF_CENTRE_HIT,
                Bond.pull(Mass.ofGrams(262), Speed.ofMetresPerSecond(40), Length.ofMillimetres(1400))));
    }

    private static void ways(Sheet sheet) {
        ShaftSection parallel = LessonParts.shaft("parallel", LessonParts.blank("parallel"), "39", 84, "20.2")
                .section();
        TipSection other = TipSection.of(parallel.outside(), parallel.finish().orElse(Finish.NONE))
                .withWall(parallel.wall());
        MaterialRemoval removal = MaterialRemoval.of(other, BORE, BORE.depth(), WANTED);
        List<WayToFit> ways = WayToFit.ranked(List.of(
                WayToFit.shim(shim(), Reading.measured(LOOSEST)),
                WayToFit.taper(WayToFit.Way.OTHER_BLANK, removal, Reading.measured(in(".075")))));
        sheet.line("ways to a fit, by the limits given and nothing else:");
        for (WayToFit way : ways) {
            sheet.row(
                    "  " + way.way(),
                    "%s, least margin %.2f of its limit, stiffness left %.2f",
                    way.standing(),
                    way.leastMargin().orElseThrow(),
                    way.stiffness().orElseThrow());
        }
        sheet.gap();
    }

    private static String mils(Length length) {
        return String.format(Locale.ROOT, "%.2f", length.thousandths());
    }
}

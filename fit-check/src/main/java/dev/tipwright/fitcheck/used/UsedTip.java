package dev.tipwright.fitcheck.used;

import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.internal.shape.Polyline;
import dev.tipwright.core.part.Finish;
import dev.tipwright.core.part.ShaftSection;
import dev.tipwright.core.part.Wall;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.ThicknessProfile;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.fitcheck.taper.TipSection;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The tip of a pulled shaft against what it was when raw: shortened at its end, worked down once already, and perhaps with old adhesive on
 * it. Less its crust it measures {@code d = found - 2 k}; what is off since it was raw, {@code (d0 - d) / 2} on the radius, came off the
 * finish first and off the wall with it, because the hole stays where it is.
 *
 * <pre>{@code
 * ShaftSection raw = Samples.shaft().section().withOutside(
 *         DiameterProfile.cylinder(Length.parse(".3735 in"), Length.parse("8 in")));
 * DiameterProfile found = DiameterProfile.of(
 *         Station.of(Length.ZERO, Length.parse(".355 in")), Station.of(Length.parse("1 1/4 in"), Length.parse(".363 in")));
 * UsedTip used = new UsedTip(
 *         raw, Length.parse("1/2 in"), found, ThicknessProfile.uniform(Length.parse(".002 in")));
 * used.cleaned().diameterAt(Length.ZERO).inches();              // = 0.351
 * used.mostOff().thousandths();                                 // = 22.5
 * used.findings(Length.parse(".001 in")).get(0).code();         // = TIP_SHORTENED
 * }</pre>
 *
 * @param raw outside, wall and finish as they were, from the raw tip
 * @param shortened how much of the raw tip is gone; zero or more
 * @param found diameter over all that is on it, up from its end as it is; no longer than what was read of the raw tip above that
 * @param crust thickness of what is to come off before it is measured for good, radial, up from its end as it is
 */
public record UsedTip(ShaftSection raw, Length shortened, DiameterProfile found, ThicknessProfile crust) {

    /**
     * Checks the values.
     *
     * @param raw outside, wall and finish as they were, from the raw tip
     * @param shortened how much of the raw tip is gone
     * @param found diameter over all that is on it, up from its end as it is
     * @param crust thickness of what is to come off first, radial; leaves some of the tip
     */
    public UsedTip {
        Require.given("raw", raw);
        Require.between(
                "shortened", shortened, Length.ZERO, raw.outside().length().minus(Length.ofNanometres(1)));
        Require.given("found", found);
        Require.given("crust", crust);
        Length read = raw.outside().length().minus(shortened);
        Require.that(
                !found.length().moreThan(read),
                "found",
                "must be no longer than what was read of the raw tip above its end, " + read,
                found.length());
        Polyline left = cleaned(found, crust, Polyline.Diameter.LEAST);
        Require.that(left.value(left.least()) > 0, "crust", "must leave some of the tip", crust);
    }

    private static Polyline cleaned(DiameterProfile found, ThicknessProfile crust, Polyline.Diameter which) {
        double length = found.length().millimetres();
        return Polyline.of(found, which).plus(Polyline.of(crust, Length.ZERO, length), -2);
    }

    /**
     * The tip less its crust.
     *
     * @return diameter up from its end as it is
     */
    public DiameterProfile cleaned() {
        Polyline least = cleaned(found, crust, Polyline.Diameter.LEAST);
        return DiameterProfile.of(least.rounded(cleaned(found, crust, Polyline.Diameter.GREATEST)));
    }

    private double length() {
        return found.length().millimetres();
    }

    /** The raw tip above the end as it is, less the cleaned tip: on the diameter, negative where it reads wider than raw. */
    private Polyline off() {
        return Polyline.of(raw.outside().trimmedFromStart(shortened), Polyline.Diameter.MEAN)
                .between(0, length())
                .plus(cleaned(found, crust, Polyline.Diameter.MEAN), -1);
    }

    /**
     * The most that is off the diameter since the tip was raw.
     *
     * @return on the diameter; negative if it reads wider than raw everywhere
     */
    public Length mostOff() {
        Polyline off = off();
        return Length.ofMillimetres(off.value(off.greatest()));
    }

    /** What is left of a thickness, with nothing off where the tip reads wider than raw. */
    private Polyline left(ThicknessProfile was) {
        return Polyline.of(was, shortened, length()).plus(off().max(Polyline.constant(0, 0, length())), -0.5);
    }

    /**
     * The tip as everything else of this library takes it: cleaned, with the finish and the wall that are left.
     *
     * @return the section, its thicknesses counted from its end as it is; its wall unknown if the readings leave none
     */
    public TipSection section() {
        Finish finish = raw.finish().orElse(Finish.NONE);
        Polyline none = Polyline.constant(0, 0, length());
        Optional<Length> gone = noWall();
        Reading<Wall> wall = gone.isPresent() ? Reading.unknown("whoever reads outside and wall again") : wallLeft();
        return new TipSection(
                cleaned(),
                finish.withThickness(thickness(left(finish.thickness()).max(none))),
                wall,
                Length.ZERO);
    }

    private Reading<Wall> wallLeft() {
        if (raw.wall() instanceof Reading.Measured<Wall> measured) {
            return Reading.measured(wallLeft(measured.value()));
        }
        return raw.wall() instanceof Reading.Assumed<Wall> assumed
                ? Reading.assumed(wallLeft(assumed.value()), assumed.source())
                : raw.wall();
    }

    private Wall wallLeft(Wall was) {
        return was.withThickness(thickness(left(was.thickness())));
    }

    /** A step of the outside is a step of what is left under it. Of several knots within a nanometre the first and the last stay. */
    private static ThicknessProfile thickness(Polyline line) {
        List<ThicknessProfile.Knot> knots = new ArrayList<>();
        for (int k = 0; k < line.size(); k++) {
            Length at = Length.ofMillimetres(line.at(k));
            int count = knots.size();
            if (count >= 2 && knots.get(count - 2).at().equals(at)) {
                knots.remove(count - 1);
            }
            knots.add(new ThicknessProfile.Knot(at, Length.ofMillimetres(Math.max(0, line.value(k)))));
        }
        return new ThicknessProfile(knots);
    }

    /** Where the readings leave no wall. */
    private Optional<Length> noWall() {
        return raw.wall()
                .known()
                .map(wall -> left(wall.thickness()))
                .filter(left -> left.value(left.least()) <= 0)
                .map(left -> Length.ofMillimetres(left.at(left.least())));
    }

    /**
     * What is to be known of the tip before it is used.
     *
     * @param within difference of diameters that is only the reading; zero or more
     * @return findings, in the order in which they are dealt with
     */
    public List<Finding> findings(Length within) {
        Require.notNegative("within", within);
        List<Finding> findings = new ArrayList<>();
        if (shortened.moreThan(Length.ZERO)) {
            findings.add(Finding.note(UsedCode.TIP_SHORTENED, Term.of("x", "shorter than raw", shortened)));
        }
        Polyline layer = Polyline.of(crust, Length.ZERO, length());
        if (layer.value(layer.greatest()) > 0) {
            findings.add(Finding.caution(
                    UsedCode.CRUST_ON_TIP,
                    Term.fine("k", "crust", Length.ofMillimetres(layer.value(layer.greatest()))),
                    at(layer, layer.greatest())));
        }
        Polyline off = off();
        worked(off, within).ifPresent(findings::add);
        Length wider = Length.ofMillimetres(-off.value(off.least()));
        if (wider.moreThan(within)) {
            findings.add(Finding.caution(
                    UsedCode.WIDER_THAN_RAW, Term.fine("x", "wider than raw", wider), at(off, off.least())));
        }
        noWall().ifPresent(place ->
                findings.add(Finding.stop(UsedCode.NO_WALL_LEFT, Term.of("z", "from the end of the tip", place))));
        return findings;
    }

    private Optional<Finding> worked(Polyline off, Length within) {
        int most = off.greatest();
        Length gone = Length.ofMillimetres(off.value(most));
        if (!gone.moreThan(within)) {
            return Optional.empty();
        }
        Length place = Length.ofMillimetres(off.at(most));
        Length finish = raw.finish().orElse(Finish.NONE).thickness().at(shortened.plus(place));
        return Optional.of(Finding.note(
                UsedCode.TIP_WORKED,
                Term.fine("x", "off the diameter", gone),
                at(off, most),
                Term.fine("xs", "of it structure", gone.minus(finish.times(2)).max(Length.ZERO))));
    }

    private static Term at(Polyline line, int knot) {
        return Term.of("z", "from the end of the tip", Length.ofMillimetres(line.at(knot)));
    }

    /**
     * The same tip with another raw section.
     *
     * @param raw outside, wall and finish as they were
     * @return a copy that differs in that alone
     */
    public UsedTip withRaw(ShaftSection raw) {
        return new UsedTip(raw, shortened, found, crust);
    }

    /**
     * The same tip, otherwise shortened.
     *
     * @param shortened how much of the raw tip is gone
     * @return a copy that differs in that alone
     */
    public UsedTip withShortened(Length shortened) {
        return new UsedTip(raw, shortened, found, crust);
    }

    /**
     * The same tip with other diameters.
     *
     * @param found diameter over all that is on it
     * @return a copy that differs in that alone
     */
    public UsedTip withFound(DiameterProfile found) {
        return new UsedTip(raw, shortened, found, crust);
    }

    /**
     * The same tip with another crust.
     *
     * @param crust thickness of what is to come off first, radial
     * @return a copy that differs in that alone
     */
    public UsedTip withCrust(ThicknessProfile crust) {
        return new UsedTip(raw, shortened, found, crust);
    }
}

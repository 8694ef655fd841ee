package dev.tipwright.core.part;

import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.Length;
import java.util.List;

/**
 * A raw shaft as it came out of the box: length, mass, section, and what is known of its flex.
 *
 * <pre>{@code
 * ShaftSection section = new ShaftSection(
 *         DiameterProfile.cylinder(Length.parse(".3735 in"), Length.parse("8 in")), Length.parse(".600 in"),
 *         Reading.unknown("a cut piece"), Reading.unknown("the shaft's maker"));
 * Shaft raw = new Shaft(
 *         "M1", new Blank("mid", Length.parse("8 in"), ShaftMaterial.COMPOSITE), Length.parse("39 in"),
 *         ShaftMass.of(Mass.parse("84.1 g"), Length.parse("20 1/4 in")), section, Reading.unknown("a frequency meter"));
 * raw.mass().balance().inches();   // = 20.25
 * }</pre>
 *
 * @param label how the bench calls this one piece
 * @param blank which raw blank it is
 * @param length raw length ({@code R}); above zero, at most 3 m
 * @param mass mass and balance
 * @param section outside, butt, wall, finish
 * @param flex how it bends
 */
public record Shaft(
        String label, Blank blank, Length length, ShaftMass mass, ShaftSection section, Reading<ShaftFlex> flex) {

    /**
     * Checks the values.
     *
     * @param label how the bench calls this one piece
     * @param blank which raw blank it is
     * @param length raw length ({@code R}); above zero, at most 3 m
     * @param mass mass and balance
     * @param section outside, butt, wall, finish
     * @param flex how it bends
     */
    public Shaft {
        Require.label("label", label);
        Require.given("blank", blank);
        Require.someUpTo("length", length, 3000);
        Require.given("mass", mass);
        if (!mass.balance().lessThan(length)) {
            throw Require.broken("mass", "must balance short of the length, " + length, mass.balance());
        }
        if (mass.along().known().map(along -> along.end().lessThan(length)).orElse(false)) {
            throw Require.broken(
                    "mass", "must have its mass along the shaft read to the length, " + length, mass.along());
        }
        Require.given("section", section);
        if (section.outside().to().moreThan(length)) {
            throw Require.broken(
                    "section",
                    "must end within the length, " + length,
                    section.outside().to());
        }
        Require.given("flex", flex);
        for (ShaftFlex.Timed timed : flex.known().map(ShaftFlex::measured).orElse(List.of())) {
            Require.that(
                    timed.clamp().lessThan(length),
                    "flex",
                    "must be timed with a clamp that leaves some of the length, " + length,
                    timed.clamp());
        }
    }

    /**
     * This one with another value in one place.
     *
     * @param label how the bench calls this one piece
     * @return a copy that differs in that alone
     */
    public Shaft withLabel(String label) {
        return new Shaft(label, blank, length, mass, section, flex);
    }

    /**
     * This one with another value in one place.
     *
     * @param blank which raw blank it is
     * @return a copy that differs in that alone
     */
    public Shaft withBlank(Blank blank) {
        return new Shaft(label, blank, length, mass, section, flex);
    }

    /**
     * This one with another value in one place.
     *
     * @param length raw length ({@code R}); above zero, at most 3 m
     * @return a copy that differs in that alone
     */
    public Shaft withLength(Length length) {
        return new Shaft(label, blank, length, mass, section, flex);
    }

    /**
     * This one with another value in one place.
     *
     * @param mass mass and balance
     * @return a copy that differs in that alone
     */
    public Shaft withMass(ShaftMass mass) {
        return new Shaft(label, blank, length, mass, section, flex);
    }

    /**
     * This one with another value in one place.
     *
     * @param section outside, butt, wall, finish
     * @return a copy that differs in that alone
     */
    public Shaft withSection(ShaftSection section) {
        return new Shaft(label, blank, length, mass, section, flex);
    }

    /**
     * This one with another value in one place.
     *
     * @param flex how it bends
     * @return a copy that differs in that alone
     */
    public Shaft withFlex(Reading<ShaftFlex> flex) {
        return new Shaft(label, blank, length, mass, section, flex);
    }
}

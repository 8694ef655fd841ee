package dev.tipwright.core.offcut;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.cut.CutSheet;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;

/**
 * A piece of a raw shaft that was weighed by itself: an offcut, or the shaft after the cut.
 *
 * @param from where it began, from the raw tip; 0 to 3 m
 * @param to where it ended, from the raw tip; beyond where it began, at most 3 m
 * @param mass as weighed; above zero
 */
public record WeighedPiece(Length from, Length to, Mass mass) {

    /**
     * Checks the values.
     *
     * @param from where it began, from the raw tip; 0 to 3 m
     * @param to where it ended, from the raw tip; beyond where it began, at most 3 m
     * @param mass as weighed; above zero
     */
    public WeighedPiece {
        Require.within("from", from, 0, 3000);
        Require.within("to", to, 0, 3000);
        Require.that(from.lessThan(to), "to", "must be beyond from, " + from, to);
        Require.positive("mass", mass);
    }

    /**
     * The offcut of the tip.
     *
     * @param sheet how the shaft was cut; its tip trim above the kerf
     * @param mass as weighed; above zero
     * @return the piece from the raw tip to the kerf
     * @throws IllegalArgumentException if the tip was ground and left no offcut
     */
    public static WeighedPiece tipOffcut(CutSheet sheet, Mass mass) {
        Require.given("sheet", sheet);
        Require.that(
                sheet.tip().offcut().nanometres() > 0, "sheet", "must leave an offcut of the tip", sheet.tipTrim());
        return new WeighedPiece(Length.ZERO, sheet.tip().offcut(), mass);
    }

    /**
     * The offcut of the butt.
     *
     * @param sheet how the shaft was cut; its butt trim above the kerf
     * @param mass as weighed; above zero
     * @return the piece from the kerf to the raw butt
     * @throws IllegalArgumentException if the butt was ground and left no offcut
     */
    public static WeighedPiece buttOffcut(CutSheet sheet, Mass mass) {
        Require.given("sheet", sheet);
        Length offcut = sheet.butt().offcut();
        Require.that(offcut.nanometres() > 0, "sheet", "must leave an offcut of the butt", sheet.buttTrim());
        return new WeighedPiece(sheet.rawLength().minus(offcut), sheet.rawLength(), mass);
    }

    /**
     * The shaft itself, weighed when it was cut and nothing else was done to it.
     *
     * @param build the club with the trims that were made
     * @param mass as weighed; above zero
     * @return the piece between the cuts
     */
    public static WeighedPiece cutShaft(Build build, Mass mass) {
        Require.given("build", build);
        Length from = build.work().tipTrim();
        return new WeighedPiece(from, from.plus(build.cutLength()), mass);
    }

    /**
     * Its length.
     *
     * @return from its beginning to its end
     */
    public Length length() {
        return to.minus(from);
    }
}

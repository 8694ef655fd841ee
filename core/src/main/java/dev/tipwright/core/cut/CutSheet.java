package dev.tipwright.core.cut;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.Length;
import java.util.List;
import java.util.stream.Stream;

/**
 * How one raw shaft is cut up: {@code R = T + S + U}, and of each trim all but a kerf falls off in one piece.
 *
 * <pre>{@code
 * CutSheet sheet = new CutSheet(Length.parse("39 in"), Length.parse("1/2 in"), Length.parse("2 1/8 in"),
 *         Length.parse("1/16 in"));
 * sheet.cutLength().inches();            // = 36.375
 * sheet.tip().fromButt().inches();       // = 38.5
 * sheet.butt().fromTip().inches();       // = 36.875
 * sheet.butt().offcut().inches();        // = 2.0625
 * }</pre>
 *
 * @param rawLength the raw shaft ({@code R}); above zero
 * @param tipTrim what comes off the tip ({@code T}); zero or more
 * @param buttTrim what comes off the butt ({@code U}); zero or more, and something must be left between the two
 * @param kerf width of the saw cut ({@code k}); zero or more
 */
public record CutSheet(Length rawLength, Length tipTrim, Length buttTrim, Length kerf) {

    /**
     * Checks the values.
     *
     * @param rawLength the raw shaft ({@code R}); above zero
     * @param tipTrim what comes off the tip ({@code T}); zero or more
     * @param buttTrim what comes off the butt ({@code U}); zero or more, and something must be left between the two
     * @param kerf width of the saw cut ({@code k}); zero or more
     */
    public CutSheet {
        Require.positive("rawLength", rawLength);
        Require.notNegative("tipTrim", tipTrim);
        Require.that(tipTrim.lessThan(rawLength), "tipTrim", "must be less than rawLength, " + rawLength, tipTrim);
        Require.notNegative("buttTrim", buttTrim);
        Require.that(
                buttTrim.lessThan(rawLength.minus(tipTrim)),
                "buttTrim",
                "must leave something of " + rawLength + " less the tip trim of " + tipTrim,
                buttTrim);
        Require.notNegative("kerf", kerf);
    }

    /**
     * How the shaft of a planned club is cut up.
     *
     * @param build the club with its trims
     * @param kerf width of the saw cut; zero or more
     * @return the sheet
     */
    public static CutSheet of(Build build, Length kerf) {
        Require.given("build", build);
        return new CutSheet(
                build.parts().shaft().length(),
                build.work().tipTrim(),
                build.work().buttTrim(),
                kerf);
    }

    /**
     * The shaft that is left, {@code S = R - T - U}.
     *
     * @return the cut length
     */
    public Length cutLength() {
        return rawLength.minus(tipTrim).minus(buttTrim);
    }

    /**
     * The mark at the tip.
     *
     * @return the mark; at the raw tip itself where nothing comes off
     */
    public CutMark tip() {
        return new CutMark(ShaftEnd.TIP, tipTrim, rawLength.minus(tipTrim), kerf);
    }

    /**
     * The mark at the butt.
     *
     * @return the mark; at the raw butt itself where nothing comes off
     */
    public CutMark butt() {
        return new CutMark(ShaftEnd.BUTT, rawLength.minus(buttTrim), buttTrim, kerf);
    }

    /**
     * The marks at which something comes off.
     *
     * @return none, one or two, the tip first
     */
    public List<CutMark> marks() {
        return Stream.of(tip(), butt())
                .filter(mark -> mark.trim().nanometres() > 0)
                .toList();
    }
}

package dev.tipwright.fitcheck;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.quantity.Length;

/**
 * What a fit is worked out from: three readings that a budget can move.
 *
 * @param tip diameter up from the end of the tip
 * @param bore the bore
 * @param insertion how far the tip is in, or went in; zero or more, at most the depth of the bore
 */
public record FitReadings(DiameterProfile tip, Bore bore, Length insertion) {

    /**
     * Checks the values.
     *
     * @param tip diameter up from the end of the tip
     * @param bore the bore
     * @param insertion how far the tip is in
     */
    public FitReadings {
        Require.given("tip", tip);
        Require.given("bore", bore);
        Require.between("insertion", insertion, Length.ZERO, bore.depth());
    }

    /**
     * The same readings of another tip.
     *
     * @param tip diameter up from the end of the tip
     * @return a copy that differs in that alone
     */
    public FitReadings withTip(DiameterProfile tip) {
        return new FitReadings(tip, bore, insertion);
    }

    /**
     * The same readings of another bore.
     *
     * @param bore the bore
     * @return a copy that differs in that alone
     */
    public FitReadings withBore(Bore bore) {
        return new FitReadings(tip, bore, insertion);
    }

    /**
     * The same readings with another insertion.
     *
     * @param insertion how far the tip is in
     * @return a copy that differs in that alone
     */
    public FitReadings withInsertion(Length insertion) {
        return new FitReadings(tip, bore, insertion);
    }
}

package dev.tipwright.fitcheck.insert;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.quantity.Length;

/**
 * How far a tip goes into a bore before it first touches, and where: {@code min(B, inf {z + y : d(z) > D(y)})}.
 *
 * <p>Touching is not interference; a tip that fits exactly goes on. What lies past an obstruction is out of reach even if it
 * would fit there. Where a reading is out of round, the worst diameter counts. The result is exact, rounded down to the
 * nanometre: the least insertion is always at a station of the tip or at one of the bore, so each station is matched once with
 * the first place of the other side that stops it. That takes time in proportion to the number of stations.
 *
 * <pre>{@code
 * Bore bore = Bore.ofTwoDiameters(
 *         Length.parse(".363 in"), Length.parse(".355 in"), Length.parse("1 1/4 in"), BoreEnd.FLAT);
 * DiameterProfile tip = DiameterProfile.cylinder(Length.parse(".359 in"), Length.parse("8 in"));
 * FirstContact contact = FirstContact.of(tip, bore);
 * contact.insertion().inches();     // = 0.625
 * contact.boreStation().inches();   // = 0.625
 * contact.kind();                   // = TOUCHES
 * }</pre>
 *
 * @param insertion how far the tip goes in ({@code i})
 * @param tipStation where on the tip it binds, up from its end ({@code z}), the lowest of several; zero if nothing does
 * @param kind what ends the way in
 */
public record FirstContact(Length insertion, Length tipStation, Kind kind) {

    /** What ends the way in. */
    public enum Kind {
        /** Tip and bore touch. */
        TOUCHES,
        /** Nothing touches over the whole depth of the bore. */
        CLEARS
    }

    /**
     * Checks the values.
     *
     * @param insertion how far the tip goes in ({@code i})
     * @param tipStation where on the tip it binds, up from its end ({@code z}), the lowest of several; zero if nothing does
     * @param kind what ends the way in
     */
    public FirstContact {
        Require.notNegative("insertion", insertion);
        Require.atMost("tipStation", Require.notNegative("tipStation", tipStation), "insertion", insertion);
        Require.given("kind", kind);
    }

    /**
     * The first contact of a tip in a bore.
     *
     * @param tip diameter up from the end of the tip
     * @param bore the bore
     * @return how far it goes in and where it binds
     */
    public static FirstContact of(DiameterProfile tip, Bore bore) {
        Require.given("tip", tip);
        Require.given("bore", bore);
        return Plain.serves(tip) && Plain.serves(bore.profile()) ? Plain.contact(tip, bore) : merged(tip, bore);
    }

    /** In time in proportion to the number of stations, for every profile. */
    static FirstContact merged(DiameterProfile tip, Bore bore) {
        Nearest nearest = new Nearest(bore.depth().nanometres());
        nearest.match(Side.tip(tip), Side.bore(bore.profile()));
        return nearest.touches()
                ? new FirstContact(
                        Length.ofNanometres(nearest.insertion()),
                        Length.ofNanometres(nearest.tipStation()),
                        Kind.TOUCHES)
                : new FirstContact(bore.depth(), Length.ZERO, Kind.CLEARS);
    }

    /**
     * Where in the bore it binds, down from the mouth ({@code y = i - z}).
     *
     * @return the place; the depth of the bore if nothing binds
     */
    public Length boreStation() {
        return insertion.minus(tipStation);
    }
}

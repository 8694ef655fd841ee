package dev.tipwright.fitcheck.taper;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.fitcheck.insert.FirstContact;

/**
 * One stage of working a tip down: with so much still to come off, the tip goes in so far.
 *
 * @param stock what is still to come off, on the diameter ({@code e}); negative if too much is off
 * @param contact how far the tip then goes in and where it binds
 * @param perThousandth how much further it goes in when the next thousandth of an inch comes off the diameter; {@code 0.001 in / q} on
 *     a taper, zero where depth is silent
 */
public record Stage(Length stock, FirstContact contact, Length perThousandth) {

    /**
     * Checks the values.
     *
     * @param stock what is still to come off, on the diameter
     * @param contact how far the tip then goes in and where it binds
     * @param perThousandth how much further it goes in for the next thousandth
     */
    public Stage {
        Require.given("stock", stock);
        Require.given("contact", contact);
        Require.notNegative("perThousandth", perThousandth);
    }

    /**
     * How far the tip goes in.
     *
     * @return the insertion at this stage ({@code i})
     */
    public Length insertion() {
        return contact.insertion();
    }
}

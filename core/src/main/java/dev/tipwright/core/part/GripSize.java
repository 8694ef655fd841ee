package dev.tipwright.core.part;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.Length;

/**
 * The size of a grip off the shaft.
 *
 * @param core inner diameter it is moulded for, at the top; above zero
 * @param outside outside diameter it then has at its widest; not under the core, at most 100 mm
 */
public record GripSize(Length core, Length outside) {

    /**
     * Checks the values.
     *
     * @param core inner diameter it is moulded for, at the top; above zero
     * @param outside outside diameter it then has at its widest; not under the core, at most 100 mm
     */
    public GripSize {
        Require.atMost("core", Require.positive("core", core), "outside", outside);
        Require.someUpTo("outside", outside, 100);
    }

    /**
     * This one with another value in one place.
     *
     * @param core inner diameter it is moulded for, at the top; above zero
     * @return a copy that differs in that alone
     */
    public GripSize withCore(Length core) {
        return new GripSize(core, outside);
    }

    /**
     * This one with another value in one place.
     *
     * @param outside outside diameter it then has at its widest; not under the core, at most 100 mm
     * @return a copy that differs in that alone
     */
    public GripSize withOutside(Length outside) {
        return new GripSize(core, outside);
    }
}

package dev.tipwright.swingweight;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.assertj.core.api.ThrowableAssert.ThrowingCallable;

/** The two ways in which misuse is refused, with the whole message. */
public final class Refusals {

    private Refusals() {}

    public static void refused(String message, ThrowingCallable call) {
        assertThatThrownBy(call).isInstanceOf(IllegalArgumentException.class).hasMessage(message);
    }

    public static void missing(String name, ThrowingCallable call) {
        assertThatThrownBy(call).isInstanceOf(NullPointerException.class).hasMessage(name + " must not be null");
    }
}

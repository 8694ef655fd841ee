package dev.tipwright.core.evidence;

import dev.tipwright.core.internal.arg.Require;
import java.util.Optional;

/**
 * Something a builder may or may not have read off a part: measured, assumed with the source of the assumption, or unknown
 * with whom to ask. A quantity that every job needs is bare; this is for those whose absence is normal.
 *
 * <pre>{@code
 * Reading<Length> wall = Reading.measured(Length.ofThousandths(90.5));
 * Reading<Length> guess = Reading.assumed(Length.ofThousandths(90), Source.assumption("as its sister shafts"));
 * Reading<Length> none = Reading.unknown("the shaft's maker");
 * wall.known().isPresent();   // = true
 * none.known().isPresent();   // = false
 * }</pre>
 *
 * @param <Q> what is read
 */
public sealed interface Reading<Q> {

    /**
     * Read off the part itself.
     *
     * @param value what was read
     * @param <Q> what is read
     */
    record Measured<Q>(Q value) implements Reading<Q> {

        /**
         * Checks the value.
         *
         * @param value what was read
         */
        public Measured {
            Require.given("value", value);
        }
    }

    /**
     * Not read, but taken to be so.
     *
     * @param value what is assumed
     * @param source why
     * @param <Q> what is read
     */
    record Assumed<Q>(Q value, Source source) implements Reading<Q> {

        /**
         * Checks the values.
         *
         * @param value what is assumed
         * @param source why
         */
        public Assumed {
            Require.given("value", value);
            Require.given("source", source);
        }
    }

    /**
     * Not known.
     *
     * @param ask whom to ask, or how to find out; 1 to 80 printable characters
     * @param <Q> what is read
     */
    record Unknown<Q>(String ask) implements Reading<Q> {

        /**
         * Checks the value.
         *
         * @param ask whom to ask, or how to find out; 1 to 80 printable characters
         */
        public Unknown {
            Require.label("ask", ask);
        }
    }

    /**
     * A reading taken off the part.
     *
     * @param value what was read
     * @param <Q> what is read
     * @return the reading
     */
    static <Q> Reading<Q> measured(Q value) {
        return new Measured<>(value);
    }

    /**
     * An assumption in place of a reading.
     *
     * @param value what is assumed
     * @param source why
     * @param <Q> what is read
     * @return the reading
     */
    static <Q> Reading<Q> assumed(Q value, Source source) {
        return new Assumed<>(value, source);
    }

    /**
     * No reading.
     *
     * @param ask whom to ask, or how to find out; 1 to 80 printable characters
     * @param <Q> what is read
     * @return the reading
     */
    static <Q> Reading<Q> unknown(String ask) {
        return new Unknown<>(ask);
    }

    /**
     * The value, measured or assumed.
     *
     * @return the value, empty if unknown
     */
    default Optional<Q> known() {
        if (this instanceof Measured<Q> measured) {
            return Optional.of(measured.value());
        }
        return this instanceof Assumed<Q> assumed ? Optional.of(assumed.value()) : Optional.empty();
    }

    /**
     * The value, or another in its stead.
     *
     * @param other what to give if it is unknown
     * @return the value, or the other
     */
    default Q orElse(Q other) {
        Require.given("other", other);
        if (this instanceof Measured<Q> measured) {
            return measured.value();
        }
        return this instanceof Assumed<Q> assumed ? assumed.value() : other;
    }
}

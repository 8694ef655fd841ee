package dev.tipwright.core.uncertainty;

import java.util.Objects;

/**
 * A measuring instrument, as far as uncertainty goes: what each reading has of its own, and what all its readings
 * share.
 *
 * <p>The two are kept apart because the shared part does not average out: two lengths read with a caliper that shows
 * 0.02 mm too much are together 0.04 mm too long. Add {@link #sharedError} once as an input, let the model add it to
 * every reading, and take the readings themselves from {@link #ownReading}. For one reading alone {@link #reading} puts
 * both parts into one input.
 *
 * @param name what the instrument is called; not blank
 * @param unit the unit of its readings, as text; not blank
 * @param ownUncertainty the standard uncertainty each reading has of its own, in {@code unit}
 * @param sharedUncertainty the standard uncertainty of the error that all readings share, in {@code unit}
 * @param distribution the shape of either part; not Student
 * @param basis where the numbers come from
 * @param derivation how the numbers were come by, in words
 */
public record Instrument(
        String name,
        String unit,
        double ownUncertainty,
        double sharedUncertainty,
        Distribution distribution,
        Basis basis,
        String derivation) {

    /** Where the numbers of an instrument come from. */
    public enum Basis {
        /** Standard uncertainties given by the caller, from a certificate or from experience. */
        SUPPLIED,

        /** Worked out from the resolution and the accuracy limit that the caller gave. */
        DERIVED,

        /** Assumed by this library; see {@link TypicalInstrument}. */
        ASSUMED
    }

    /**
     * Checks each part.
     *
     * @param name what the instrument is called; not blank
     * @param unit the unit of its readings; not blank
     * @param ownUncertainty the part of each reading's own: 0, or between 1e-150 and 1e150
     * @param sharedUncertainty the shared part: 0, or between 1e-150 and 1e150
     * @param distribution the shape of either part; not Student
     * @param basis where the numbers come from
     * @param derivation how the numbers were come by; not blank
     * @throws NullPointerException if an argument is null
     * @throws IllegalArgumentException if an argument is outside its range
     */
    public Instrument {
        Check.text("name", name);
        Check.text("unit", unit);
        ownUncertainty = Check.uncertainty("ownUncertainty of " + name, ownUncertainty, unit);
        sharedUncertainty = Check.uncertainty("sharedUncertainty of " + name, sharedUncertainty, unit);
        Objects.requireNonNull(distribution, "distribution");
        if (distribution == Distribution.STUDENT) {
            throw new IllegalArgumentException("distribution of " + name
                    + " must not be Student, which describes repeated readings, was " + distribution);
        }
        Objects.requireNonNull(basis, "basis");
        Check.text("derivation", derivation);
    }

    /**
     * An instrument whose standard uncertainties are known; normal.
     *
     * @param name what the instrument is called
     * @param unit the unit of its readings
     * @param ownUncertainty the standard uncertainty each reading has of its own, in {@code unit}
     * @param sharedUncertainty the standard uncertainty of the error that all readings share, in {@code unit}; 0 if it
     *     is not known apart
     * @return the instrument
     * @throws IllegalArgumentException if an argument is outside the range of {@link Instrument}
     */
    public static Instrument ofStandard(String name, String unit, double ownUncertainty, double sharedUncertainty) {
        return new Instrument(
                name,
                unit,
                ownUncertainty,
                sharedUncertainty,
                Distribution.NORMAL,
                Basis.SUPPLIED,
                "standard uncertainties as supplied");
    }

    /**
     * An instrument known by what it shows and by how far it may be out; rectangular.
     *
     * <pre>
     * own = resolution / sqrt 12      any value within half a step either way shows alike (JCGM 100:2008, F.2.2.1)
     * shared = limit / sqrt 3         any error within the limit is as probable as another (JCGM 100:2008, 4.3.7)
     * </pre>
     *
     * <pre>{@code
     * Instrument caliper = Instrument.ofResolution("caliper", "mm", 0.01, 0.02);
     * Math.round(1e5 * caliper.ownUncertainty());       // = 289
     * Math.round(1e5 * caliper.sharedUncertainty());    // = 1155
     * }</pre>
     *
     * @param name what the instrument is called
     * @param unit the unit of its readings
     * @param resolution the step from one reading to the next, in {@code unit}: the last digit, the finest graduation
     *     read, or the step from pin to pin of a set (the reading then lies halfway between the pin that enters and the
     *     one that does not)
     * @param accuracyLimit the greatest error the instrument may have, either way, in {@code unit}
     * @return the instrument
     * @throws IllegalArgumentException if an argument is outside the range of {@link Instrument}
     */
    public static Instrument ofResolution(String name, String unit, double resolution, double accuracyLimit) {
        double step = Check.uncertainty("resolution of " + name, resolution, unit);
        double limit = Check.uncertainty("accuracyLimit of " + name, accuracyLimit, unit);
        String derivation = "resolution " + Figures.plain(step) + " " + unit + " / sqrt 12 and accuracy limit "
                + Figures.plain(limit) + " " + unit + " / sqrt 3";
        return new Instrument(
                name,
                unit,
                step / Math.sqrt(12),
                limit / Math.sqrt(3),
                Distribution.RECTANGULAR,
                Basis.DERIVED,
                derivation);
    }

    /**
     * The standard uncertainty of one reading, both parts in quadrature.
     *
     * @return the uncertainty, in {@link #unit()}
     */
    public double standardUncertainty() {
        return Quadrature.of(ownUncertainty, sharedUncertainty);
    }

    /**
     * A reading with both parts of the uncertainty, for a measurement in which this instrument is read once.
     *
     * @param name what was measured
     * @param estimate the reading, in {@link #unit()}
     * @return the input; normal where both parts are in it, else of the instrument's own shape
     * @throws IllegalArgumentException if an argument is outside the range of {@link Input}
     */
    public Input reading(String name, double estimate) {
        boolean both = ownUncertainty > 0 && sharedUncertainty > 0;
        return Input.ofStandard(name, unit, estimate, standardUncertainty())
                .withDistribution(both ? Distribution.NORMAL : distribution);
    }

    /**
     * A reading with the part of the uncertainty that is its own; {@link #sharedError} has the rest.
     *
     * @param name what was measured
     * @param estimate the reading, in {@link #unit()}
     * @return the input
     * @throws IllegalArgumentException if an argument is outside the range of {@link Input}
     */
    public Input ownReading(String name, double estimate) {
        return Input.ofStandard(name, unit, estimate, ownUncertainty).withDistribution(distribution);
    }

    /**
     * The error that all readings share, to be added to each of them by the model.
     *
     * @param name what the error is called
     * @return an input with estimate 0
     * @throws IllegalArgumentException if the name is blank
     */
    public Input sharedError(String name) {
        return Input.ofStandard(name, unit, 0, sharedUncertainty).withDistribution(distribution);
    }
}

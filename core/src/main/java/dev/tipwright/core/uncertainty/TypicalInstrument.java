package dev.tipwright.core.uncertainty;

/**
 * Instruments of a bench as this library assumes them where the caller knows no better. No maker's figures: each is a
 * round step that such an instrument usually shows, and an accuracy limit taken as a number of such steps. Every value
 * is an assumption of this library; a certificate, or the figures that came with the instrument, are better ({@link
 * Instrument#ofResolution}).
 */
public enum TypicalInstrument {
    /** Digital caliper: step 0.01 mm; limit three steps, 0.03 mm, for jaws that wear and are pressed by feel. */
    CALIPER("caliper", "mm", 0.01, 3),

    /** Digital outside micrometer: step 0.001 mm; limit four steps, 0.004 mm. */
    MICROMETER("micrometer", "mm", 0.001, 4),

    /**
     * Set of gauge pins: step 0.001 in from pin to pin; limit a fifth of a step, 0.0002 in, for the pin's own diameter.
     */
    GAUGE_PIN("gauge pin", "in", 0.001, 0.2),

    /** Steel rule: graduated in 1/64 in and read to the nearest; limit half a graduation. */
    RULE("rule", "in", 1 / 64.0, 0.5),

    /** Tape: graduated in 1/16 in and read to the nearest; limit half a graduation, for the loose end hook. */
    TAPE("tape", "in", 1 / 16.0, 0.5),

    /** Gram scale: step 0.1 g; limit one step. */
    GRAM_SCALE("gram scale", "g", 0.1, 1),

    /** Protractor: graduated in half degrees and read to the nearest; limit one graduation. */
    PROTRACTOR("protractor", "deg", 0.5, 1);

    private final String label;
    private final String unit;
    private final double step;
    private final double stepsInLimit;

    TypicalInstrument(String label, String unit, double step, double stepsInLimit) {
        this.label = label;
        this.unit = unit;
        this.step = step;
        this.stepsInLimit = stepsInLimit;
    }

    /**
     * The instrument, marked {@link Instrument.Basis#ASSUMED}, with the way its numbers were come by.
     *
     * @return the instrument
     */
    public Instrument instrument() {
        Instrument derived = Instrument.ofResolution(label, unit, step, step * stepsInLimit);
        return new Instrument(
                label,
                unit,
                derived.ownUncertainty(),
                derived.sharedUncertainty(),
                derived.distribution(),
                Instrument.Basis.ASSUMED,
                derived.derivation() + "; step and limit are assumptions of this library");
    }
}

package dev.tipwright.fitcheck;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.uncertainty.Instrument;

/**
 * What a fit was measured with, all in millimetres.
 *
 * @param tip what read the diameters of the tip
 * @param bore what read those of the bore
 * @param depth what read the insertion, or the depth of the bore where the tip seats on its bottom
 */
public record FitGauges(Instrument tip, Instrument bore, Instrument depth) {

    /**
     * Checks the values.
     *
     * @param tip what read the diameters of the tip; in mm
     * @param bore what read those of the bore; in mm
     * @param depth what read the insertion; in mm
     */
    public FitGauges {
        millimetres("tip", tip);
        millimetres("bore", bore);
        millimetres("depth", depth);
    }

    private static void millimetres(String name, Instrument instrument) {
        Require.given(name, instrument);
        Require.that(instrument.unit().equals("mm"), name, "must be in mm", instrument.unit());
    }

    /**
     * The same gauges with another for the tip.
     *
     * @param tip what read the diameters of the tip
     * @return a copy that differs in that alone
     */
    public FitGauges withTip(Instrument tip) {
        return new FitGauges(tip, bore, depth);
    }

    /**
     * The same gauges with another for the bore.
     *
     * @param bore what read the diameters of the bore
     * @return a copy that differs in that alone
     */
    public FitGauges withBore(Instrument bore) {
        return new FitGauges(tip, bore, depth);
    }

    /**
     * The same gauges with another for the depth.
     *
     * @param depth what read the insertion
     * @return a copy that differs in that alone
     */
    public FitGauges withDepth(Instrument depth) {
        return new FitGauges(tip, bore, depth);
    }
}

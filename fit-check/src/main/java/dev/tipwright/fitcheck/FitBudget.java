package dev.tipwright.fitcheck;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.uncertainty.Input;
import dev.tipwright.core.uncertainty.Inputs;
import dev.tipwright.core.uncertainty.Instrument;
import dev.tipwright.core.uncertainty.Measurand;
import java.util.ArrayList;
import java.util.List;

/**
 * How sure a number of a fit is, profiles in: every diameter that was read is an input of its own, the error a gauge makes each time is
 * one input that moves all its readings, and the insertion is one. A tip that seats on the bottom is in as far as the bore is deep, so
 * there the input moves the bottom.
 *
 * <pre>{@code
 * Bore bore = Bore.ofTwoDiameters(
 *         Length.parse(".370 in"), Length.parse(".370 in"), Length.parse("1 1/4 in"), BoreEnd.FLAT);
 * DiameterProfile tip = DiameterProfile.cylinder(Length.parse(".365 in"), Length.parse("1 1/4 in"));
 * FitGauges gauges = new FitGauges(
 *         Instrument.ofStandard("micrometer", "mm", 0.003, 0), Instrument.ofStandard("pins", "mm", 0, 0.004),
 *         Instrument.ofStandard("rule", "mm", 0.2, 0));
 * Budget budget = Budget.of(FitBudget.measurand(
 *         FitQuantity.MEAN_CLEARANCE, new FitReadings(tip, bore, bore.depth()), gauges));
 * Math.round(budget.standardUncertainty() * 10_000);   // = 45
 * }</pre>
 */
public final class FitBudget {

    private FitBudget() {}

    /**
     * A number of a fit as the uncertainty engine takes it.
     *
     * @param quantity which number
     * @param readings what it is worked out from
     * @param gauges what that was measured with
     * @return the measurand, for a budget or for trials
     */
    public static Measurand measurand(FitQuantity quantity, FitReadings readings, FitGauges gauges) {
        Require.given("quantity", quantity);
        Require.given("readings", readings);
        Require.given("gauges", gauges);
        List<Input> inputs = new ArrayList<>();
        diameters("tip", readings.tip(), gauges.tip(), inputs);
        diameters("bore", readings.bore().profile(), gauges.bore(), inputs);
        inputs.add(gauges.tip().sharedError("error of the tip gauge"));
        inputs.add(gauges.bore().sharedError("error of the bore gauge"));
        inputs.add(gauges.depth().reading("insertion", readings.insertion().millimetres()));
        double[] estimates = inputs.stream().mapToDouble(Input::estimate).toArray();
        return Measurand.of(quantity.name(), quantity.unit(), Inputs.of(inputs), values -> {
            double[] by = new double[estimates.length];
            for (int k = 0; k < by.length; k++) {
                by[k] = values[k] - estimates[k];
            }
            return quantity.value().applyAsDouble(moved(readings, by));
        });
    }

    private static void diameters(String name, DiameterProfile profile, Instrument gauge, List<Input> inputs) {
        int index = 1;
        for (Station station : profile.stations()) {
            inputs.add(gauge.ownReading(
                    name + " reading " + index++ + ", at " + station.at(),
                    station.mean().millimetres()));
        }
    }

    private static FitReadings moved(FitReadings readings, double[] by) {
        int tips = readings.tip().stations().size();
        int bores = readings.bore().profile().stations().size();
        DiameterProfile tip = widened(readings.tip(), by, 0, by[tips + bores]);
        DiameterProfile around = widened(readings.bore().profile(), by, tips, by[tips + bores + 1]);
        Length deeper = Length.ofMillimetres(by[tips + bores + 2]);
        Bore bore = readings.bore().withProfile(around);
        Length insertion = readings.insertion().plus(deeper);
        if (readings.insertion().equals(bore.depth())) {
            return new FitReadings(tip, bore.withProfile(deepened(around, deeper)), insertion);
        }
        return new FitReadings(tip, bore, insertion.max(Length.ZERO).min(bore.depth()));
    }

    private static DiameterProfile widened(DiameterProfile profile, double[] by, int first, double shared) {
        List<Station> stations = new ArrayList<>();
        for (Station station : profile.stations()) {
            stations.add(station.widenedBy(Length.ofMillimetres(by[first + stations.size()] + shared)));
        }
        return profile.withStations(stations);
    }

    /** The bottom moved, with the diameter it has. */
    private static DiameterProfile deepened(DiameterProfile profile, Length by) {
        List<Station> stations = new ArrayList<>(profile.stations());
        int last = stations.size() - 1;
        Length to = profile.to().plus(by);
        stations.set(last, stations.get(last).withAt(stations.get(last).at().plus(by)));
        return new DiameterProfile(stations, profile.from(), to);
    }
}

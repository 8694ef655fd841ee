package dev.tipwright.examples.read;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.ClubSet;
import dev.tipwright.core.grip.TapeLayers;
import dev.tipwright.core.length.LengthPlan;
import dev.tipwright.core.orient.OrientStep;
import dev.tipwright.core.part.TipWeight;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.trim.TrimChart;
import dev.tipwright.core.uncertainty.BenchUncertainty;
import dev.tipwright.fitcheck.FitTarget;
import dev.tipwright.swingweight.aim.SwingWeightTargets;
import java.util.List;
import java.util.Optional;

/**
 * A job as it comes to the bench: clubs with no work on them yet, and what is wanted of them.
 *
 * @param clubs parts, and what is to be attached
 * @param charts tip trim charts, one for each height of the bore that a chart assumes
 * @param kerf of the cut-off wheel
 * @param fit wanted clearance and this shop's limits
 * @param lengths wanted playing lengths
 * @param swingWeights the scale, and what each club is to read on it
 * @param tipWeights the stock
 * @param instruments what things were measured with
 * @param extras what not every job asks for
 */
public record Job(
        ClubSet clubs,
        List<TrimChart> charts,
        Length kerf,
        FitTarget fit,
        LengthPlan lengths,
        SwingWeightTargets swingWeights,
        List<TipWeight> tipWeights,
        List<Instrument> instruments,
        Extras extras) {

    /**
     * What not every job asks for.
     *
     * @param orientation how every shaft is turned; empty if it does not matter
     * @param tape what widens the butt under each grip; empty if nobody counted
     * @param shareShafts whether shafts may change places between heads of one blank
     * @param weightsInOneTip how many tip weights of the stock may go into one tip, 1 or 2
     * @param timing how finished clubs are timed; empty if they are not
     */
    public record Extras(
            Optional<OrientStep> orientation,
            Optional<TapeLayers> tape,
            boolean shareShafts,
            int weightsInOneTip,
            Optional<Timing> timing) {}

    /**
     * Keeps copies of the lists.
     *
     * @param clubs parts, and what is to be attached
     * @param charts tip trim charts, one for each height of the bore that a chart assumes
     * @param kerf of the cut-off wheel
     * @param fit wanted clearance and this shop's limits
     * @param lengths wanted playing lengths
     * @param swingWeights the scale, and what each club is to read on it
     * @param tipWeights the stock
     * @param instruments what things were measured with
     * @param extras what not every job asks for
     */
    public Job {
        charts = List.copyOf(charts);
        tipWeights = List.copyOf(tipWeights);
        instruments = List.copyOf(instruments);
    }

    /**
     * What the instruments are used for, so that the plan can say how sure its numbers are.
     *
     * @return the bench; empty if no instrument is named
     */
    public Optional<BenchUncertainty> bench() {
        return Bench.of(instruments);
    }

    /**
     * Whether anything is known of how a grip sits: layers of tape, or the size of a grip.
     *
     * @return whether the plan has something to say of it
     */
    public boolean sizesGrips() {
        return extras.tape().isPresent()
                || clubs.builds().stream()
                        .anyMatch(build -> build.parts().grip().size().known().isPresent());
    }

    /**
     * The chart for a club: shafts of two models in one job have two charts.
     *
     * @param build the club
     * @return the chart that has a trim for it, or else the first
     */
    public TrimChart chartOf(Build build) {
        String blank = build.parts().shaft().blank().label();
        return charts.stream()
                .filter(chart -> chart.trim(build.label(), blank).isPresent())
                .findFirst()
                .orElse(charts.get(0));
    }
}

package dev.tipwright.fitcheck.taper;

import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.evidence.Source;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.evidence.Working;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A stop on the way down, read: what is left to come off, as sure as the readings make it, whether too much is off, and what to
 * measure next.
 *
 * <p>A caliper or a witness mark reads the tip itself, so where there is one it rules; depth alone speaks only while the tip is between
 * its two ends. Too much is off where even the greatest diameter that agrees with a reading is under the finished one; the shim
 * that would bring the wanted clearance back has half of that as its wall.
 *
 * <pre>{@code
 * Bore bore = Bore.ofTwoDiameters(
 *         Length.parse(".363 in"), Length.parse(".355 in"), Length.parse("1 1/4 in"), BoreEnd.FLAT);
 * DiameterProfile tip = DiameterProfile.cylinder(Length.parse(".3685 in"), Length.parse("8 in"));
 * DiameterProfile finished = DiameterProfile.of(
 *         Station.of(Length.ZERO, Length.parse(".351 in")),
 *         Station.of(Length.parse("1 1/4 in"), Length.parse(".359 in")));
 * StagedTip staged = new StagedTip(tip, finished, bore, bore.depth());
 * StopReading stop = StopReading.ofCalipers(List.of(Station.of(Length.ZERO, Length.parse(".348 in"))));
 * StopReport report = StopReport.of(
 *         staged, stop, Length.parse(".004 in"), Length.parse("1/64 in"), Length.parse(".0002 in"));
 * report.findings().get(0).code();                     // = OVER_REMOVED
 * report.shimWall().get().thousandths();               // = 1.5
 * }</pre>
 *
 * @param depth what depth says; empty if the tip was not tried
 * @param known what is known of the tip
 * @param stock what is left to come off, least and greatest over the readings; empty if neither a reading nor depth tells both ends
 * @param shimWall wall of the shim that would fill what is too much, at the worst reading; empty unless a reading shows it
 * @param next what to measure next; empty if a reading of the tip makes depth needless
 * @param findings what to know before the next pass
 */
public record StopReport(
        Optional<StockLeft> depth,
        KnownTip known,
        Optional<StockRange> stock,
        Optional<Length> shimWall,
        Optional<NextMeasurement> next,
        List<Finding> findings) {

    /**
     * Checks the values.
     *
     * @param depth what depth says
     * @param known what is known of the tip
     * @param stock what is left to come off
     * @param shimWall wall of the shim that would fill what is too much
     * @param next what to measure next
     * @param findings what to know before the next pass
     */
    public StopReport {
        Require.given("depth", depth);
        Require.given("known", known);
        Require.given("stock", stock);
        Require.given("shimWall", shimWall);
        Require.given("next", next);
        findings = Require.list("findings", findings);
    }

    /**
     * Reads a stop.
     *
     * @param tip the tip on its way
     * @param stop what was measured; an insertion at most the planned one
     * @param clearance wanted clearance on the diameter ({@code w}); zero or more
     * @param depthTolerance how far wrong depth and marks may be, either way; zero to 100 mm
     * @param caliperTolerance how far wrong a diameter may be, either way; zero or more, less than each diameter read
     * @return the report
     */
    public static StopReport of(
            StagedTip tip, StopReading stop, Length clearance, Length depthTolerance, Length caliperTolerance) {
        Require.given("tip", tip);
        Require.given("stop", stop);
        Require.notNegative("clearance", clearance);
        Require.that(
                stop.insertion().map(deep -> !deep.moreThan(tip.insertion())).orElse(true),
                "stop",
                "must go in at most the planned " + tip.insertion(),
                stop);
        KnownTip known = KnownTip.of(tip.bore(), stop, depthTolerance, caliperTolerance);
        Optional<StockLeft> depth = stop.insertion().map(deep -> tip.stock(deep, depthTolerance));
        Optional<StockRange> read = known.stock(tip.finished());
        Optional<StockRange> stock = read.isPresent() ? read : depth.flatMap(StopReport::range);
        Optional<NextMeasurement> next =
                read.isPresent() ? Optional.empty() : depth.map(left -> NextMeasurement.after(left, tip));
        List<Finding> findings = new ArrayList<>();
        depth.flatMap(left -> ofDepth(left, stop, read.isPresent())).ifPresent(findings::add);
        Optional<Length> over = worst(tip, known, findings, clearance);
        return new StopReport(depth, known, stock, over.map(Length::half), next, findings);
    }

    private static Optional<StockRange> range(StockLeft left) {
        return left.least().map(least -> new StockRange(least, left.most()));
    }

    private static Optional<Finding> ofDepth(StockLeft left, StopReading stop, boolean read) {
        if (left.kind() == StockLeft.Kind.DISAGREES) {
            return Optional.of(Finding.caution(
                    TaperCode.DEPTH_DISAGREES,
                    Term.of("i", "insertion", stop.insertion().orElse(Length.ZERO))));
        }
        return left.kind() == StockLeft.Kind.BOTTOMED && !read
                ? Optional.of(Finding.note(TaperCode.DEPTH_SILENT))
                : Optional.empty();
    }

    /** The most that is surely too much, and a finding for each reading that shows or allows it. */
    private static Optional<Length> worst(StagedTip tip, KnownTip known, List<Finding> findings, Length clearance) {
        Length worst = Length.ZERO;
        for (Station reading : known.readings()) {
            if (reading.at().moreThan(tip.insertion())) {
                continue;
            }
            Length wanted = tip.finished().diameterAt(reading.at());
            Length over = wanted.minus(reading.mean());
            Term at = Term.of("z", "from the end of the tip", reading.at());
            if (reading.greatest().lessThan(wanted)) {
                worst = worst.max(over);
                findings.add(Finding.stop(
                        TaperCode.OVER_REMOVED,
                        Term.fine("x", "too much off the diameter", over),
                        at,
                        Term.fine("c", "clearance", clearance.plus(over)),
                        Term.fine("w", "wanted clearance", clearance),
                        Term.fine("t", "wall of the shim", over.half())));
            } else if (reading.least().lessThan(wanted)) {
                findings.add(Finding.caution(
                        TaperCode.MAY_BE_OVER,
                        Term.fine("x", "too much off the diameter", wanted.minus(reading.least())),
                        at));
            }
        }
        return worst.nanometres() > 0 ? Optional.of(worst) : Optional.empty();
    }

    /**
     * How the stock at each reading of the tip comes about; what depth says is the stage table read backwards.
     *
     * @param tip the tip on its way, as it was when the stop was read
     * @return least and most stock at each reading on the finished shape
     */
    public Working working(StagedTip tip) {
        Require.given("tip", tip);
        List<Working.Line> lines = new ArrayList<>();
        for (Station reading : known.readings()) {
            if (!reading.at().moreThan(tip.insertion())) {
                Term f =
                        Term.fine("f", "finished diameter there", tip.finished().diameterAt(reading.at()));
                String where = ", " + reading.at() + " up";
                lines.add(line(
                        "e1",
                        "least stock" + where,
                        reading.least(),
                        tip.finished().diameterAt(reading.at()),
                        f));
                lines.add(line(
                        "e2",
                        "most stock" + where,
                        reading.greatest(),
                        tip.finished().diameterAt(reading.at()),
                        f));
            }
        }
        return new Working("Stop reading", lines);
    }

    private static Working.Line line(String symbol, String meaning, Length read, Length finished, Term f) {
        return new Working.Line(
                Term.fine(symbol, meaning, read.minus(finished)),
                "d - f",
                List.of(Term.fine("d", "diameter, its error put in", read), f),
                Source.assumption("the reading, by caliper or by witness mark, is within its error"));
    }
}

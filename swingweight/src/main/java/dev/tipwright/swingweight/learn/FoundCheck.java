package dev.tipwright.swingweight.learn;

import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.evidence.Source;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.evidence.Working;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.plan.StepReport;
import dev.tipwright.core.uncertainty.Measure;
import dev.tipwright.swingweight.scale.SwingWeight;
import dev.tipwright.swingweight.scale.SwingWeightScale;
import java.util.List;

/**
 * Found against predicted, after the cure. The two agree if they are no further apart than what both are known to, that is if the
 * {@code En} number, {@code (found - predicted) / sqrt(U_found^2 + U_predicted^2)} with expanded uncertainties, is at most one either
 * way (ISO 13528).
 *
 * <pre>{@code
 * SwingWeightScale scale = SwingWeightScale.LETTERS_AT_14_INCHES;
 * FoundCheck check = new FoundCheck(scale, scale.parse("D2"), 0.4, scale.parse("D2.4"), 0.3);
 * Math.round(100 * check.en());   // = 80
 * check.agrees();                 // = true
 * }</pre>
 *
 * @param scale the scale
 * @param predicted what was predicted
 * @param predictedExpanded its expanded uncertainty, points; from a billionth to 1000
 * @param found what was read
 * @param foundExpanded its expanded uncertainty, points; 0 to 1000
 */
public record FoundCheck(
        SwingWeightScale scale,
        SwingWeight predicted,
        double predictedExpanded,
        SwingWeight found,
        double foundExpanded)
        implements StepReport {

    /**
     * Checks the values.
     *
     * @param scale the scale
     * @param predicted what was predicted
     * @param predictedExpanded its expanded uncertainty, points; from a billionth to 1000
     * @param found what was read
     * @param foundExpanded its expanded uncertainty, points; 0 to 1000
     */
    public FoundCheck {
        Require.given("scale", scale);
        Require.given("predicted", predicted);
        Require.that(
                predictedExpanded >= 1e-9 && predictedExpanded <= 1000,
                "predictedExpanded",
                "must be from 1e-9 to 1000 points",
                predictedExpanded);
        Require.given("found", found);
        Require.that(
                foundExpanded >= 0 && foundExpanded <= 1000,
                "foundExpanded",
                "must be from 0 to 1000 points",
                foundExpanded);
    }

    /**
     * A finished club against its forecast, both with expanded uncertainties for a coverage of 95.45 %.
     *
     * @param forecast of the club
     * @param reading of the finished club on the same scale
     * @return the check
     */
    public static FoundCheck of(Forecast forecast, ScaleReading reading) {
        Require.given("forecast", forecast);
        Require.given("reading", reading);
        Require.that(
                reading.scale().equals(forecast.scale()),
                "reading",
                "must be of the scale of the forecast",
                reading.scale());
        double expanded = forecast.budget().expanded(Measure.TWO_SIGMA).uncertainty();
        return new FoundCheck(
                forecast.scale(),
                forecast.reads(),
                Math.max(1e-9, expanded),
                reading.read(),
                2 * reading.uncertainty());
    }

    /**
     * How far found is over predicted.
     *
     * @return points
     */
    public double over() {
        return found.over(predicted);
    }

    /**
     * How far apart the two may be.
     *
     * @return {@code sqrt(U_found^2 + U_predicted^2)}, points
     */
    public double allowed() {
        return Math.sqrt(predictedExpanded * predictedExpanded + foundExpanded * foundExpanded);
    }

    /**
     * The {@code En} number.
     *
     * @return how far apart they are, in units of how far they may be
     */
    public double en() {
        return over() / allowed();
    }

    /**
     * Whether found and predicted agree.
     *
     * @return true if {@code En} is at most one either way
     */
    public boolean agrees() {
        return Math.abs(en()) <= 1;
    }

    /**
     * What came of it.
     *
     * @return a note if they agree, a caution if not
     */
    public Finding finding() {
        Term[] terms = {
            Term.of("found", "found", scale.designation(found)),
            Term.of("predicted", "predicted", scale.designation(predicted)),
            Term.number("off", "points apart", Math.abs(over())),
            Term.number("U", "expanded uncertainty of the difference", allowed())
        };
        return agrees()
                ? Finding.note(LearnCode.AS_PREDICTED, terms)
                : Finding.caution(LearnCode.NOT_AS_PREDICTED, terms);
    }

    @Override
    public Working working() {
        return new Working(
                "Found against predicted",
                List.of(new Working.Line(
                        Term.number("En", "difference in units of its expanded uncertainty", en()),
                        "(Pf - Pp) / SQRT(Uf^2 + Up^2)",
                        List.of(
                                Term.number("Pf", "points found", found.points()),
                                Term.number("Pp", "points predicted", predicted.points()),
                                Term.number("Uf", "expanded uncertainty of the reading", foundExpanded),
                                Term.number("Up", "expanded uncertainty of the prediction", predictedExpanded)),
                        Source.published("ISO 13528", "En numbers; from memory"))));
    }
}

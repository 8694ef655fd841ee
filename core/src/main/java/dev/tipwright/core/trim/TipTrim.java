package dev.tipwright.core.trim;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.evidence.Caution;
import dev.tipwright.core.evidence.Source;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.evidence.Working;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.part.Head;
import dev.tipwright.core.plan.BenchStage;
import dev.tipwright.core.plan.Operation;
import dev.tipwright.core.plan.StepReport;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.uncertainty.Measure;
import java.util.List;

/**
 * A tip trim and how it came about: {@code T = chart + (G + B - i) - G_ref}. The tip's end will stand {@code G + B -
 * i} over the ground, and the same station of the shaft is to be at the same height as the chart's maker had it; a
 * head whose bore sits higher is trimmed more.
 *
 * <pre>{@code
 * TipTrim trim = new TipTrim(Length.parse("1/2 in"), Length.parse("1.28125 in"), Length.parse("1 in"),
 *         Length.parse("1 in"), Length.parse("1 in"), Length.parse("1/16 in"));
 * trim.trim().inches();         // = 0.78125
 * trim.correction().inches();   // = 0.28125
 * trim.offcut().inches();       // = 0.71875
 * }</pre>
 *
 * A negative trim cannot be made and is never clamped: the club plays softer than the chart means.
 *
 * @param chart what the chart says; zero or more
 * @param bottomToGround bore bottom to ground ({@code G})
 * @param boreDepth depth of the bore ({@code B}); above zero
 * @param insertion planned insertion ({@code i}); zero to the depth of the bore
 * @param groundReference bore bottom to ground the chart assumes ({@code G_ref})
 * @param kerf width of the saw cut ({@code k}); zero or more
 */
public record TipTrim(
        Length chart, Length bottomToGround, Length boreDepth, Length insertion, Length groundReference, Length kerf)
        implements StepReport {

    /**
     * Checks the values.
     *
     * @param chart what the chart says; zero or more
     * @param bottomToGround bore bottom to ground ({@code G})
     * @param boreDepth depth of the bore ({@code B}); above zero
     * @param insertion planned insertion ({@code i}); zero to the depth of the bore
     * @param groundReference bore bottom to ground the chart assumes ({@code G_ref})
     * @param kerf width of the saw cut ({@code k}); zero or more
     */
    public TipTrim {
        Require.notNegative("chart", chart);
        Require.given("bottomToGround", bottomToGround);
        Require.positive("boreDepth", boreDepth);
        Require.atMost("insertion", Require.notNegative("insertion", insertion), "boreDepth", boreDepth);
        Require.given("groundReference", groundReference);
        Require.notNegative("kerf", kerf);
    }

    /**
     * How much more than the chart says: {@code (G + B - i) - G_ref}.
     *
     * @return the correction; negative where the bore sits lower than the chart assumes
     */
    public Length correction() {
        return bottomToGround.plus(boreDepth).minus(insertion).minus(groundReference);
    }

    /**
     * What to cut off the tip, {@code T}.
     *
     * @return the trim; negative if it cannot be made
     */
    public Length trim() {
        return chart.plus(correction());
    }

    /**
     * The piece that falls off: the kerf lies inside the waste.
     *
     * @return trim less kerf; zero where there is nothing but dust, because the trim is no wider than the kerf and is ground off
     */
    public Length offcut() {
        return trim().minus(kerf).max(Length.ZERO);
    }

    @Override
    public List<Term> headline() {
        return List.of(
                Term.of("G", "bore bottom to ground", bottomToGround),
                Term.atMost("T", "tip trim", trim()),
                Term.of("o", "tip offcut", offcut()));
    }

    /** The trim that the parts ask for, chart and kerf as they are; how well it is cut is no part of it. */
    private TipTrim again(Build build) {
        Head head = build.parts().head();
        return new TipTrim(
                chart,
                head.bottomToGround(),
                head.bore().depth(),
                build.work().seat().insertion(),
                groundReference,
                kerf);
    }

    @Override
    public List<Measure> measures() {
        return List.of(
                Measure.length(
                        "G", "bore bottom to ground", build -> again(build).bottomToGround()),
                Measure.length("T", "tip trim", build -> again(build).trim()),
                Measure.length("o", "tip offcut", build -> again(build).offcut()));
    }

    @Override
    public Working working() {
        Term trim = Term.of("T", "tip trim", trim());
        return new Working(
                "Tip trim",
                List.of(
                        new Working.Line(
                                trim,
                                "chart + (G + B - i) - G_ref",
                                List.of(
                                        Term.of("chart", "what the chart says", chart),
                                        Term.of("G", "bore bottom to ground", bottomToGround),
                                        Term.of("B", "bore depth", boreDepth),
                                        Term.of("i", "insertion", insertion),
                                        Term.of("G_ref", "bore bottom to ground the chart assumes", groundReference)),
                                Source.assumption("the same shaft station at the same height over the ground")),
                        new Working.Line(
                                Term.of("o", "offcut", offcut()),
                                "max(T - k, 0)",
                                List.of(trim, Term.of("k", "kerf", kerf)),
                                Source.assumption("the kerf lies inside the waste"))));
    }

    @Override
    public List<Operation> operations() {
        if (trim().nanometres() <= 0) {
            return List.of();
        }
        Term trim = Term.atMost("T", "tip trim", trim());
        return List.of(
                trim().moreThan(kerf)
                        ? Operation.of(
                                BenchStage.TIP_CUT,
                                TrimInstruction.CUT_TIP,
                                trim,
                                Term.of("k", "kerf", kerf),
                                Term.of("o", "offcut", offcut()))
                        : Operation.of(BenchStage.TIP_CUT, TrimInstruction.GRIND_TIP, trim));
    }

    @Override
    public List<Caution> cautions() {
        return List.of(Caution.CUTTING, Caution.COMPOSITE_DUST, Caution.MAKERS_WORD);
    }

    /**
     * This one with another value in one place.
     *
     * @param chart what the chart says; zero or more
     * @return a copy that differs in that alone
     */
    public TipTrim withChart(Length chart) {
        return new TipTrim(chart, bottomToGround, boreDepth, insertion, groundReference, kerf);
    }

    /**
     * This one with another value in one place.
     *
     * @param bottomToGround bore bottom to ground ({@code G})
     * @return a copy that differs in that alone
     */
    public TipTrim withBottomToGround(Length bottomToGround) {
        return new TipTrim(chart, bottomToGround, boreDepth, insertion, groundReference, kerf);
    }

    /**
     * This one with another value in one place.
     *
     * @param boreDepth depth of the bore ({@code B}); above zero
     * @return a copy that differs in that alone
     */
    public TipTrim withBoreDepth(Length boreDepth) {
        return new TipTrim(chart, bottomToGround, boreDepth, insertion, groundReference, kerf);
    }

    /**
     * This one with another value in one place.
     *
     * @param insertion planned insertion ({@code i}); zero to the depth of the bore
     * @return a copy that differs in that alone
     */
    public TipTrim withInsertion(Length insertion) {
        return new TipTrim(chart, bottomToGround, boreDepth, insertion, groundReference, kerf);
    }

    /**
     * This one with another value in one place.
     *
     * @param groundReference bore bottom to ground the chart assumes ({@code G_ref})
     * @return a copy that differs in that alone
     */
    public TipTrim withGroundReference(Length groundReference) {
        return new TipTrim(chart, bottomToGround, boreDepth, insertion, groundReference, kerf);
    }

    /**
     * This one with another value in one place.
     *
     * @param kerf width of the saw cut ({@code k}); zero or more
     * @return a copy that differs in that alone
     */
    public TipTrim withKerf(Length kerf) {
        return new TipTrim(chart, bottomToGround, boreDepth, insertion, groundReference, kerf);
    }
}

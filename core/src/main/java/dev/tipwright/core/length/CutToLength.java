package dev.tipwright.core.length;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.cut.CutSheet;
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
import java.util.ArrayList;
import java.util.List;

/**
 * A cut to length and how it came about: {@code S = L - g - (B - i) - G} and {@code U = R - T - S}.
 *
 * <pre>{@code
 * CutToLength cut = new CutToLength(Length.parse("37 1/2 in"), Length.parse("1/8 in"), Length.parse("1 1/4 in"),
 *         Length.parse("1 1/4 in"), Length.parse("1 in"), Length.parse("39 in"), Length.parse("1/2 in"), Length.parse("1/16 in"));
 * cut.cutLength().inches();   // = 36.375
 * cut.buttTrim().inches();    // = 2.125
 * cut.offcut().inches();      // = 2.0625
 * }</pre>
 *
 * A negative butt trim means that the shaft is too short for the length.
 *
 * @param target wanted playing length along the axis ({@code L}); above zero
 * @param buttFromTop grip cap, and extension if there is one ({@code g}); zero or more
 * @param boreDepth depth of the bore ({@code B}); above zero
 * @param insertion insertion ({@code i}); zero to the depth of the bore
 * @param bottomToGround bore bottom to ground ({@code G})
 * @param rawLength raw length of the shaft ({@code R}); above zero
 * @param tipTrim tip trim ({@code T}); zero or more
 * @param kerf width of the saw cut ({@code k}); zero or more
 */
public record CutToLength(
        Length target,
        Length buttFromTop,
        Length boreDepth,
        Length insertion,
        Length bottomToGround,
        Length rawLength,
        Length tipTrim,
        Length kerf)
        implements StepReport {

    /**
     * Checks the values.
     *
     * @param target wanted playing length along the axis ({@code L}); above zero
     * @param buttFromTop grip cap, and extension if there is one ({@code g}); zero or more
     * @param boreDepth depth of the bore ({@code B}); above zero
     * @param insertion insertion ({@code i}); zero to the depth of the bore
     * @param bottomToGround bore bottom to ground ({@code G})
     * @param rawLength raw length of the shaft ({@code R}); above zero
     * @param tipTrim tip trim ({@code T}); zero or more
     * @param kerf width of the saw cut ({@code k}); zero or more
     */
    public CutToLength {
        Require.positive("target", target);
        Require.notNegative("buttFromTop", buttFromTop);
        Require.positive("boreDepth", boreDepth);
        Require.atMost("insertion", Require.notNegative("insertion", insertion), "boreDepth", boreDepth);
        Require.given("bottomToGround", bottomToGround);
        Require.positive("rawLength", rawLength);
        Require.notNegative("tipTrim", tipTrim);
        Require.notNegative("kerf", kerf);
    }

    /**
     * The shaft as it is to be cut, {@code S}.
     *
     * @return length from tip to butt
     */
    public Length cutLength() {
        return target.minus(buttFromTop).minus(boreDepth.minus(insertion)).minus(bottomToGround);
    }

    /**
     * What to cut off the butt, {@code U}.
     *
     * @return the trim; negative if the shaft is too short
     */
    public Length buttTrim() {
        return rawLength.minus(tipTrim).minus(cutLength());
    }

    /**
     * The piece that falls off: the kerf lies inside the waste.
     *
     * @return butt trim less kerf; zero where there is nothing but dust
     */
    public Length offcut() {
        return buttTrim().minus(kerf).max(Length.ZERO);
    }

    /**
     * The longest playing length the trimmed shaft gives, with nothing cut off its butt.
     *
     * @return the target plus the butt trim
     */
    public Length longest() {
        return target.plus(buttTrim());
    }

    @Override
    public List<Term> headline() {
        return List.of(
                Term.of("L", "playing length", longest().min(target)),
                Term.atLeast("S", "cut length", cutLength()),
                Term.atMost("U", "butt trim", buttTrim()));
    }

    /** The cut that the parts ask for, target and kerf as they are. */
    private CutToLength again(Build build) {
        Head head = build.parts().head();
        return new CutToLength(
                target,
                build.buttFromTop(),
                head.bore().depth(),
                build.work().seat().insertion(),
                head.bottomToGround(),
                build.parts().shaft().length(),
                build.work().tipTrim(),
                kerf);
    }

    /**
     * Playing length as it comes out of parts and cuts; cut length and butt trim as the parts ask for.
     *
     * @return the measures
     */
    @Override
    public List<Measure> measures() {
        return List.of(
                Measure.length("L", "playing length", PlayingLength::alongAxis),
                Measure.length("S", "cut length", build -> again(build).cutLength()),
                buttTrimMeasure());
    }

    /**
     * The butt trim that parts and tip cut ask for, so that it can have a budget.
     *
     * @return the measure
     */
    public Measure buttTrimMeasure() {
        return Measure.length("U", "butt trim", build -> again(build).buttTrim());
    }

    @Override
    public Working working() {
        Term cut = Term.of("S", "cut length", cutLength());
        Term cap = Term.of("g", "grip cap", buttFromTop);
        Term bore = Term.of("B", "bore depth", boreDepth);
        Term in = Term.of("i", "insertion", insertion);
        Term ground = Term.of("G", "bore bottom to ground", bottomToGround);
        Term trim = Term.of("U", "butt trim", buttTrim());
        Source alongAxis = Source.assumption("length along the shaft axis, top of grip to ground");
        return new Working(
                "Cut to length",
                List.of(
                        new Working.Line(
                                cut,
                                "L - g - (B - i) - G",
                                List.of(Term.of("L", "playing length", target), cap, bore, in, ground),
                                alongAxis),
                        new Working.Line(
                                trim,
                                "R - T - S",
                                List.of(Term.of("R", "raw length", rawLength), Term.of("T", "tip trim", tipTrim), cut),
                                Source.assumption("the pieces of a shaft add up to the shaft")),
                        new Working.Line(
                                Term.of(
                                        "v",
                                        "mark above the hosel mouth",
                                        cutLength().minus(insertion)),
                                "S - i",
                                List.of(cut, in),
                                Source.assumption("the insertion is hidden in the hosel")),
                        new Working.Line(
                                Term.of("o", "offcut", offcut()),
                                "max(U - k, 0)",
                                List.of(trim, Term.of("k", "kerf", kerf)),
                                Source.assumption("the kerf lies inside the waste")),
                        new Working.Line(
                                Term.of("L", "playing length as cut", longest().min(target)),
                                "g + S + min(U, 0) + (B - i) + G",
                                List.of(cap, cut, trim, bore, in, ground),
                                alongAxis)));
    }

    @Override
    public List<Operation> operations() {
        Length buttTrim = buttTrim();
        Term trim = Term.atMost("U", "butt trim", buttTrim);
        Term cut = Term.atLeast("S", "cut length", cutLength());
        Term above =
                Term.atLeast("v", "shaft above the hosel mouth", cutLength().minus(insertion));
        List<Operation> operations = new ArrayList<>();
        if (buttTrim.nanometres() > 0 && tipTrim.nanometres() > 0 && cutLength().nanometres() > 0) {
            operations.add(markOut(trim, cut));
        }
        if (buttTrim.moreThan(kerf)) {
            operations.add(Operation.of(
                    BenchStage.BUTT_CUT,
                    LengthInstruction.CUT_BUTT,
                    above,
                    trim,
                    cut,
                    Term.of("k", "kerf", kerf),
                    Term.of("o", "offcut", offcut())));
        } else if (buttTrim.nanometres() > 0) {
            operations.add(Operation.of(BenchStage.BUTT_CUT, LengthInstruction.GRIND_BUTT, above, trim, cut));
        }
        operations.add(
                Operation.of(BenchStage.GRIP, LengthInstruction.FIT_GRIP, Term.of("g", "grip cap", buttFromTop)));
        operations.add(Operation.of(
                BenchStage.CHECK,
                LengthInstruction.MEASURE_LENGTH,
                Term.of("L", "playing length", longest().min(target))));
        return operations;
    }

    private Operation markOut(Term trim, Term cut) {
        CutSheet sheet = sheet();
        return Operation.of(
                BenchStage.MARK,
                LengthInstruction.MARK_OUT,
                Term.of("R", "raw length", rawLength),
                Term.atMost("T", "tip trim", tipTrim),
                Term.atLeast("Tb", "tip mark from the raw butt", sheet.tip().fromButt()),
                trim,
                Term.atLeast("Ut", "butt mark from the raw tip", sheet.butt().fromTip()),
                cut);
    }

    /**
     * How the shaft is cut up.
     *
     * @return the sheet
     * @throws IllegalArgumentException if the shaft is too short for the length, or the length leaves no shaft
     */
    public CutSheet sheet() {
        Length butt = buttTrim();
        Require.that(
                butt.nanometres() >= 0 && cutLength().nanometres() > 0,
                "target",
                "must be within reach of the shaft",
                target);
        return new CutSheet(rawLength, tipTrim, butt, kerf);
    }

    @Override
    public List<Caution> cautions() {
        return List.of(Caution.CUTTING, Caution.COMPOSITE_DUST);
    }

    /**
     * This one with another value in one place.
     *
     * @param target wanted playing length along the axis ({@code L}); above zero
     * @return a copy that differs in that alone
     */
    public CutToLength withTarget(Length target) {
        return new CutToLength(target, buttFromTop, boreDepth, insertion, bottomToGround, rawLength, tipTrim, kerf);
    }

    /**
     * This one with another value in one place.
     *
     * @param buttFromTop grip cap, and extension if there is one ({@code g}); zero or more
     * @return a copy that differs in that alone
     */
    public CutToLength withButtFromTop(Length buttFromTop) {
        return new CutToLength(target, buttFromTop, boreDepth, insertion, bottomToGround, rawLength, tipTrim, kerf);
    }

    /**
     * This one with another value in one place.
     *
     * @param boreDepth depth of the bore ({@code B}); above zero
     * @return a copy that differs in that alone
     */
    public CutToLength withBoreDepth(Length boreDepth) {
        return new CutToLength(target, buttFromTop, boreDepth, insertion, bottomToGround, rawLength, tipTrim, kerf);
    }

    /**
     * This one with another value in one place.
     *
     * @param insertion insertion ({@code i}); zero to the depth of the bore
     * @return a copy that differs in that alone
     */
    public CutToLength withInsertion(Length insertion) {
        return new CutToLength(target, buttFromTop, boreDepth, insertion, bottomToGround, rawLength, tipTrim, kerf);
    }

    /**
     * This one with another value in one place.
     *
     * @param bottomToGround bore bottom to ground ({@code G})
     * @return a copy that differs in that alone
     */
    public CutToLength withBottomToGround(Length bottomToGround) {
        return new CutToLength(target, buttFromTop, boreDepth, insertion, bottomToGround, rawLength, tipTrim, kerf);
    }

    /**
     * This one with another value in one place.
     *
     * @param rawLength raw length of the shaft ({@code R}); above zero
     * @return a copy that differs in that alone
     */
    public CutToLength withRawLength(Length rawLength) {
        return new CutToLength(target, buttFromTop, boreDepth, insertion, bottomToGround, rawLength, tipTrim, kerf);
    }

    /**
     * This one with another value in one place.
     *
     * @param tipTrim tip trim ({@code T}); zero or more
     * @return a copy that differs in that alone
     */
    public CutToLength withTipTrim(Length tipTrim) {
        return new CutToLength(target, buttFromTop, boreDepth, insertion, bottomToGround, rawLength, tipTrim, kerf);
    }

    /**
     * This one with another value in one place.
     *
     * @param kerf width of the saw cut ({@code k}); zero or more
     * @return a copy that differs in that alone
     */
    public CutToLength withKerf(Length kerf) {
        return new CutToLength(target, buttFromTop, boreDepth, insertion, bottomToGround, rawLength, tipTrim, kerf);
    }
}

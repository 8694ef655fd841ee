package dev.tipwright.core.grip;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.evidence.Assumption;
import dev.tipwright.core.evidence.Source;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.evidence.Working;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.part.Grip;
import dev.tipwright.core.part.GripSize;
import dev.tipwright.core.part.Shaft;
import dev.tipwright.core.plan.BenchStage;
import dev.tipwright.core.plan.Operation;
import dev.tipwright.core.plan.StepReport;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A grip on its butt: the report of {@link GripStep}.
 *
 * <p>Between the highest station that was read and the raw butt the shaft is taken to be straight:
 * {@code db = d1 + (d2 - d1) (R - U - z1) / (R - z1)}, unless it was read up to there. A grip on a wider butt than it is moulded for
 * grows by as much as the butt is wider, {@code o + db + 2 n t - c}: common practice, no source. Rubber keeps its volume, so if it
 * keeps its length too it grows by less: {@code sqrt(o^2 + (db + 2 n t)^2 - c^2)}.
 *
 * <pre>{@code
 * TapeLayers tape = new TapeLayers(2, Length.parse(".005 in"), Mass.ofGrams(1.2));
 * GripFit fit = GripFit.of(Samples.build(), tape);
 * fit.mouthFromButt().inches();                   // = 10.375
 * fit.taped().minus(fit.butt()).thousandths();    // = 20.0
 * }</pre>
 *
 * @param butt diameter of the butt at the cut ({@code db})
 * @param buttAssumed whether it was worked out between readings and not read
 * @param tape the layers under the grip
 * @param grip the grip
 * @param mouthFromButt mouth of the grip below the butt, along the shaft; below zero for a grip that is all cap
 * @param bareBelow bare shaft between the mouth of the grip and the hosel; below zero for a grip that reaches past it
 */
public record GripFit(
        Length butt, boolean buttAssumed, TapeLayers tape, Grip grip, Length mouthFromButt, Length bareBelow)
        implements StepReport {

    /**
     * Checks the values.
     *
     * @param butt diameter of the butt at the cut ({@code db}); above zero, at most 100 mm
     * @param buttAssumed whether it was worked out between readings and not read
     * @param tape the layers under the grip
     * @param grip the grip
     * @param mouthFromButt mouth of the grip below the butt, along the shaft; below zero for a grip that is all cap
     * @param bareBelow bare shaft between the mouth of the grip and the hosel; below zero for a grip that reaches past it
     */
    public GripFit {
        Require.someUpTo("butt", butt, 100);
        Require.given("tape", tape);
        Require.given("grip", grip);
        Require.given("mouthFromButt", mouthFromButt);
        Require.given("bareBelow", bareBelow);
    }

    /**
     * The grip of a planned club.
     *
     * @param build the club with its butt trim
     * @param tape the layers under the grip
     * @return how it fits
     */
    public static GripFit of(Build build, TapeLayers tape) {
        Require.given("build", build);
        Shaft shaft = build.parts().shaft();
        Grip grip = build.parts().grip();
        Length place = shaft.length().minus(build.work().buttTrim());
        boolean read = build.work().buttTrim().equals(Length.ZERO)
                || !place.moreThan(shaft.section().outside().to());
        return new GripFit(
                buttAt(shaft, place),
                !read,
                tape,
                grip,
                grip.length().minus(build.buttFromTop()),
                build.mouthFromTop().minus(grip.length()));
    }

    private static Length buttAt(Shaft shaft, Length place) {
        DiameterProfile outside = shaft.section().outside();
        if (!place.moreThan(outside.to())) {
            return outside.diameterAt(place);
        }
        Length last = outside.diameterAt(outside.to());
        double share = place.minus(outside.to()).ratioTo(shaft.length().minus(outside.to()));
        return last.plus(shaft.section().butt().minus(last).scaledBy(share));
    }

    /**
     * The butt with the tape on it, {@code db + 2 n t}.
     *
     * @return a diameter
     */
    public Length taped() {
        return butt.plus(tape.onDiameter());
    }

    /**
     * How much wider the taped butt is than the grip is moulded for.
     *
     * @return on the diameter; below zero for a grip that will be loose; empty if the size of the grip is not known
     */
    public Optional<Length> overCore() {
        return grip.size().known().map(size -> taped().minus(size.core()));
    }

    /**
     * How wide the grip becomes at its widest, by common practice: as much wider as the butt is wider than its core.
     *
     * @return the diameter; empty if the size of the grip is not known
     */
    public Optional<Length> outside() {
        return grip.size().known().map(size -> size.outside().plus(taped().minus(size.core())));
    }

    /**
     * The least it can become: its rubber keeps its volume and its length.
     *
     * @return the diameter; empty if the size of the grip is not known
     */
    public Optional<Length> outsideOfSameVolume() {
        return grip.size().known().map(this::ofSameVolume);
    }

    private Length ofSameVolume(GripSize size) {
        double outside = size.outside().millimetres();
        double core = size.core().millimetres();
        double taped = taped().millimetres();
        return Length.ofMillimetres(Math.sqrt(outside * outside - core * core + taped * taped));
    }

    /**
     * What grip and tape weigh together.
     *
     * @return the mass
     */
    public Mass mass() {
        return grip.mass().plus(tape.total());
    }

    @Override
    public List<Term> headline() {
        List<Term> headline = new ArrayList<>();
        headline.add(Term.fine("db", "butt under the grip", butt));
        outside().ifPresent(outside -> headline.add(Term.fine("do", "grip, widest", outside)));
        headline.add(Term.of("mg", "grip and tape", mass()));
        return headline;
    }

    @Override
    public Working working() {
        Term taped = Term.fine("dt", "butt with its tape", taped());
        List<Working.Line> lines = new ArrayList<>();
        lines.add(new Working.Line(
                taped,
                "db + 2 * n * t",
                List.of(
                        Term.fine("db", "butt under the grip", butt),
                        Term.count("n", "layers of tape", tape.count()),
                        Term.fine("t", "thickness of a layer", tape.thickness())),
                Source.assumption("layers lie close, each once round")));
        grip.size()
                .known()
                .ifPresent(size -> lines.add(new Working.Line(
                        Term.fine("do", "grip, widest", outside().orElseThrow()),
                        "o + dt - c",
                        List.of(
                                Term.fine("o", "outside of the grip off the shaft", size.outside()),
                                taped,
                                Term.fine("c", "core of the grip", size.core())),
                        Source.commonPractice("a grip grows by as much as the butt is wider than its core"))));
        return new Working("Grip on its butt", lines);
    }

    @Override
    public List<Operation> operations() {
        List<Operation> operations = new ArrayList<>();
        operations.add(Operation.of(BenchStage.TAPE, GripInstruction.CALIPER_BUTT, Term.fine("db", "butt", butt)));
        if (tape.count() > 0) {
            operations.add(Operation.of(
                    BenchStage.TAPE,
                    GripInstruction.WIND_TAPE,
                    Term.count("n", "layers", tape.count()),
                    Term.of("b", "down from the butt", mouthFromButt),
                    Term.fine("dt", "butt with its tape", taped())));
        }
        operations.add(Operation.of(
                BenchStage.GRIP, GripInstruction.SEAT_GRIP, Term.of("b", "down from the butt", mouthFromButt)));
        return operations;
    }

    @Override
    public List<Assumption> assumptions() {
        List<Assumption> assumptions = new ArrayList<>();
        if (buttAssumed) {
            assumptions.add(new Assumption(
                    Term.fine("db", "butt under the grip", butt),
                    Source.assumption("straight from the highest station read to the raw butt")));
        }
        outside()
                .ifPresent(outside -> assumptions.add(new Assumption(
                        Term.fine("do", "grip, widest", outside),
                        Source.commonPractice("a grip grows by as much as the butt is wider than its core"))));
        return assumptions;
    }
}

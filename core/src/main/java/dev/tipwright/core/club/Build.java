package dev.tipwright.core.club;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.part.Attachments;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.quantity.Length;

/**
 * Parts and the work done or to be done to them. Everything else (the tip as it stands, length, balance) is a
 * function of the two.
 *
 * <pre>
 *   x:  0   g                                                   mouth        tip        ground
 *       |cap|--------------------- S -------------------------------------------|
 *       |grip                                                      |---- i ------|
 *                                                                  |------ B -------|-- G --|
 *                                                                  |----------- H ----------|
 * </pre>
 *
 * @param parts what was measured
 * @param work what is to be done; leaves some of the shaft, and seats the tip no deeper than the bore
 */
public record Build(Parts parts, Work work) {

    /**
     * Checks the values.
     *
     * @param parts what was measured
     * @param work what is to be done; leaves some of the shaft, and seats the tip no deeper than the bore
     */
    public Build {
        Require.given("parts", parts);
        Require.given("work", work);
        long trimmed =
                Math.addExact(work.tipTrim().nanometres(), work.buttTrim().nanometres());
        if (trimmed >= parts.shaft().length().nanometres()) {
            throw Require.broken(
                    "work",
                    "must leave some of the shaft's " + parts.shaft().length(),
                    "tip trim " + work.tipTrim() + ", butt trim " + work.buttTrim());
        }
        if (work.seat().insertion().moreThan(parts.head().bore().depth())) {
            throw Require.broken(
                    "work",
                    "must insert no deeper than the bore's "
                            + parts.head().bore().depth(),
                    work.seat().insertion());
        }
    }

    /**
     * Untouched parts.
     *
     * @param parts what was measured
     * @return the parts with no work on them
     */
    public static Build of(Parts parts) {
        return new Build(parts, Work.NONE);
    }

    /**
     * How the bench calls this club: the label of its head.
     *
     * @return a label
     */
    public String label() {
        return parts.head().label();
    }

    /**
     * The shaft as cut, {@code S = R - T - U}.
     *
     * @return length from tip to butt
     */
    public Length cutLength() {
        return parts.shaft().length().minus(work.tipTrim()).minus(work.buttTrim());
    }

    /**
     * Where the butt of the shaft lies: under the cap, and under an extension if there is one.
     *
     * @return distance from the top of the grip
     */
    public Length buttFromTop() {
        return parts.grip().cap().plus(Attachments.of(work.attached()).added());
    }

    /**
     * Where the end of the tip lies.
     *
     * @return distance from the top of the grip
     */
    public Length tipFromTop() {
        return buttFromTop().plus(cutLength());
    }

    /**
     * Where the hosel mouth lies.
     *
     * @return distance from the top of the grip
     */
    public Length mouthFromTop() {
        return tipFromTop().minus(work.seat().insertion());
    }

    /**
     * The outside of the trimmed tip as it was supplied, over its finish.
     *
     * @return the raw profile from the tip trim on
     */
    public DiameterProfile trimmedTip() {
        return parts.shaft().section().outside().trimmedFromStart(work.tipTrim());
    }

    /**
     * This one with another value in one place.
     *
     * @param parts what was measured
     * @return a copy that differs in that alone
     */
    public Build withParts(Parts parts) {
        return new Build(parts, work);
    }

    /**
     * This one with another value in one place.
     *
     * @param work what is to be done; leaves some of the shaft, and seats the tip no deeper than the bore
     * @return a copy that differs in that alone
     */
    public Build withWork(Work work) {
        return new Build(parts, work);
    }
}

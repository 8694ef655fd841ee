package dev.tipwright.fitcheck.insert;

import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.quantity.Length;
import java.util.List;

/**
 * All places where a tip touches its bore within a tolerance: where a twist leaves witness marks on both, and what they say.
 *
 * <pre>
 *   c(z) = D(i - z) - d(z) &lt;= t          over the inserted part that was read
 * </pre>
 *
 * <p>The worst diameters count where a reading is out of round, and at a step both sides of it, so that a shoulder that meets a
 * shoulder is a mark of no length. The place of first contact is always one. On a taper of rate {@code q} a cylinder touches over
 * {@code t / q}: the finer the look, the shorter the mark. Time grows as {@code n log n}.
 *
 * <pre>{@code
 * Bore bore = Bore.ofTwoDiameters(
 *         Length.parse(".363 in"), Length.parse(".355 in"), Length.parse("1 1/4 in"), BoreEnd.FLAT);
 * DiameterProfile tip = DiameterProfile.cylinder(Length.parse(".359 in"), Length.parse("8 in"));
 * WitnessMarks marks = WitnessMarks.of(tip, bore, Length.parse(".0004 in"));
 * marks.insertion().inches();                       // = 0.625
 * marks.marks().get(0).tipTo().inches();            // = 0.0625
 * marks.marks().get(0).boreFrom().inches();         // = 0.5625
 * marks.verdict().code();                           // = TOUCHES_AT_END
 * }</pre>
 *
 * @param insertion how far the tip is in ({@code i})
 * @param tolerance how near counts as touching, on the diameter ({@code t})
 * @param marks where they touch, from the end of the tip up
 * @param verdict what that says, in plain words
 */
public record WitnessMarks(Length insertion, Length tolerance, List<WitnessMark> marks, Finding verdict) {

    /**
     * Checks the values.
     *
     * @param insertion how far the tip is in
     * @param tolerance how near counts as touching
     * @param marks where they touch
     * @param verdict what that says
     */
    public WitnessMarks {
        Require.notNegative("insertion", insertion);
        Require.notNegative("tolerance", tolerance);
        marks = Require.list("marks", marks);
        Require.given("verdict", verdict);
    }

    /**
     * The marks of a tip pushed in until it first touches, or to the bottom.
     *
     * @param tip diameter up from the end of the tip
     * @param bore the bore
     * @param tolerance how near counts as touching, on the diameter; zero to 1 mm
     * @return the marks
     */
    public static WitnessMarks of(DiameterProfile tip, Bore bore, Length tolerance) {
        return at(tip, bore, FirstContact.of(tip, bore), tolerance);
    }

    /**
     * The marks of a tip that a stop holds at an insertion.
     *
     * @param tip diameter up from the end of the tip
     * @param bore the bore
     * @param insertion how far it is in; zero or more, at most the first contact
     * @param tolerance how near counts as touching, on the diameter; zero to 1 mm
     * @return the marks
     */
    public static WitnessMarks of(DiameterProfile tip, Bore bore, Length insertion, Length tolerance) {
        FirstContact contact = FirstContact.of(tip, bore);
        Require.between("insertion", insertion, Length.ZERO, contact.insertion());
        return insertion.equals(contact.insertion())
                ? at(tip, bore, contact, tolerance)
                : at(tip, bore, new FirstContact(insertion, Length.ZERO, FirstContact.Kind.CLEARS), tolerance);
    }

    private static WitnessMarks at(DiameterProfile tip, Bore bore, FirstContact contact, Length tolerance) {
        Require.within("tolerance", tolerance, 0, 1);
        List<WitnessMark> marks = new Touching(tip, bore, contact).within(tolerance);
        Length inserted = contact.insertion().min(tip.length());
        return new WitnessMarks(
                contact.insertion(),
                tolerance,
                marks,
                verdict(marks, contact, tolerance, inserted, Chamfer.depth(bore)));
    }

    private static Finding verdict(
            List<WitnessMark> marks, FirstContact contact, Length tolerance, Length inserted, Length chamfer) {
        Term in = Term.of("i", "insertion", contact.insertion());
        if (marks.isEmpty()) {
            return Finding.note(InsertCode.TOUCHES_NOWHERE, in, Term.fine("t", "tolerance", tolerance));
        }
        WitnessMark lowest = marks.get(0);
        return Finding.note(
                code(marks, inserted, chamfer),
                in,
                Term.of("n", "places", String.valueOf(marks.size())),
                Term.of("z1", "up the tip, from", lowest.tipFrom()),
                Term.of("z2", "up the tip, to", lowest.tipTo()),
                Term.of("y1", "down the bore, from", lowest.boreFrom()),
                Term.of("y2", "down the bore, to", lowest.boreTo()));
    }

    /** A mark is at the mouth if it reaches into the chamfer or to the edge of it. */
    private static InsertCode code(List<WitnessMark> marks, Length inserted, Length chamfer) {
        WitnessMark highest = marks.get(marks.size() - 1);
        boolean atEnd = marks.get(0).tipFrom().equals(Length.ZERO);
        boolean atMouth =
                !highest.boreFrom().moreThan(chamfer) || highest.tipTo().equals(inserted);
        if (marks.size() == 1) {
            if (atEnd) {
                return atMouth && highest.length().moreThan(Length.ZERO)
                        ? InsertCode.TOUCHES_ALL_ALONG
                        : InsertCode.TOUCHES_AT_END;
            }
            return atMouth ? InsertCode.TOUCHES_AT_MOUTH : InsertCode.TOUCHES_BETWEEN;
        }
        return marks.size() == 2 && atEnd && atMouth ? InsertCode.TOUCHES_AT_BOTH_ENDS : InsertCode.TOUCHES_IN_PLACES;
    }
}

package dev.tipwright.fitcheck.set;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.quantity.Length;

/**
 * A bore of a set, and how deep a tip is to sit in it.
 *
 * @param label its name in the set; not blank
 * @param bore the bore
 * @param insertion planned insertion ({@code i}); above zero, at most the depth of the bore
 */
public record LabelledBore(String label, Bore bore, Length insertion) {

    /**
     * Checks the values.
     *
     * @param label its name in the set
     * @param bore the bore
     * @param insertion planned insertion
     */
    public LabelledBore {
        Require.label("label", label);
        Require.given("bore", bore);
        Require.between("insertion", insertion, Length.ofNanometres(1), bore.depth());
    }

    /**
     * The same bore under another name.
     *
     * @param label its name in the set
     * @return a copy that differs in that alone
     */
    public LabelledBore withLabel(String label) {
        return new LabelledBore(label, bore, insertion);
    }

    /**
     * Another bore of the same name.
     *
     * @param bore the bore
     * @return a copy that differs in that alone
     */
    public LabelledBore withBore(Bore bore) {
        return new LabelledBore(label, bore, insertion);
    }

    /**
     * The same bore with another insertion.
     *
     * @param insertion planned insertion
     * @return a copy that differs in that alone
     */
    public LabelledBore withInsertion(Length insertion) {
        return new LabelledBore(label, bore, insertion);
    }
}

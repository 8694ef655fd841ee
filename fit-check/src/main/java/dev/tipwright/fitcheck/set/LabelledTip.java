package dev.tipwright.fitcheck.set;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.fitcheck.taper.TipSection;

/**
 * A tip of a set.
 *
 * @param label its name in the set; not blank
 * @param section the tip as it stands
 */
public record LabelledTip(String label, TipSection section) {

    /**
     * Checks the values.
     *
     * @param label its name in the set
     * @param section the tip as it stands
     */
    public LabelledTip {
        Require.label("label", label);
        Require.given("section", section);
    }

    /**
     * The same tip under another name.
     *
     * @param label its name in the set
     * @return a copy that differs in that alone
     */
    public LabelledTip withLabel(String label) {
        return new LabelledTip(label, section);
    }

    /**
     * Another tip of the same name.
     *
     * @param section the tip as it stands
     * @return a copy that differs in that alone
     */
    public LabelledTip withSection(TipSection section) {
        return new LabelledTip(label, section);
    }
}

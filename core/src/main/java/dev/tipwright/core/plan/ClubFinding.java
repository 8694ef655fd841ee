package dev.tipwright.core.plan;

import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.internal.arg.Require;

/**
 * A finding of a set review and the club it concerns.
 *
 * @param label of the club
 * @param finding what was found
 */
public record ClubFinding(String label, Finding finding) {

    /**
     * Checks the values.
     *
     * @param label of the club
     * @param finding what was found
     */
    public ClubFinding {
        Require.label("label", label);
        Require.given("finding", finding);
    }
}

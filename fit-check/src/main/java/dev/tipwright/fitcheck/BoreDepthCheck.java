package dev.tipwright.fitcheck;

import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.quantity.Length;
import java.util.List;

/**
 * The depth of a bore as a flat rod finds it now against what is known of the bore: old adhesive, a broken tip weight or swarf at the
 * bottom stop a tip as well as the bottom does.
 *
 * <pre>{@code
 * Bore bore = Bore.ofTwoDiameters(
 *         Length.parse(".363 in"), Length.parse(".355 in"), Length.parse("1 1/4 in"), BoreEnd.FLAT);
 * BoreDepthCheck check = new BoreDepthCheck(bore, Length.parse("1.15 in"), Length.parse(".02 in"));
 * check.missing().inches();             // = 0.1
 * check.usable().depth().inches();      // = 1.15
 * check.findings().get(0).severity();   // = CAUTION
 * }</pre>
 *
 * @param bore as it was read clean, or as its maker says
 * @param found depth a flat rod finds now; above zero, at most 3 m
 * @param within difference that is only the reading; zero or more
 */
public record BoreDepthCheck(Bore bore, Length found, Length within) {

    /**
     * Checks the values.
     *
     * @param bore as it was read clean, or as its maker says
     * @param found depth a flat rod finds now; above zero, at most 3 m
     * @param within difference that is only the reading; zero or more
     */
    public BoreDepthCheck {
        Require.given("bore", bore);
        Require.someUpTo("found", found, 3000);
        Require.notNegative("within", within);
    }

    /**
     * What the rod finds less than was known.
     *
     * @return the difference; below zero if the rod goes deeper
     */
    public Length missing() {
        return bore.depth().minus(found);
    }

    /**
     * The bore to plan with if nothing is cleaned out.
     *
     * @return the bore, no deeper than the rod found it
     */
    public Bore usable() {
        return bore.shallowedTo(found.min(bore.depth()));
    }

    /**
     * What the difference means.
     *
     * @return a finding, or none if the depths agree
     */
    public List<Finding> findings() {
        if (!missing().abs().moreThan(within)) {
            return List.of();
        }
        Term known = Term.of("B", "bore depth", bore.depth());
        Term now = Term.of("b", "found now", found);
        Term off = Term.of("x", "difference", missing().abs());
        if (missing().nanometres() > 0) {
            return List.of(Finding.caution(FitCode.BORE_NOT_CLEAR, known, now, off));
        }
        return List.of(Finding.caution(
                bore.end() == BoreEnd.CONE ? FitCode.ROD_IN_CONE : FitCode.BORE_DEEPER, known, now, off));
    }
}

package dev.tipwright.core.plan;

import dev.tipwright.core.evidence.Assumption;
import dev.tipwright.core.evidence.Caution;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.evidence.Working;
import dev.tipwright.core.uncertainty.Measure;
import java.util.List;

/**
 * What a step has to report: its own typed numbers, and on request how they came about, what is to be done at the bench, what was
 * assumed and what can hurt. Reports are values; nothing is worked out until it is asked for.
 */
public interface StepReport {

    /**
     * The few numbers a builder looks for first: they make the summary of the set and the table of the club.
     *
     * @return terms, in the order to print; may be empty
     */
    default List<Term> headline() {
        return List.of();
    }

    /**
     * How the numbers came about.
     *
     * @return one line a formula
     */
    Working working();

    /**
     * What is to be done at the bench, each with its place in bench order.
     *
     * @return the operations; may be empty
     */
    default List<Operation> operations() {
        return List.of();
    }

    /**
     * Assumed readings the numbers touched.
     *
     * @return what was assumed, with sources; may be empty
     */
    default List<Assumption> assumptions() {
        return List.of();
    }

    /**
     * Cautions that go with the operations.
     *
     * @return the cautions; may be empty
     */
    default List<Caution> cautions() {
        return List.of();
    }

    /**
     * The numbers that an uncertainty budget can be made of. Nothing is worked out until one is asked for.
     *
     * @return one for each headline number that can be worked out again from nudged parts, with the same symbol and
     *     meaning; may be empty
     */
    default List<Measure> measures() {
        return List.of();
    }
}

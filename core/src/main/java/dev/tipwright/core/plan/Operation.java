package dev.tipwright.core.plan;

import dev.tipwright.core.evidence.Templates;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.Units;
import java.util.List;

/**
 * One thing to do at the bench, with its numbers and its place in bench order.
 *
 * @param stage when it is done
 * @param instruction what is to be done
 * @param terms the numbers, by symbol
 */
public record Operation(BenchStage stage, Instruction instruction, List<Term> terms) {

    /**
     * Checks the values.
     *
     * @param stage when it is done
     * @param instruction what is to be done
     * @param terms the numbers, by symbol
     */
    public Operation {
        Require.given("stage", stage);
        Require.given("instruction", instruction);
        terms = Require.list("terms", terms);
    }

    /**
     * An operation.
     *
     * @param stage when it is done
     * @param instruction what is to be done
     * @param terms the numbers
     * @return the operation
     */
    public static Operation of(BenchStage stage, Instruction instruction, Term... terms) {
        return new Operation(stage, instruction, Require.all("terms", terms));
    }

    /**
     * Whether it cannot be undone.
     *
     * @return true if something is to be measured again before it
     */
    public boolean oneWay() {
        return !instruction.checkFirst().isEmpty();
    }

    /**
     * The operation in a sentence.
     *
     * @param units inch or metric
     * @return the instruction with the terms put in
     */
    public String text(Units units) {
        return Templates.fill(instruction.template(), terms, units);
    }

    /**
     * What to measure again before it.
     *
     * @param units inch or metric
     * @return a sentence; empty for work that can be undone
     */
    public String checkFirst(Units units) {
        return Templates.fill(instruction.checkFirst(), terms, units);
    }
}

package dev.tipwright.core.plan;

/**
 * What is to be done at the bench. Each module or package has one enum of these; the template says it in words with the
 * operation's terms put in by their symbols.
 */
public interface Instruction {

    /**
     * The code, the same in every version.
     *
     * @return the name of the enum constant
     */
    String name();

    /**
     * The sentence, with symbols of terms in braces.
     *
     * @return the template
     */
    String template();

    /**
     * What to measure again before it, and the reading at which to stop, for work that cannot be undone.
     *
     * @return a template; empty for work that can be undone
     */
    String checkFirst();
}

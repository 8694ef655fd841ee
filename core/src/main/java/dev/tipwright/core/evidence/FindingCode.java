package dev.tipwright.core.evidence;

/**
 * What kind of thing was found. Each module or package has one enum of these; the enum constant is the code, and its template
 * says it in words with the finding's terms put in by their symbols: {@code "bonded length {i} is under the limit {i_min}"}.
 */
public interface FindingCode {

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
}

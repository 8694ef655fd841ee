package dev.tipwright.core.offcut;

import dev.tipwright.core.evidence.FindingCode;

/** What a reading on an offcut can find. */
public enum OffcutCode implements FindingCode {
    /** The piece weighs about what was expected. */
    WEIGHED("the piece from {from} to {to} weighs {m} where {e} was expected: the weighed mass is used from now on"),
    /** The piece weighs so much more or less that one of the readings is doubtful. */
    WEIGHED_UNLIKE(
            "the piece from {from} to {to} weighs {m} where {e} was expected: weigh it again, and check from where it was cut;"
                    + " the weighed mass is used from now on"),
    /** No line density gives all the masses. */
    DOES_NOT_ADD_UP(
            "pieces that weigh {sum} together, and the rest, do not add up to a shaft of {M} that balances {b} from its tip:"
                    + " the readings were not used; weigh the pieces and the balance point again"),
    /** A wall or a finish was read. */
    THICKNESS_READ("the {what} reads {t} at {z} where {e} was expected: the reading is used from now on"),
    /** There was nothing to hold the reading against. */
    THICKNESS_LEARNT("the {what} reads {t} at {z}, where it was not known: the reading is used from now on"),
    /** A wall or a finish was read that is far from what was expected. */
    THICKNESS_UNLIKE(
            "the {what} reads {t} at {z} where {e} was expected: read it again; the reading is used from now on"),
    /** A wall that would leave no hole, or a finish as thick as the wall. */
    THICKNESS_IMPOSSIBLE(
            "a {what} of {t} at {z} does not go into a {limit} of {l}: the reading was not used; read it again");

    private final String template;

    OffcutCode(String template) {
        this.template = template;
    }

    @Override
    public String template() {
        return template;
    }
}

package dev.tipwright.core.evidence;

/**
 * The usual cautions of the bench, as data. They are reminders, not instructions: makers' instructions, local rules and a
 * qualified person come first, and this library checks numbers and certifies nothing.
 */
public enum Caution {
    /** Sanding or cutting fibre composite. */
    COMPOSITE_DUST("Composite dust harms lungs and skin: work with extraction and a fitted respirator, wear gloves,"
            + " and wipe up wet rather than blowing dust about."),
    /** Cut-off wheel, saw and belt. */
    CUTTING(
            "Cut-off wheel and belt: eye protection, nothing loose near the machine, hands and work held clear and firm."),
    /** Heat to pull a shaft or a ferrule. */
    HEAT(
            "Heat softens old adhesive and burns skin, finish and composite: heat the hosel, not the shaft, and ventilate."),
    /** Epoxy before it has cured. */
    ADHESIVE(
            "Uncured adhesive irritates and sensitises skin: gloves, fresh air, and the maker's mixing, temperature and"
                    + " full cure time before a ball is hit."),
    /** What a bad joint does. */
    HEAD_CAN_COME_OFF("A head that comes off in play can hurt someone: a short, loose, dirty or half-cured joint is not"
            + " to be hit. Pull and twist by hand first, and let a qualified person judge a doubtful one."),
    /** Lead in tape and powder. */
    LEAD("Lead tape and powder are poisonous: gloves, no sanding, wash hands, keep from children."),
    /** Shaft makers allow some tips to be tapered and forbid others. */
    MAKERS_WORD(
            "Whether a tip may be trimmed this far, tapered or drilled is the maker's word: ask before the first cut.");

    private final String text;

    Caution(String text) {
        this.text = text;
    }

    /**
     * The caution in words.
     *
     * @return one or two sentences
     */
    public String text() {
        return text;
    }
}

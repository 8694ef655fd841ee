package dev.tipwright.fitcheck;

import dev.tipwright.core.plan.Instruction;

/** What is to be done to fit a tip to its bore. */
public enum FitInstruction implements Instruction {
    /** Take the finish off. */
    STRIP(
            "Strip the finish {s} up from the end of the tip, down to the structure and no further; where a finding asks for more"
                    + " under the ferrule, strip as far as it says.",
            "Caliper as you go. Stop when the end of the tip reads {b} or the colour ends, whichever is first; fibres that show were"
                    + " structure."),
    /** Work the tip down. */
    WORK_DOWN(
            "Work the tip down by {e} at its end, fading out towards {i}, a little at a time and turning it all the while, to the"
                    + " diameters below.",
            "Caliper every station below before every pass. Where one reads its finished diameter, stop there: what is off stays off."),
    /** Work the tip down where the most comes off further up than its end. */
    WORK_DOWN_FURTHER_UP(
            "Work the tip down by {em} at {zm} from its end, where the most comes off, and by {e} at its end, fading out towards {i}, a"
                    + " little at a time and turning it all the while, to the diameters below.",
            "Caliper every station below before every pass. Where one reads its finished diameter, stop there: what is off stays off."),
    /** One station of the finished shape. */
    STATION("Finished diameter {f} at {z} from the end of the tip.", ""),
    /** A stop on the way, where depth tells. */
    STOP("Stop with {e} still to come off: the tip should then go in {i}. If it goes in further, more is off.", ""),
    /** A stop on the way, where the tip is seated and depth tells nothing. */
    STOP_SEATED("Stop with {e} still to come off: it goes all the way in from here on, so caliper the stations.", ""),
    /** Try the fit. */
    TRY_FIT("Dry fit: the tip seats {i} deep and turns freely, {c} loose on the diameter.", ""),
    /** Bond and cure. */
    BOND(
            "Roughen and clean tip and bore, put the ferrule on, coat both with adhesive, turn the tip in until it is seated {i} deep,"
                    + " line up, and let it cure as the adhesive's maker says.",
            "Mark the shaft {i} up from the end of the tip and seat it dry: bond only if the mark meets the hosel mouth, for a joint that"
                    + " has cured short stays short.");

    private final String template;
    private final String checkFirst;

    FitInstruction(String template, String checkFirst) {
        this.template = template;
        this.checkFirst = checkFirst;
    }

    @Override
    public String template() {
        return template;
    }

    @Override
    public String checkFirst() {
        return checkFirst;
    }
}

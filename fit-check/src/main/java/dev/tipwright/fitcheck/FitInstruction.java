package dev.tipwright.fitcheck;

import dev.tipwright.core.plan.Instruction;

/** What is to be done to fit a tip to its bore. */
public enum FitInstruction implements Instruction {
    /** Take the finish off. */
    STRIP(
            "Strip the finish {s} up from the end of the tip, down to the structure and no further.",
            "Caliper the stripped tip: it should read {b}. Stop when colour ends; fibres that show were structure."),
    /** Work the tip down. */
    WORK_DOWN(
            "Work the tip down by {e} at its end, fading out towards {i}, a little at a time and turning it all the while.",
            "Measure before every pass. Stop at once if any station reads its finished diameter: what is off stays off."),
    /** One station of the finished shape. */
    STATION("Finished diameter {f} at {z} from the end of the tip.", ""),
    /** Try the fit. */
    TRY_FIT("Dry fit: the tip seats {i} deep and turns freely, {c} loose on the diameter.", ""),
    /** Bond and cure. */
    BOND(
            "Roughen and clean tip and bore, put the ferrule on, coat both with adhesive, turn the tip in until it is seated {i} deep,"
                    + " line up, and let it cure as the adhesive's maker says.",
            "Mark the shaft {i} up from the end of the tip before any adhesive: bond only if the mark meets the hosel mouth.");

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

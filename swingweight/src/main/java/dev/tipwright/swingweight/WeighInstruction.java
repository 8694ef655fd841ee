package dev.tipwright.swingweight;

import dev.tipwright.core.plan.Instruction;

/** What is to be done to bring a club to its swing weight. */
public enum WeighInstruction implements Instruction {
    /** Put the upper of two tip weights in. */
    FIT_UPPER_WEIGHT(
            "Put tip weight {weight}, {m}, into the tip first: it stands on the next one, its centre {z} above the end of the tip.",
            ""),
    /** Put a tip weight with a flange in, before the tip is tried in the bore. */
    FIT_FLANGED_WEIGHT(
            "Put tip weight {weight}, {m}, into the tip before the dry fit: its flange lies under the end of the tip. No adhesive"
                    + " before the club is weighed.",
            ""),
    /** Put a tip weight in. */
    FIT_TIP_WEIGHT("Put tip weight {weight}, {m}, into the tip for the dry build; weigh before any adhesive.", ""),
    /** Weigh the finished club. */
    WEIGH(
            "Weigh the finished club: it should read {reads}, weigh {total} and balance {x} from the top of the grip.",
            "");

    private final String template;
    private final String checkFirst;

    WeighInstruction(String template, String checkFirst) {
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

package dev.tipwright.fitcheck.used;

import dev.tipwright.core.evidence.FindingCode;

/** What a used part can show. */
public enum UsedCode implements FindingCode {
    /** Some of the raw tip is gone. */
    TIP_SHORTENED(
            "the tip is {x} shorter than it was raw: that much of any tip trim counted from the raw tip is done already"),
    /** The tip was worked before. */
    TIP_WORKED("the tip was worked before: {x} is off its diameter {z} up from its end, {xs} of it structure"),
    /** Old adhesive is on the tip. */
    CRUST_ON_TIP(
            "up to {k} of crust is on the tip, {z} up from its end, so its diameters are worked out and not read: take the crust off by"
                    + " hand, with little heat and no fibre, and caliper again"),
    /** Wider than raw. */
    WIDER_THAN_RAW(
            "less its crust the tip reads {x} wider than it was raw, {z} up from its end: some crust is left, or it is another shaft"),
    /** No wall would be left. */
    NO_WALL_LEFT(
            "by these readings no wall is left {z} up from the end of the tip: read outside and wall again, and do not use the tip before"),
    /** Nothing came out of the bore. */
    BORE_AS_BEFORE("cleaned, the bore reads as it did before, within {u}"),
    /** Something came out of the bore. */
    CRUST_OUT(
            "up to {k} of crust came out of the bore, {y} down, and {x} of depth was gained: plan with the readings taken since"),
    /** The bore reads narrower, or less deep, than before. */
    READS_LESS("cleaned, the bore reads {x} less than before at {y}: swarf is in it, or one of the two was misread"),
    /** Metal is gone. */
    WIDER_THAN_KNOWN(
            "the bore reads {x} wider than it is known to be, {y} down: metal came out with the crust, or it was opened before; check the"
                    + " wall of the hosel");

    private final String template;

    UsedCode(String template) {
        this.template = template;
    }

    @Override
    public String template() {
        return template;
    }
}

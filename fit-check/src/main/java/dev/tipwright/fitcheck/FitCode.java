package dev.tipwright.fitcheck;

import dev.tipwright.core.evidence.FindingCode;

/** What the fit of a tip in its bore can find. */
public enum FitCode implements FindingCode {
    /** Nothing stops the tip in a through bore. */
    NO_STOP("the bore goes through and nothing stops the tip: set a mark or a stop at the wanted insertion first"),
    /** The tip was not measured far enough up. */
    TIP_NOT_READ("the trimmed tip was measured only {z} up, short of the insertion of {i}: measure further up"),
    /** The finish cannot be as thick as it was read. */
    FINISH_TOO_THICK("the finish was read as thick as the tip itself: measure finish and tip again"),
    /** The bore is narrower than the clearance that is wanted in it. */
    BORE_TOO_NARROW("a clearance of {w} leaves no tip in a bore of {D}"),
    /** The untouched tip stops in the chamfer. */
    STOPS_IN_CHAMFER("untouched, the tip goes in only {i0} and stops in the chamfer; with its finish off, {i1}"),
    /** The untouched tip stops on the way. */
    STOPS_ON_THE_WAY("untouched, the tip goes in {i0} and binds {z} up from its end; with its finish off, {i1}"),
    /** No structure has to come off. */
    ENTERS("with its finish off the tip goes in all the way; nothing of its structure has to come off"),
    /** Bare, the tip goes in, but tighter than wanted. */
    ENTERS_TIGHT(
            "with its finish off the tip goes in all the way, but tighter than the {w} that is wanted: some structure has to"
                    + " come off all the same"),
    /** Bare, the tip is looser than wanted. */
    LOOSE(
            "bare, the tip has {c} of clearance at its tightest where {w} is wanted: a shim or another blank, not more adhesive"),
    /** Part of the stock is finish. */
    PARTLY_FINISH("of the {e} to take off the end of the tip, {ef} is finish and {es} is structure"),
    /** The insertion is under the caller's limit. */
    SHORT_INSERTION("the insertion, {i}, is under the limit of {imin}"),
    /** The caller gave no limit for the insertion. */
    NO_INSERTION_LIMIT("no least insertion was given for an insertion of {i}: ask {ask}"),
    /** The wall left is under the caller's limit. */
    THIN_WALL("the wall of structure left, {t} at {z} from the end, is under the limit of {tmin}"),
    /** The caller gave no limit for the wall left. */
    NO_WALL_LIMIT("no least wall was given where {t} of structure is left: ask {ask}"),
    /** The wall is unknown. */
    WALL_UNKNOWN("the wall is not known, so nothing can be said of what is left of it: ask {ask}"),
    /** The finish is unknown. */
    FINISH_UNKNOWN("the finish is not known and counts as none, so all stock counts as structure: ask {ask}"),
    /** A density is unknown. */
    DENSITY_UNKNOWN("a density is not known, so what comes off the tip counts as weighing nothing"),
    /** A ferrule that does not go over the finish. */
    FERRULE_OVER_FINISH(
            "the bore of {ferrule}, {df}, is smaller than the shaft over its finish, {d}, and larger than the bare shaft:"
                    + " strip on to {s} up from the end of the tip, to where the ferrule ends and no further, or the bare shaft shows"),
    /** A ferrule that does not go over the bare shaft either. */
    FERRULE_TOO_SMALL(
            "the bore of {ferrule}, {df}, is smaller than the bare shaft, {d}: open the ferrule or take another, and"
                    + " do not sand the shaft for it"),
    /** The mouth of the bore is chamfered. */
    CHAMFER_HOLDS_NOTHING(
            "the chamfer at the mouth is {ch} deep and holds nothing: of the insertion of {i}, {ib} bonds"),
    /** The insertion meets the limit only by the chamfer. */
    SHORT_BELOW_CHAMFER(
            "the insertion of {i} meets the limit of {imin}, but below the chamfer only {ib} bonds: ask {ask} which is meant"),
    /** A drilled bore. */
    CONE_AT_BOTTOM(
            "the bore ends in the cone of a drill: the tip stops where the full diameter ends, {B} down; a pointed rod reads more"
                    + " than that"),
    /** Something lies at the bottom. */
    BORE_NOT_CLEAR(
            "the bore is known to be {B} deep and a rod finds {b}: clean out what fills {x} of it, or plan with {b}"),
    /** The rod goes deeper than the bore. */
    BORE_DEEPER(
            "the bore is known to be {B} deep and a rod finds {b}, {x} more: read its depth and its diameters again"),
    /** The rod goes into the cone. */
    ROD_IN_CONE(
            "a rod finds {b}, {x} more than the {B} of full diameter: it stands in the cone of the drill, where no tip goes; plan"
                    + " with {B}"),
    /** Pins cannot see what lies below a narrow place. */
    PINS_SEE_LEAST("the bore was read with pins: below a narrow place it may be wider than they show"),
    /** More to take off than its neighbours in the set, and the difference is finish. */
    MORE_FINISH_THAN_SET(
            "{x} more to take off than the middle of its blank, and {xf} of that is finish: it looks alarming and is not"),
    /** More structure to take off than its neighbours in the set. */
    MORE_STRUCTURE_THAN_SET("{x} more structure to take off than the middle of its blank: measure tip and bore again"),
    /** A limit is kept by less than the uncertainty. */
    LIMIT_KEPT_BY_LITTLE(
            "{what}, {v}, keeps its limit of {min}, but is known only to {U}: kept only within its uncertainty"),
    /** First order does not describe how uncertain a number is. */
    FIRST_ORDER_MISLEADS(
            "{what}, {v}, bends or jumps with {input}: to first order it is known to {U}, but by trials it lies from {low} to {high};"
                    + " go by the trials");

    private final String template;

    FitCode(String template) {
        this.template = template;
    }

    @Override
    public String template() {
        return template;
    }
}

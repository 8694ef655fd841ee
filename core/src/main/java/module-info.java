/**
 * The ground of Tipwright: quantities, profiles, parts, clubs, evidence, tip trim, length, mass, and the vocabulary of planning.
 */
@SuppressWarnings("module") // the two modules that see the internals are compiled after this one
module dev.tipwright.core {
    exports dev.tipwright.core.club;
    exports dev.tipwright.core.cut;
    exports dev.tipwright.core.evidence;
    exports dev.tipwright.core.flex;
    exports dev.tipwright.core.grip;
    exports dev.tipwright.core.length;
    exports dev.tipwright.core.mass;
    exports dev.tipwright.core.match;
    exports dev.tipwright.core.offcut;
    exports dev.tipwright.core.orient;
    exports dev.tipwright.core.part;
    exports dev.tipwright.core.plan;
    exports dev.tipwright.core.profile;
    exports dev.tipwright.core.quantity;
    exports dev.tipwright.core.rules;
    exports dev.tipwright.core.trim;
    exports dev.tipwright.core.uncertainty;
    exports dev.tipwright.core.internal.arg to
            dev.tipwright.fitcheck,
            dev.tipwright.swingweight;
    exports dev.tipwright.core.internal.assign to
            dev.tipwright.fitcheck,
            dev.tipwright.swingweight;
    exports dev.tipwright.core.internal.root to
            dev.tipwright.fitcheck,
            dev.tipwright.swingweight;
    exports dev.tipwright.core.internal.shape to
            dev.tipwright.fitcheck,
            dev.tipwright.swingweight;
    exports dev.tipwright.core.internal.svg to
            dev.tipwright.fitcheck,
            dev.tipwright.swingweight;
    exports dev.tipwright.core.internal.text to
            dev.tipwright.fitcheck,
            dev.tipwright.swingweight;
}

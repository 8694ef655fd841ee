/** Tip in bore: how far a tip goes in, what clearance it leaves, and what has to come off to make it fit. */
module dev.tipwright.fitcheck {
    requires transitive dev.tipwright.core;

    exports dev.tipwright.fitcheck;
    exports dev.tipwright.fitcheck.bond;
    exports dev.tipwright.fitcheck.draw;
    exports dev.tipwright.fitcheck.insert;
    exports dev.tipwright.fitcheck.limits;
    exports dev.tipwright.fitcheck.other;
    exports dev.tipwright.fitcheck.set;
    exports dev.tipwright.fitcheck.taper;
    exports dev.tipwright.fitcheck.used;
}

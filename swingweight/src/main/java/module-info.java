/** Balance, swing weight and inertia of a club, and the weight that brings it to a target. */
module dev.tipwright.swingweight {
    requires transitive dev.tipwright.core;

    exports dev.tipwright.swingweight;
    exports dev.tipwright.swingweight.balance;
    exports dev.tipwright.swingweight.scale;
    exports dev.tipwright.swingweight.aim;
    exports dev.tipwright.swingweight.learn;
    exports dev.tipwright.swingweight.set;
}

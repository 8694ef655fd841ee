package dev.tipwright.fitcheck.taper;

import dev.tipwright.core.internal.shape.Polyline;
import dev.tipwright.core.quantity.Length;

/** What is left of the tube when the tip is worked down, at the worst place and at the hosel mouth. */
record SectionLeft(Length leastWall, Length leastWallAt, double leastStiffness, double stiffnessAtMouth) {

    static SectionLeft of(Polyline inside, Polyline bare, Polyline worked, double length) {
        Polyline twiceWall = worked.plus(inside, -1);
        int thinnest = twiceWall.least();
        double leastStiffness = Double.MAX_VALUE;
        for (int i = 0; i < twiceWall.size(); i++) {
            double z = twiceWall.at(i);
            double below = share(worked.before(z), bare.before(z), inside.before(z));
            double above = share(worked.after(z), bare.after(z), inside.after(z));
            leastStiffness = Math.min(leastStiffness, Math.min(below, above));
        }
        return new SectionLeft(
                Length.ofMillimetres(twiceWall.value(thinnest) / 2),
                Length.ofMillimetres(twiceWall.at(thinnest)),
                leastStiffness,
                share(worked.before(length), bare.before(length), inside.before(length)));
    }

    /** {@code (f^4 - b^4) / (s^4 - b^4)}; nothing is left where the wall is gone. */
    private static double share(double worked, double bare, double inside) {
        double hole = Math.max(0, inside) * Math.max(0, inside);
        double whole = bare * bare * bare * bare - hole * hole;
        double left = worked * worked * worked * worked - hole * hole;
        return whole <= 0 ? 0 : Math.max(0, left / whole);
    }
}

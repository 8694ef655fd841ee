package dev.tipwright.core.length;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.Length;

/** Playing length of a build. */
public final class PlayingLength {

    private PlayingLength() {}

    /**
     * Playing length along the shaft axis, {@code L = g + S + (B - i) + G}: from the top of the grip to the ground. An extension in
     * the butt counts as cap.
     *
     * @param build a seated club
     * @return the length
     * @throws IllegalArgumentException if the tip is not seated
     */
    public static Length alongAxis(Build build) {
        Require.given("build", build);
        Require.that(
                build.work().seat().insertion().nanometres() > 0,
                "build",
                "must be seated",
                build.work().seat());
        return build.mouthFromTop().plus(build.parts().head().geometry().mouthToGround());
    }
}

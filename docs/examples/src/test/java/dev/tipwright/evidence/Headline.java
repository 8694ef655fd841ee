package dev.tipwright.evidence;

import dev.tipwright.core.cut.CutSheet;
import dev.tipwright.core.flex.ClubFrequency;
import dev.tipwright.core.length.CutToLength;
import dev.tipwright.core.length.PlayingLength;
import dev.tipwright.core.length.SixtyDegreePlane;
import dev.tipwright.core.mass.ProfileVolume;
import dev.tipwright.core.mass.ShaftCut;
import dev.tipwright.core.trim.TipTrim;

/**
 * What the library is there for, written down from its design and not from its code: a function that is missing from the code, or from
 * the checks, does not go missing here. Each is to have a check from outside, a working, a test by bad arguments and a page of the guide.
 */
enum Headline {
    PROFILE_VOLUME("profile volume", ProfileVolume.class, ProfileVolume.class, "the-tip-in-the-bore.md"),
    TIP_TRIM("tip trim", TipTrim.class, TipTrim.class, "reading-a-working.md"),
    CUT_MARKS("cut marks", CutSheet.class, CutToLength.class, "the-job-at-the-bench.md"),
    PLAYING_LENGTH("playing length", PlayingLength.class, CutToLength.class, "length-by-the-rules.md"),
    SIXTY_DEGREE_LENGTH("60 degree length", SixtyDegreePlane.class, SixtyDegreePlane.class, "length-by-the-rules.md"),
    SHAFT_MASS("shaft mass after cutting", ShaftCut.class, ShaftCut.class, "the-job-at-the-bench.md"),
    FREQUENCY("frequency", ClubFrequency.class, ClubFrequency.class, "flex.md"),
    TRIM_FOR_FREQUENCY("trim for a frequency", ClubFrequency.class, ClubFrequency.class, "flex.md");

    private final String title;
    private final Class<?> door;
    private final Class<?> shows;
    private final String page;

    Headline(String title, Class<?> door, Class<?> shows, String page) {
        this.title = title;
        this.door = door;
        this.shows = shows;
        this.page = page;
    }

    String title() {
        return title;
    }

    /** The type through which a caller comes in. */
    Class<?> door() {
        return door;
    }

    /** The type that shows the working. */
    Class<?> shows() {
        return shows;
    }

    /** Its page of the guide. */
    String page() {
        return page;
    }
}

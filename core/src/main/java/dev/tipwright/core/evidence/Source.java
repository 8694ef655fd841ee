package dev.tipwright.core.evidence;

import dev.tipwright.core.internal.arg.Require;
import java.util.Locale;

/**
 * Where a value comes from.
 *
 * @param kind what sort of source
 * @param title title of the publication, or the fact in words
 * @param place page, table or clause; empty where there is none
 */
public record Source(Kind kind, String title, String place) {

    /**
     * Checks the values.
     *
     * @param kind what sort of source
     * @param title title of the publication, or the fact in words
     * @param place page, table or clause; empty where there is none
     */
    public Source {
        Require.given("kind", kind);
        Require.label("title", title);
        Require.given("place", place);
    }

    /** What sort of source. */
    public enum Kind {
        /** A standard, a handbook, a patent or another publication that anyone can look up. */
        PUBLISHED,
        /** A fact of the trade that no publication is named for. */
        COMMON_PRACTICE,
        /** Remembered from a publication, not read in it. */
        FROM_MEMORY,
        /** What this library, or its caller, takes to be so. */
        ASSUMPTION,
        /** The word of a part's maker or of the caller. */
        GIVEN
    }

    /**
     * A publication.
     *
     * @param title its title
     * @param place page, table or clause
     * @return the source
     */
    public static Source published(String title, String place) {
        return new Source(Kind.PUBLISHED, title, place);
    }

    /**
     * A fact of the trade; no publication is known for it.
     *
     * @param fact in words
     * @return the source
     */
    public static Source commonPractice(String fact) {
        return new Source(Kind.COMMON_PRACTICE, Require.label("fact", fact), "");
    }

    /**
     * An assumption.
     *
     * @param why in words
     * @return the source
     */
    public static Source assumption(String why) {
        return new Source(Kind.ASSUMPTION, Require.label("why", why), "");
    }

    /**
     * The word of a maker or of the caller.
     *
     * @param whose in words
     * @return the source
     */
    public static Source given(String whose) {
        return new Source(Kind.GIVEN, Require.label("whose", whose), "");
    }

    /**
     * The source in words.
     *
     * @return title, place if there is one, and what sort of source it is in brackets
     */
    public String text() {
        String sort = kind.name().toLowerCase(Locale.ROOT).replace('_', ' ');
        return title + (place.isEmpty() ? "" : ", " + place) + " (" + sort + ")";
    }
}

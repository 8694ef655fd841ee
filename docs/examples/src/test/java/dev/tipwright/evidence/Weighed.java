package dev.tipwright.evidence;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.part.Anchor;
import dev.tipwright.core.part.Attachment;
import dev.tipwright.core.part.HeadCentre;
import dev.tipwright.core.part.HeadMass;
import dev.tipwright.core.part.OtherMass;
import dev.tipwright.core.part.Place;
import dev.tipwright.core.part.Shaft;
import dev.tipwright.core.quantity.Inertia;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import java.util.ArrayList;
import java.util.List;

/** The club of a row that has columns for everything that weighs something. */
final class Weighed {

    private Weighed() {}

    static Build club(Case row) {
        Shaft shaft = Club.shaft(row.length("raw_mm"), row.grams("shaft_g"));
        Build build = Club.of(
                Club.head(head(row)),
                shaft.withMass(shaft.mass().withBalance(row.length("shaft_balance_mm"))),
                Club.grip()
                        .withMass(row.grams("grip_g"))
                        .withCap(row.length("cap_mm"))
                        .withCentre(row.length("grip_centre_mm")));
        Build seated =
                Club.seated(build, row.length("tip_trim_mm"), row.length("butt_trim_mm"), row.length("insertion_mm"));
        return seated.withWork(seated.work().withAttached(others(row)));
    }

    private static HeadMass head(Case row) {
        return new HeadMass(
                row.grams("head_g"),
                Reading.measured(new HeadCentre(row.length("along_mm"), row.length("off_mm"))),
                Reading.measured(Inertia.ofGramSquareMillimetres(row.number("head_inertia_g_mm2"))));
    }

    private static List<Attachment> others(Case row) {
        List<Attachment> others = new ArrayList<>();
        for (double[] other : row.pairs("others_g")) {
            Place place = new Place(Anchor.GRIP_TOP, Length.ofMillimetres(other[1]));
            others.add(new OtherMass("other " + others.size(), Mass.ofGrams(other[0]), place));
        }
        return others;
    }
}

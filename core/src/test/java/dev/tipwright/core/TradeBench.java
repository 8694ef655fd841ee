package dev.tipwright.core;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.Parts;
import dev.tipwright.core.club.Work;
import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.part.Blank;
import dev.tipwright.core.part.ClubKind;
import dev.tipwright.core.part.Grip;
import dev.tipwright.core.part.Hand;
import dev.tipwright.core.part.Head;
import dev.tipwright.core.part.HeadGeometry;
import dev.tipwright.core.part.HeadMass;
import dev.tipwright.core.part.Hosel;
import dev.tipwright.core.part.Shaft;
import dev.tipwright.core.part.ShaftMass;
import dev.tipwright.core.part.ShaftMaterial;
import dev.tipwright.core.part.ShaftSection;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.quantity.Angle;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import java.util.List;

/** Invented parts to try things on. */
public final class TradeBench {

    private TradeBench() {}

    /** A length in inches, as written on a bench. */
    public static Length in(String inches) {
        return Length.parse(inches + " in");
    }

    /** A head whose bore is an inch and a quarter deep and bottoms an inch over the ground. */
    public static Head head(String label, ClubKind kind, BoreEnd end) {
        return new Head(
                label,
                kind,
                Hand.RIGHT,
                HeadMass.of(Mass.ofGrams(270)),
                HeadGeometry.of(Angle.ofDegrees(62), Angle.ofDegrees(30), in("2 1/4")),
                Bore.ofTwoDiameters(in(".372"), in(".370"), in("1 1/4"), end),
                Hosel.of(in(".530")));
    }

    /** A shaft 39 in long and 84 g heavy, parallel for 8 in. */
    public static Shaft shaft(String label, String blank) {
        return new Shaft(
                label,
                new Blank(blank, in("8"), ShaftMaterial.COMPOSITE),
                in("39"),
                ShaftMass.of(Mass.ofGrams(84), in("20 1/4")),
                new ShaftSection(
                        DiameterProfile.cylinder(in(".370"), in("8")),
                        in(".600"),
                        Reading.unknown("its maker"),
                        Reading.unknown("its maker")),
                Reading.unknown("not timed"));
    }

    /** A grip 10 1/2 in long with a cap of an eighth. */
    public static Grip grip() {
        return new Grip("G", Mass.ofGrams(50), in("1/8"), in("10 1/2"), in("4.4"), Reading.unknown("the grip's maker"));
    }

    /** An untouched iron. */
    public static Build club(String head, String shaft, String blank) {
        return Build.of(new Parts(head(head, ClubKind.IRON, BoreEnd.FLAT), shaft(shaft, blank), grip()));
    }

    /** A club with its trims. */
    public static Build trimmed(Build build, String tip, String butt) {
        Work work = build.work().withTipTrim(in(tip)).withButtTrim(in(butt));
        return build.withWork(work);
    }

    /** The codes of findings. */
    public static List<String> codes(List<Finding> findings) {
        return findings.stream().map(finding -> finding.code().name()).toList();
    }

    /** A length among the numbers of a finding. */
    public static Length length(Finding finding, String symbol) {
        Term term = finding.term(symbol);
        if (term instanceof Term.OfLength length) {
            return length.value();
        }
        if (term instanceof Term.OfSafeLength safe) {
            return safe.value();
        }
        return ((Term.OfDiameter) term).value();
    }
}

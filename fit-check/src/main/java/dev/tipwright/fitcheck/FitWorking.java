package dev.tipwright.fitcheck;

import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.evidence.Source;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.evidence.Working;
import dev.tipwright.core.internal.shape.Polyline;
import dev.tipwright.core.mass.ProfileVolume;
import dev.tipwright.core.part.Wall;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.quantity.Density;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Volume;
import dev.tipwright.fitcheck.insert.FirstContact;
import dev.tipwright.fitcheck.taper.MaterialRemoval;
import dev.tipwright.fitcheck.taper.TipSection;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The working of a fit. What touches is worked with the worst diameters of readings that are out of round, what is weighed or left
 * with the mean ones, as the fit itself does; at a step, with those of the side that counts.
 */
final class FitWorking {

    private final TipFit fit;
    private final TipSection tip;
    private final MaterialRemoval removal;
    private final Length insertion;
    private final Polyline bore;
    private final List<Working.Line> lines = new ArrayList<>();

    private FitWorking(TipFit fit) {
        this.fit = fit;
        this.tip = fit.tip();
        this.removal = fit.removal();
        this.insertion = fit.insertion();
        this.bore = Polyline.of(fit.bore().profile(), Polyline.Diameter.LEAST);
    }

    static Working of(TipFit fit) {
        FitWorking working = new FitWorking(fit);
        working.contact("i0", "r0", "untouched", fit.tip().outside(), fit.untouched());
        working.contact("i1", "r1", "with the finish off", fit.tip().stripped(), fit.bare());
        working.endOfTip();
        working.seated();
        fit.tip().wall().known().ifPresent(working::wallLeft);
        working.volumes();
        return new Working("Tip in bore", working.lines);
    }

    /** A first contact is found by search: the equation it solves, the answer, and what is left of the equation there. */
    private void contact(String i, String r, String how, DiameterProfile shape, FirstContact contact) {
        Term inserted = Term.fine(i, "first contact, " + how, contact.insertion());
        if (contact.kind() == FirstContact.Kind.CLEARS) {
            lines.add(new Working.Line(
                    inserted,
                    "B",
                    List.of(Term.fine(
                            "B",
                            "bore depth: nothing stops the tip before",
                            fit.bore().depth())),
                    Source.assumption("a tip goes in until it meets the bore")));
            return;
        }
        Term up = Term.fine("z", "up the tip, where it meets", contact.tipStation());
        lines.add(new Working.Line(
                inserted,
                "y + z",
                List.of(Term.fine("y", "down the bore, where it meets", contact.boreStation()), up),
                Source.assumption("the least y + z at which D(y) - d(z) is no longer above zero, by search")));
        Length around = Length.ofMillimetres(bore.after(contact.boreStation().millimetres()));
        Length inside = Length.ofMillimetres(Polyline.of(shape, Polyline.Diameter.GREATEST)
                .after(contact.tipStation().millimetres()));
        lines.add(new Working.Line(
                Term.fine(r, "residual: zero where they touch, else the size of a step", around.minus(inside)),
                "D - d",
                List.of(Term.fine("D", "bore there", around), Term.fine("d", "tip there", inside)),
                Source.assumption("touching is not interference")));
    }

    private void endOfTip() {
        Term d = Term.fine("d", "diameter over the finish", Extremes.widestEnd(tip.outside()));
        Term p = Term.fine("p", "finish, radial", tip.finish().thickness().at(tip.trimmed()));
        Term f = Term.fine(
                "f",
                "finished diameter at the end of the tip",
                removal.finished().get(0).mean());
        Length narrowest = Extremes.narrowest(fit.bore(), insertion);
        lines.add(new Working.Line(
                f,
                "min(d - 2 * p, D - w)",
                List.of(
                        d,
                        p,
                        Term.fine("D", "narrowest bore down to the insertion", narrowest),
                        Term.fine("w", "wanted clearance", fit.clearance())),
                Source.assumption("the finish is stripped, and the bore leaves the wanted clearance")));
        Term e = Term.fine("e", "stock on the diameter", removal.stockAtEnd());
        lines.add(new Working.Line(
                e, "d - f", List.of(d, f), Source.assumption("what comes off is what was there less what is left")));
        lines.add(new Working.Line(
                Term.fine("es", "of it structure", removal.structureAtEnd()),
                "e - 2 * p",
                List.of(e, p),
                Source.assumption("the finish comes off first")));
    }

    private void seated() {
        Length at = fit.seated().leastAt();
        double z = at.millimetres();
        double y = insertion.minus(at).millimetres();
        Polyline shape = Polyline.of(removal.profile(), Polyline.Diameter.GREATEST);
        boolean below = bore.after(y) - shape.before(z) < bore.before(y) - shape.after(z);
        Length around = Length.ofMillimetres(below ? bore.after(y) : bore.before(y));
        Length inside = Length.ofMillimetres(below ? shape.before(z) : shape.after(z));
        lines.add(new Working.Line(
                Term.fine("c", "clearance where it is least, " + at + " up", around.minus(inside)),
                "D - f",
                List.of(Term.fine("D", "bore there", around), Term.fine("f", "finished tip there", inside)),
                Source.assumption("the end of the tip is at the insertion")));
    }

    /** The mean outside over the insertion. */
    private Polyline outside() {
        return Polyline.of(tip.outside(), Polyline.Diameter.MEAN).between(0, insertion.millimetres());
    }

    /** The mean diameter when the work is done. */
    private Polyline worked() {
        Polyline finish = Polyline.of(tip.finish().thickness(), tip.trimmed(), insertion.millimetres());
        return outside().plus(finish, -2).min(Polyline.of(removal.profile(), Polyline.Diameter.MEAN));
    }

    private void wallLeft(Wall wall) {
        Length at = removal.leastWallAt();
        double z = at.millimetres();
        Polyline worked = worked();
        Polyline outside = outside();
        boolean below = worked.before(z) - outside.before(z) < worked.after(z) - outside.after(z);
        Length over = Length.ofMillimetres(below ? outside.before(z) : outside.after(z));
        Length finished = Length.ofMillimetres(below ? worked.before(z) : worked.after(z));
        Length thickness = wall.thickness().at(tip.trimmed().plus(at));
        Length left = finished.minus(over.minus(thickness.times(2))).half();
        lines.add(new Working.Line(
                Term.fine("t", "wall of structure left, " + at + " up", left),
                "(f - (d - 2 * W)) / 2",
                List.of(
                        Term.fine("f", "finished diameter there", finished),
                        Term.fine("d", "diameter over the finish there", over),
                        Term.fine("W", "wall there, finish included", thickness)),
                Source.assumption("the hole stays where it is")));
    }

    private void volumes() {
        Volume before = new ProfileVolume(tip.outside().endedAt(insertion)).volume();
        Volume after = Volume.ofCubicMillimetres(worked().solid().volume());
        lines.add(new Working.Line(
                Term.of("V", "taken off", removal.volume()),
                "V1 - V2",
                List.of(
                        Term.of("V1", "inserted tip, untouched", before),
                        Term.of("V2", "inserted tip, finished", after)),
                Source.assumption("what comes off is what was there less what is left")));
        Optional<Density> structure = tip.wall().known().map(Wall::density).flatMap(Reading::known);
        removal.mass()
                .ifPresent(mass -> lines.add(new Working.Line(
                        Term.of("m", "mass taken off", mass),
                        "(pf * Vf + ps * Vs) / 1000",
                        List.of(
                                Term.of(
                                        "pf",
                                        "density of the finish",
                                        tip.finish().density().orElse(Density.ZERO)),
                                Term.of("Vf", "finish taken off", removal.finishVolume()),
                                Term.of("ps", "density of the structure", structure.orElse(Density.ZERO)),
                                Term.of("Vs", "structure taken off", removal.structureVolume())),
                        Source.assumption("each material by its own density"))));
    }
}

package dev.tipwright.fitcheck.draw;

import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.internal.shape.Polyline;
import dev.tipwright.core.internal.svg.Svg;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Units;
import dev.tipwright.fitcheck.insert.FirstContact;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * A tip in its bore in section, as far in as it goes, with the place marked where it binds. Lengths and the diameter of the bore at its
 * bottom are to one scale; whatever a diameter differs from that is drawn larger by a factor that the drawing states, because a clearance to
 * scale is thinner than a line.
 *
 * <pre>{@code
 * Bore bore = Bore.ofTwoDiameters(
 *         Length.parse(".363 in"), Length.parse(".355 in"), Length.parse("1 1/4 in"), BoreEnd.FLAT);
 * DiameterProfile tip = DiameterProfile.cylinder(Length.parse(".359 in"), Length.parse("8 in"));
 * String svg = SectionDrawing.svg(tip, bore, 20, Units.INCH);
 * svg.contains("20 times as large");             // = true
 * svg.contains("0.625 in");                      // = true
 * }</pre>
 */
public final class SectionDrawing {

    private static final int WIDTH = 760;
    private static final int HEIGHT = 430;
    private static final double MOUTH = 150;
    private static final double BOTTOM = 690;
    private static final double AXIS = 215;
    private static final double HOSEL = 150;

    private final double perMillimetre;
    private final double reference;
    private final double factor;

    private SectionDrawing(Bore bore, double factor) {
        this.perMillimetre = (BOTTOM - MOUTH) / bore.depth().millimetres();
        Polyline down = Polyline.of(bore.profile(), Polyline.Diameter.LEAST);
        this.reference = down.value(down.size() - 1);
        this.factor = factor;
    }

    /**
     * The drawing.
     *
     * @param tip diameter up from the end of the tip
     * @param bore the bore
     * @param exaggeration scale of differences of diameter over the scale of lengths; 1 to 1000
     * @param units unit of the dimensions
     * @return SVG text
     */
    public static String svg(DiameterProfile tip, Bore bore, int exaggeration, Units units) {
        Require.given("tip", tip);
        Require.given("bore", bore);
        Require.that(exaggeration >= 1 && exaggeration <= 1000, "exaggeration", "must be from 1 to 1000", exaggeration);
        Require.given("units", units);
        FirstContact contact = FirstContact.of(tip, bore);
        String insertion = Term.of("i", "insertion", contact.insertion()).text(units);
        String depth = Term.of("B", "bore depth", bore.depth()).text(units);
        boolean binds = contact.kind() == FirstContact.Kind.TOUCHES;
        String verdict = binds
                ? "It binds " + Term.of("y", "place", contact.boreStation()).text(units) + " down the bore."
                : "Nothing binds.";
        String scale = "Differences of diameter are drawn " + exaggeration + " times as large as lengths.";
        Svg svg = new Svg(
                WIDTH,
                HEIGHT,
                "Tip in bore, in section",
                "A bore " + depth + " deep with a tip " + insertion + " in. " + verdict + " " + scale);
        SectionDrawing drawing = new SectionDrawing(bore, exaggeration);
        drawing.hosel(svg, bore);
        drawing.tip(svg, tip, contact.insertion());
        svg.line(at(20, AXIS), at(BOTTOM + 50, AXIS), Svg.Style.AXIS);
        drawing.dimension(svg, bore.depth(), AXIS + HOSEL + 24, "bore " + depth);
        drawing.dimension(svg, contact.insertion(), AXIS - HOSEL - 12, "insertion " + insertion);
        if (binds) {
            drawing.mark(svg, bore, contact.boreStation());
        }
        drawing.diameters(svg, tip, bore, units);
        svg.text(at(20, HEIGHT - 14), Svg.Anchor.START, scale + " " + verdict);
        return svg.text();
    }

    private static Svg.Point at(double x, double y) {
        return new Svg.Point(x, y);
    }

    private double across(double depthMillimetres) {
        return MOUTH + depthMillimetres * perMillimetre;
    }

    /** Half the drawn diameter in pixels, kept inside the hosel. */
    private double half(double diameterMillimetres) {
        double drawn = reference + (diameterMillimetres - reference) * factor;
        return Math.min(HOSEL - 8, Math.max(4, drawn * perMillimetre / 2));
    }

    /** The metal above and below, and below the bottom of a blind bore. */
    private void hosel(Svg svg, Bore bore) {
        Polyline down = Polyline.of(bore.profile(), Polyline.Diameter.LEAST);
        boolean through = bore.end() == BoreEnd.THROUGH;
        List<Svg.Point> upper = wall(down, -1);
        List<Svg.Point> lower = wall(down, 1);
        double end = through ? BOTTOM : BOTTOM + 40;
        upper.add(0, at(end, AXIS - HOSEL));
        upper.add(1, at(MOUTH, AXIS - HOSEL));
        lower.add(0, at(end, AXIS + HOSEL));
        lower.add(1, at(MOUTH, AXIS + HOSEL));
        if (through) {
            svg.polygon(upper, Svg.Style.HATCHED).polygon(lower, Svg.Style.HATCHED);
        } else {
            Collections.reverse(lower);
            upper.addAll(lower);
            svg.polygon(upper, Svg.Style.HATCHED);
        }
    }

    private List<Svg.Point> wall(Polyline down, int side) {
        List<Svg.Point> wall = new ArrayList<>();
        for (int k = 0; k < down.size(); k++) {
            wall.add(at(across(down.at(k)), AXIS + side * half(down.value(k))));
        }
        return wall;
    }

    private void tip(Svg svg, DiameterProfile tip, Length insertion) {
        double outside = Math.min(tip.length().millimetres(), insertion.millimetres() + 100 / perMillimetre);
        Polyline up = Polyline.of(tip, Polyline.Diameter.GREATEST).between(0, outside);
        List<Svg.Point> outline = new ArrayList<>();
        for (int k = 0; k < up.size(); k++) {
            outline.add(at(across(insertion.millimetres() - up.at(k)), AXIS - half(up.value(k))));
        }
        for (int k = up.size() - 1; k >= 0; k--) {
            outline.add(at(across(insertion.millimetres() - up.at(k)), AXIS + half(up.value(k))));
        }
        svg.polygon(outline, Svg.Style.BLANK);
    }

    private void dimension(Svg svg, Length length, double y, String text) {
        double end = across(length.millimetres());
        svg.line(at(MOUTH, y), at(end, y), Svg.Style.THIN);
        svg.line(at(MOUTH, y - 5), at(MOUTH, y + 5), Svg.Style.THIN);
        svg.line(at(end, y - 5), at(end, y + 5), Svg.Style.THIN);
        svg.text(at(Math.max(MOUTH, (MOUTH + end) / 2 - 60), y - 6), Svg.Anchor.START, text);
    }

    /** A black arrowhead on either side, its point where tip and bore touch. */
    private void mark(Svg svg, Bore bore, Length place) {
        double x = across(place.millimetres());
        double edge = half(Polyline.of(bore.profile(), Polyline.Diameter.LEAST).before(place.millimetres()));
        for (int side = -1; side <= 1; side += 2) {
            svg.polygon(
                    List.of(
                            at(x, AXIS + side * edge),
                            at(x - 5, AXIS + side * (edge + 12)),
                            at(x + 5, AXIS + side * (edge + 12))),
                    Svg.Style.BLACK);
        }
    }

    private void diameters(Svg svg, DiameterProfile tip, Bore bore, Units units) {
        String mouth = diameter(bore.profile().diameterAt(Length.ZERO), units);
        String bottom = diameter(bore.profile().diameterAt(bore.depth()), units);
        String end = diameter(tip.diameterAt(Length.ZERO), units);
        svg.text(at(20, 24), Svg.Anchor.START, "bore at its mouth " + mouth);
        svg.text(at(WIDTH - 20, 24), Svg.Anchor.END, "bore at its bottom " + bottom);
        svg.text(at(WIDTH / 2.0, 24), Svg.Anchor.MIDDLE, "tip at its end " + end);
    }

    private static String diameter(Length diameter, Units units) {
        return Term.fine("D", "diameter", diameter).text(units);
    }
}

package dev.tipwright.guide;

import static dev.tipwright.lessons.LessonParts.in;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.cut.CutSheet;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Notation;
import dev.tipwright.core.quantity.Units;
import dev.tipwright.core.uncertainty.Budget;
import dev.tipwright.core.uncertainty.Contribution;
import dev.tipwright.doors.Samples;
import dev.tipwright.fitcheck.TipFit;
import dev.tipwright.fitcheck.draw.SectionDrawing;
import dev.tipwright.fitcheck.draw.StageDrawing;
import dev.tipwright.fitcheck.taper.TipSection;
import dev.tipwright.lessons.LessonParts;
import dev.tipwright.swingweight.balance.Balance;
import dev.tipwright.swingweight.balance.BalancePart;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/** The figures of the guide, by their file names: drawn by the library where it draws, else from its numbers. */
final class Figures {

    private static final String INK = "#223";
    private static final String PALE = "#d9dee6";
    private static final String WASTE = "#c0562f";
    private static final String ACCENT = "#2f6fc0";

    private final StringBuilder body = new StringBuilder();

    private Figures() {}

    static Map<String, String> all() {
        Map<String, String> figures = new TreeMap<>();
        figures.put(
                "first-contact",
                SectionDrawing.svg(
                        DiameterProfile.cylinder(in(".359"), in("8")), LessonParts.taperedBore(), 20, Units.INCH));
        TipFit fit = TipFit.of(TipSection.of(Samples.build()), LessonParts.taperedBore(), in("1 1/4"), in(".004"));
        figures.put("stages", StageDrawing.svg(fit.stages(), Units.INCH));
        figures.put("lengths-on-a-club", lengths());
        figures.put("marks-on-a-shaft", marks());
        figures.put("masses-along-a-club", masses());
        figures.put("contributions", contributions());
        return figures;
    }

    /** The head end enlarged: what lies between the hosel mouth and the ground. */
    private static String lengths() {
        Figures page = new Figures();
        page.box(60, 78, 430, 24, PALE); // the shaft
        page.box(60, 70, 150, 40, "#9aa5b5"); // the grip
        page.box(48, 70, 12, 40, INK); // its cap
        page.box(430, 62, 150, 16, "#8f98a6");
        page.box(430, 102, 150, 16, "#8f98a6"); // the hosel, cut open
        page.box(520, 78, 60, 24, "#8f98a6"); // its bottom
        page.box(580, 48, 90, 76, "#b9c1cc"); // the rest of the head
        page.line(670, 40, 670, 250, INK);
        page.text(676, 56, "start", "ground");
        page.text(60, 40, "start", "from the top of the grip to the ground, along the axis");
        page.dimension(48, 60, 140, "g");
        page.dimension(60, 490, 140, "S");
        page.dimension(490, 520, 140, "B - i");
        page.dimension(520, 670, 140, "G");
        page.dimension(48, 670, 170, "L = g + S + (B - i) + G");
        page.dimension(430, 490, 200, "i");
        page.dimension(430, 520, 225, "B");
        page.dimension(430, 670, 250, "H = G + B");
        return page.svg(760, 275, "Lengths on a club, not to scale");
    }

    /** To scale but for the kerf, which would be a hair. */
    private static String marks() {
        CutSheet sheet = new CutSheet(in("36 1/2"), in(".78125"), in("1 1/8"), in("1/16"));
        Figures page = new Figures();
        double left = 40;
        double perInch = 18.5;
        double from = left + perInch * sheet.tip().fromTip().inches();
        double to = left + perInch * sheet.butt().fromTip().inches();
        double end = left + perInch * sheet.rawLength().inches();
        double kerf = 4 * perInch * sheet.kerf().inches();
        page.box(left, 80, from - kerf - left, 24, "#e6b8a5");
        page.box(from - kerf, 80, kerf, 24, WASTE);
        page.box(from, 80, to - from, 24, PALE);
        page.box(to, 80, kerf, 24, WASTE);
        page.box(to + kerf, 80, end - to - kerf, 24, "#e6b8a5");
        page.line(from, 60, from, 112, INK);
        page.line(to, 60, to, 112, INK);
        page.text(from, 54, "start", "mark: waste to the left");
        page.text(to, 54, "end", "mark: waste to the right");
        page.text(left, 36, "start", "tip");
        page.text(end, 36, "end", "butt");
        page.dimension(left, from, 134, "T");
        page.dimension(from, to, 134, "S");
        page.dimension(to, end, 134, "U");
        String sum = inches(sheet.tip().fromTip()) + " + " + inches(sheet.cutLength()) + " + "
                + inches(sheet.butt().fromButt()) + " = " + inches(sheet.rawLength());
        page.dimension(left, end, 166, "T + S + U = " + sum + " = R");
        page.text(
                left, 200, "start", "The kerf, dark, lies inside the waste; it is drawn four times as wide as it is.");
        return page.svg(760, 220, "Marks on a raw shaft");
    }

    /** To scale along the club: each part at its centre, as large in area as it is heavy. */
    private static String masses() {
        Build club = Samples.build();
        Balance balance = Balance.of(club);
        Figures page = new Figures();
        double left = 40;
        double perInch = 17;
        page.line(left, 110, left + perInch * 40, 110, INK);
        for (int tick = 0; tick <= 40; tick += 5) {
            double x = left + perInch * tick;
            page.line(x, 106, x, 114, INK);
            page.text(x, 236, "middle", tick == 40 ? "40 in" : String.valueOf(tick));
            page.line(x, 218, x, 224, INK);
        }
        page.line(left, 218, left + perInch * 40, 218, INK);
        for (BalancePart part : balance.parts()) {
            if (part.mass().grams() >= 20) {
                double x = left + perInch * part.moment().over(part.mass()).inches();
                double radius = 2.6 * Math.sqrt(part.mass().grams());
                page.circle(x, 110, radius, ACCENT);
                page.text(
                        x,
                        110 - radius - 8,
                        "middle",
                        part.label() + ", " + Math.round(part.mass().grams()) + " g");
            }
        }
        page.pointer(left + perInch * 14, "F, the fulcrum");
        page.pointer(left + perInch * balance.balancePoint().inches(), "balance");
        return page.svg(760, 250, "Masses along a club, from the top of the grip");
    }

    private static String contributions() {
        Budget budget = Samples.balance()
                .pointsMeasure()
                .budget(Samples.build(), Samples.bench())
                .orElseThrow();
        Figures page = new Figures();
        double most = budget.largest().orElseThrow().uncertainty();
        double y = 40;
        for (Contribution each : budget.contributions().subList(0, 6)) {
            double size = Math.abs(each.uncertainty());
            page.text(220, y + 14, "end", each.input().name());
            page.box(230, y, 330 * size / Math.abs(most), 20, ACCENT);
            page.text(238 + 330 * size / Math.abs(most), y + 14, "start", String.format(Locale.ROOT, "%.3f", size));
            y += 30;
        }
        page.text(220, y + 22, "end", "all of them in quadrature");
        page.box(230, y + 8, 330 * budget.standardUncertainty() / Math.abs(most), 20, "#8f98a6");
        page.text(
                238 + 330 * budget.standardUncertainty() / Math.abs(most),
                y + 22,
                "start",
                String.format(Locale.ROOT, "%.3f points", budget.standardUncertainty()));
        return page.svg(760, (int) y + 50, "What each reading adds to the uncertainty of a swing weight");
    }

    private static String inches(Length length) {
        return Notation.SIXTY_FOURTHS.print(length).text();
    }

    private void box(double x, double y, double width, double height, String fill) {
        body.append(String.format(
                Locale.ROOT,
                "<rect x=\"%.2f\" y=\"%.2f\" width=\"%.2f\" height=\"%.2f\" fill=\"%s\"/>\n",
                x,
                y,
                width,
                height,
                fill));
    }

    private void circle(double x, double y, double radius, String fill) {
        body.append(String.format(
                Locale.ROOT,
                "<circle cx=\"%.2f\" cy=\"%.2f\" r=\"%.2f\" fill=\"%s\" fill-opacity=\"0.75\"/>\n",
                x,
                y,
                radius,
                fill));
    }

    private void line(double x1, double y1, double x2, double y2, String ink) {
        body.append(String.format(
                Locale.ROOT,
                "<line x1=\"%.2f\" y1=\"%.2f\" x2=\"%.2f\" y2=\"%.2f\" stroke=\"%s\"/>\n",
                x1,
                y1,
                x2,
                y2,
                ink));
    }

    private void text(double x, double y, String anchor, String words) {
        body.append(String.format(
                Locale.ROOT, "<text x=\"%.2f\" y=\"%.2f\" text-anchor=\"%s\">%s</text>\n", x, y, anchor, words));
    }

    private void dimension(double from, double to, double y, String words) {
        line(from, y, to, y, INK);
        line(from, y - 5, from, y + 5, INK);
        line(to, y - 5, to, y + 5, INK);
        text((from + to) / 2, y - 6, "middle", words);
    }

    private void pointer(double x, String words) {
        line(x, 110, x, 176, WASTE);
        body.append(String.format(Locale.ROOT, "<path d=\"M%.2f 176 l-7 14 h14 z\" fill=\"%s\"/>\n", x, WASTE));
        text(x, 206, "middle", words);
    }

    private String svg(int width, int height, String title) {
        return String.format(
                Locale.ROOT,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%d\" height=\"%d\" viewBox=\"0 0 %d %d\" role=\"img\""
                        + " font-family=\"sans-serif\" font-size=\"13\" fill=\"%s\">\n<title>%s</title>\n"
                        + "<rect width=\"%d\" height=\"%d\" fill=\"#ffffff\"/>\n%s</svg>\n",
                width,
                height,
                width,
                height,
                INK,
                title,
                width,
                height,
                body);
    }
}

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Black lines on white, and words in them. */
final class Sheet {

    private final StringBuilder svg = new StringBuilder();

    Sheet(int width, int height, String title, String description) {
        svg.append("<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" width=\"" + width + "\" height=\"" + height
                + "\" viewBox=\"0 0 " + width + " " + height
                + "\" font-family=\"sans-serif\" font-size=\"12\" stroke=\"black\" fill=\"none\">\n");
        svg.append("<title>" + escaped(title) + "</title>\n<desc>" + escaped(description) + "</desc>\n");
        svg.append("<defs><pattern id=\"cut\" width=\"6\" height=\"6\" patternUnits=\"userSpaceOnUse\">"
                + "<path d=\"M0 6 L6 0\" stroke-width=\"0.7\"/></pattern></defs>\n");
        svg.append("<rect width=\"" + width + "\" height=\"" + height + "\" fill=\"white\" stroke=\"none\"/>\n");
    }

    // --- Lines

    void line(double x1, double y1, double x2, double y2) {
        add("<path d=\"M%s %s L%s %s\"/>", x1, y1, x2, y2);
    }

    void dashed(double x1, double y1, double x2, double y2) {
        add("<path d=\"M%s %s L%s %s\" stroke-dasharray=\"5 4\"/>", x1, y1, x2, y2);
    }

    /** The axis of something round. */
    void axis(double x1, double x2, double y) {
        add("<path d=\"M%s %s L%s %s\" stroke-width=\"0.7\" stroke-dasharray=\"14 4 2 4\"/>", x1, y, x2, y);
    }

    void curve(List<double[]> points) {
        svg.append("<polyline points=\"" + way(points) + "\"/>\n");
    }

    void dashed(List<double[]> points) {
        svg.append("<polyline points=\"" + way(points) + "\" stroke-dasharray=\"5 4\"/>\n");
    }

    private static String way(List<double[]> points) {
        StringBuilder way = new StringBuilder();
        points.forEach(point -> way.append(way.isEmpty() ? "" : " ").append(n(point[0]) + "," + n(point[1])));
        return way.toString();
    }

    /** A part of a circle, angles in degrees from the right by way of up, with an arrow at its end. */
    void arc(double x, double y, double r, double from, double to) {
        double a = Math.toRadians(from);
        double b = Math.toRadians(to);
        double[] end = {x + r * Math.cos(b), y - r * Math.sin(b)};
        int sense = to > from ? 1 : -1;
        svg.append("<path d=\"M" + n(x + r * Math.cos(a)) + " " + n(y - r * Math.sin(a)) + " A" + n(r) + " " + n(r)
                + " 0 "
                + (Math.abs(to - from) > 180 ? 1 : 0) + " " + (sense > 0 ? 0 : 1) + " " + n(end[0]) + " " + n(end[1])
                + "\"/>\n");
        head(
                end[0] + sense * 8 * Math.sin(b - sense * 4 / r),
                end[1] + sense * 8 * Math.cos(b - sense * 4 / r),
                end[0],
                end[1]);
    }

    void arrow(double x1, double y1, double x2, double y2) {
        line(x1, y1, x2, y2);
        head(x1, y1, x2, y2);
    }

    private void head(double x1, double y1, double x2, double y2) {
        double length = Math.hypot(x2 - x1, y2 - y1);
        double ux = (x2 - x1) / length * 7;
        double uy = (y2 - y1) / length * 7;
        add(
                "<path d=\"M%s %s L%s %s L%s %s Z\" fill=\"black\"/>",
                x2, y2, x2 - ux - uy / 2.5, y2 - uy + ux / 2.5, x2 - ux + uy / 2.5, y2 - uy - ux / 2.5);
    }

    // --- Shapes

    void polygon(double... xy) {
        svg.append("<polygon points=\"" + way(points(xy)) + "\" fill=\"white\"/>\n");
    }

    void hatched(List<double[]> points) {
        svg.append("<polygon points=\"" + way(points) + "\" fill=\"url(#cut)\"/>\n");
    }

    static List<double[]> points(double... xy) {
        List<double[]> points = new ArrayList<>();
        for (int i = 0; i < xy.length; i += 2) {
            points.add(new double[] {xy[i], xy[i + 1]});
        }
        return points;
    }

    void box(double x, double y, double width, double height) {
        add("<rect x=\"%s\" y=\"%s\" width=\"%s\" height=\"%s\" fill=\"white\"/>", x, y, width, height);
    }

    void hatched(double x, double y, double width, double height) {
        add("<rect x=\"%s\" y=\"%s\" width=\"%s\" height=\"%s\" fill=\"url(#cut)\"/>", x, y, width, height);
    }

    void dot(double x, double y) {
        add("<circle cx=\"%s\" cy=\"%s\" r=\"4\" fill=\"black\"/>", x, y);
    }

    void circle(double x, double y, double r) {
        add("<circle cx=\"%s\" cy=\"%s\" r=\"%s\" fill=\"white\"/>", x, y, r);
    }

    // --- Dimensions and words

    /** A dimension from one place to another, its name on it. */
    void span(double x1, double x2, double y, String name) {
        line(x1, y - 7, x1, y + 7);
        line(x2, y - 7, x2, y + 7);
        line(x1, y, x2, y);
        if (x2 - x1 > 24) {
            head(x1 + 8, y, x1, y);
            head(x2 - 8, y, x2, y);
        }
        text((x1 + x2) / 2, y - 5, "middle", name, true);
    }

    /** A dimension up and down, its name to the right of it. */
    void rise(double x, double y1, double y2, String name) {
        line(x - 7, y1, x + 7, y1);
        line(x - 7, y2, x + 7, y2);
        line(x, y1, x, y2);
        if (y2 - y1 > 24) {
            head(x, y1 + 8, x, y1);
            head(x, y2 - 8, x, y2);
        }
        text(x + 11, (y1 + y2) / 2 + 4, "start", name, true);
    }

    void words(double x, double y, String words) {
        text(x, y, "start", words, false);
    }

    void middle(double x, double y, String words) {
        text(x, y, "middle", words, false);
    }

    void strong(double x, double y, String words) {
        text(x, y, "start", words, true);
    }

    void text(double x, double y, String anchor, String words, boolean strong) {
        svg.append("<text x=\"" + n(x) + "\" y=\"" + n(y) + "\" text-anchor=\"" + anchor
                + "\" fill=\"black\" stroke=\"none\"" + (strong ? " font-weight=\"bold\"" : "") + ">" + escaped(words)
                + "</text>\n");
    }

    private static String escaped(String words) {
        return words.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }

    private void add(String element, double... numbers) {
        Object[] words = new Object[numbers.length];
        for (int i = 0; i < numbers.length; i++) {
            words[i] = n(numbers[i]);
        }
        svg.append(String.format(Locale.ROOT, element, words)).append('\n');
    }

    /** Tenths are as fine as a screen shows. */
    private static String n(double number) {
        return String.valueOf(Math.round(number * 10) / 10.0);
    }

    String text() {
        return svg + "</svg>\n";
    }
}

package dev.tipwright.core.internal.svg;

import java.util.List;

/**
 * Writes one SVG picture as text, black on white, with a title and a description for those who cannot see it. Places are in pixels from
 * the upper left corner and are printed to a hundredth.
 */
public final class Svg {

    private static final String HEAD =
            "<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" aria-labelledby=\"title desc\" "
                    + "font-family=\"sans-serif\" font-size=\"12\" stroke=\"black\" fill=\"none\" ";

    private final StringBuilder body = new StringBuilder();

    /** A place in pixels. */
    public record Point(double x, double y) {}

    /** How a line or an area is drawn. */
    public enum Style {
        /** A firm line. */
        FIRM("stroke-width=\"1.6\""),
        /** A thin line. */
        THIN("stroke-width=\"0.8\""),
        /** A thin line of dashes. */
        DASHED("stroke-width=\"0.8\" stroke-dasharray=\"5 4\""),
        /** A thin line of dashes and dots, for an axis. */
        AXIS("stroke-width=\"0.8\" stroke-dasharray=\"12 4 2 4\""),
        /** Cut material: hatched, with a firm edge. */
        HATCHED("stroke-width=\"1.6\" fill=\"url(#hatch)\""),
        /** Blank material: white, with a firm edge. */
        BLANK("stroke-width=\"1.6\" fill=\"white\""),
        /** A black mark. */
        BLACK("stroke=\"none\" fill=\"black\""),
        /** A pale area without an edge. */
        PALE("stroke=\"none\" fill=\"#e4e4e4\"");

        private final String attributes;

        Style(String attributes) {
            this.attributes = attributes;
        }
    }

    /** Where a text stands to its place. */
    public enum Anchor {
        /** It begins there. */
        START,
        /** It is centred there. */
        MIDDLE,
        /** It ends there. */
        END
    }

    /**
     * Begins a picture.
     *
     * @param width in pixels
     * @param height in pixels
     * @param title what it is
     * @param description what it shows, in words
     */
    public Svg(int width, int height, String title, String description) {
        body.append(HEAD)
                .append("viewBox=\"0 0 ")
                .append(width)
                .append(' ')
                .append(height)
                .append("\">\n<title id=\"title\">")
                .append(escaped(title))
                .append("</title>\n<desc id=\"desc\">")
                .append(escaped(description))
                .append(
                        "</desc>\n<defs><pattern id=\"hatch\" width=\"7\" height=\"7\" patternUnits=\"userSpaceOnUse\" ")
                .append("patternTransform=\"rotate(45)\"><path d=\"M0 0V7\" stroke-width=\"1\"/></pattern></defs>\n")
                .append("<rect width=\"")
                .append(width)
                .append("\" height=\"")
                .append(height)
                .append("\" fill=\"white\" stroke=\"none\"/>\n");
    }

    /**
     * A line.
     *
     * @param from one end
     * @param to the other
     * @param style how
     * @return this picture
     */
    public Svg line(Point from, Point to, Style style) {
        return points("polyline", List.of(from, to), style);
    }

    /**
     * A line through points.
     *
     * @param points the points
     * @param style how
     * @return this picture
     */
    public Svg polyline(List<Point> points, Style style) {
        return points("polyline", points, style);
    }

    /**
     * An area.
     *
     * @param points its corners
     * @param style how
     * @return this picture
     */
    public Svg polygon(List<Point> points, Style style) {
        return points("polygon", points, style);
    }

    private Svg points(String element, List<Point> points, Style style) {
        body.append('<').append(element).append(" points=\"");
        for (int k = 0; k < points.size(); k++) {
            body.append(k == 0 ? "" : " ")
                    .append(number(points.get(k).x()))
                    .append(',')
                    .append(number(points.get(k).y()));
        }
        body.append("\" ").append(style.attributes).append("/>\n");
        return this;
    }

    /**
     * A line of text.
     *
     * @param at its place, on the base line
     * @param anchor which end of it
     * @param text the text
     * @return this picture
     */
    public Svg text(Point at, Anchor anchor, String text) {
        String side = switch (anchor) {
            case START -> "start";
            case MIDDLE -> "middle";
            case END -> "end";
        };
        body.append("<text x=\"")
                .append(number(at.x()))
                .append("\" y=\"")
                .append(number(at.y()))
                .append("\" text-anchor=\"")
                .append(side)
                .append("\" stroke=\"none\" fill=\"black\">")
                .append(escaped(text))
                .append("</text>\n");
        return this;
    }

    /**
     * The picture.
     *
     * @return SVG text
     */
    public String text() {
        return body + "</svg>\n";
    }

    /** In hundredths, by whole numbers, so that every JVM prints the same. */
    private static String number(double value) {
        long hundredths = Math.round(value * 100);
        long size = Math.abs(hundredths);
        long rest = size % 100;
        String digits = rest == 0 ? "" : "." + rest / 10 + (rest % 10 == 0 ? "" : rest % 10);
        return (hundredths < 0 ? "-" : "") + size / 100 + digits;
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}

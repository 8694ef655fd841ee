package dev.tipwright.core.internal.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A page of headings, paragraphs, lists and tables that can be written as plain text for a wall or as Markdown. It knows nothing of
 * what it says.
 */
public final class Page {

    private static final int WIDTH = 100;
    private static final int WIDEST_LABEL = 40;

    /** Stands for a blank at which no line may end; no text holds control characters. */
    private static final char GLUE = '\u0001';

    /** A number with its unit and the fraction beside it: broken over two lines it would be misread. */
    private static final Pattern NUMBER = Pattern.compile("[0-9] (?:in|mm|g|deg|oz in|g cm|kg cm2)\\b"
            + "(?: \\((?:(?:near|over|under) )?-?[0-9]+(?: [0-9]+/[0-9]+|/[0-9]+)?\\)| \\(rounded (?:up|down)\\))?");

    private static final Pattern MARKS = Pattern.compile("[\\\\`*_\\[\\]<>|#]");

    private sealed interface Block {}

    private record Heading(int level, String text) implements Block {}

    private record Paragraph(String text) implements Block {}

    private record Item(String mark, String text, String below) implements Block {}

    private record Table(List<List<String>> rows) implements Block {}

    private final List<Block> blocks = new ArrayList<>();

    /** Starts an empty page. */
    public Page() {}

    /**
     * Adds a heading.
     *
     * @param level 1 for the page, 2 for a part, 3 for a part of that
     * @param text the heading
     * @return this page
     */
    public Page heading(int level, String text) {
        blocks.add(new Heading(level, text));
        return this;
    }

    /**
     * Adds a paragraph.
     *
     * @param text the paragraph
     * @return this page
     */
    public Page paragraph(String text) {
        blocks.add(new Paragraph(text));
        return this;
    }

    /**
     * Adds an item of a list.
     *
     * @param mark what stands before it, such as a number or a severity; empty for a dash
     * @param text the item
     * @param below a second paragraph of the item; empty for none
     * @return this page
     */
    public Page item(String mark, String text, String below) {
        blocks.add(new Item(mark, text, below));
        return this;
    }

    /**
     * Adds a table; the first row is its head, the first column its labels.
     *
     * @param rows rows of as many cells each
     * @return this page
     */
    public Page table(List<List<String>> rows) {
        blocks.add(new Table(rows.stream().map(List::copyOf).toList()));
        return this;
    }

    /**
     * The page as plain text, no line longer than a hundred characters.
     *
     * @return lines ended by line feeds
     */
    public String plain() {
        StringBuilder text = new StringBuilder();
        Block before = null;
        for (Block block : blocks) {
            boolean sameList = before instanceof Item && block instanceof Item;
            if (before != null && !sameList) {
                text.append('\n');
            }
            plain(block, text);
            before = block;
        }
        return text.toString();
    }

    private static void plain(Block block, StringBuilder text) {
        if (block instanceof Heading heading) {
            String line = heading.level() == 3 ? heading.text() : heading.text().toUpperCase(Locale.ROOT);
            wrap(line, "", text);
            if (heading.level() < 3) {
                text.append((heading.level() == 1 ? "=" : "-").repeat(Math.min(WIDTH, line.length())))
                        .append('\n');
            }
        } else if (block instanceof Paragraph paragraph) {
            wrap(paragraph.text(), "", text);
        } else if (block instanceof Item item) {
            String mark = "  " + (item.mark().isEmpty() ? "-" : item.mark()) + "  ";
            wrap(mark + item.text(), " ".repeat(mark.length()), text);
            if (!item.below().isEmpty()) {
                wrap(" ".repeat(mark.length()) + item.below(), " ".repeat(mark.length()), text);
            }
        } else if (block instanceof Table table) {
            plain(table, text);
        }
    }

    /** A table too wide for the page comes in parts below one another, each with the first column. */
    private static void plain(Table table, StringBuilder text) {
        List<List<String>> rows = table.rows();
        int first = Math.min(WIDEST_LABEL, width(rows, 0));
        int from = 1;
        do {
            List<Integer> widths = new ArrayList<>(List.of(first));
            int used = 2 + first;
            int to = from;
            while (to < rows.get(0).size()) {
                int width = Math.min(WIDTH - 4 - first, width(rows, to));
                if (to > from && used + 2 + width > WIDTH) {
                    break;
                }
                used += 2 + width;
                widths.add(width);
                to++;
            }
            if (from > 1) {
                text.append('\n');
            }
            for (List<String> row : rows) {
                List<String> cells = new ArrayList<>(List.of(row.get(0)));
                cells.addAll(row.subList(from, to));
                line(cells, widths, text);
            }
            from = to;
        } while (from < rows.get(0).size());
    }

    /** Cells wider than their column go on below. */
    private static void line(List<String> cells, List<Integer> widths, StringBuilder text) {
        List<List<String>> broken = new ArrayList<>();
        int height = 1;
        for (int column = 0; column < cells.size(); column++) {
            broken.add(broken(cells.get(column), widths.get(column), ""));
            height = Math.max(height, broken.get(column).size());
        }
        for (int k = 0; k < height; k++) {
            StringBuilder line = new StringBuilder("  ");
            for (int column = 0; column < cells.size(); column++) {
                List<String> parts = broken.get(column);
                String part = k < parts.size() ? parts.get(k) : "";
                String pad = " ".repeat(widths.get(column) - part.length());
                line.append(column == 0 ? part + pad : "  " + pad + part);
            }
            text.append(line.toString().stripTrailing()).append('\n');
        }
    }

    private static int width(List<List<String>> rows, int column) {
        int width = 0;
        for (List<String> row : rows) {
            width = Math.max(width, row.get(column).length());
        }
        return width;
    }

    private static void wrap(String paragraph, String indent, StringBuilder text) {
        broken(paragraph, WIDTH, indent)
                .forEach(line -> text.append(line.stripTrailing()).append('\n'));
    }

    /** Breaks at blanks, never within a number and its unit, and within a word only if the word is longer than a line. */
    private static List<String> broken(String paragraph, int width, String indent) {
        List<String> lines = new ArrayList<>();
        String rest = NUMBER.matcher(paragraph)
                .replaceAll(number -> Matcher.quoteReplacement(number.group().replace(' ', GLUE)));
        while (rest.length() > width) {
            int blank = rest.lastIndexOf(' ', width);
            boolean inWord =
                    blank <= indent.length() || rest.substring(0, blank).isBlank();
            int end = inWord ? width : blank;
            lines.add(rest.substring(0, end).replace(GLUE, ' '));
            rest = indent + rest.substring(inWord ? end : end + 1);
        }
        lines.add(rest.replace(GLUE, ' '));
        return lines;
    }

    /**
     * The page as Markdown.
     *
     * @return lines ended by line feeds
     */
    public String markdown() {
        StringBuilder text = new StringBuilder();
        Block before = null;
        for (Block block : blocks) {
            boolean sameList = before instanceof Item && block instanceof Item;
            if (before != null && !sameList) {
                text.append('\n');
            }
            markdown(block, text);
            before = block;
        }
        return text.toString();
    }

    private static void markdown(Block block, StringBuilder text) {
        if (block instanceof Heading heading) {
            text.append("#".repeat(heading.level()))
                    .append(' ')
                    .append(escaped(heading.text()))
                    .append('\n');
        } else if (block instanceof Paragraph paragraph) {
            text.append(escaped(paragraph.text())).append('\n');
        } else if (block instanceof Item item) {
            text.append("- ")
                    .append(
                            item.mark().isBlank()
                                    ? ""
                                    : "**" + escaped(item.mark().strip()) + "** ")
                    .append(escaped(item.text()))
                    .append('\n');
            if (!item.below().isEmpty()) {
                text.append("\n  *").append(escaped(item.below())).append("*\n\n");
            }
        } else if (block instanceof Table table) {
            markdown(table, text);
        }
    }

    private static void markdown(Table table, StringBuilder text) {
        boolean head = true;
        for (List<String> row : table.rows()) {
            text.append('|');
            row.forEach(cell -> text.append(' ').append(escaped(cell)).append(" |"));
            text.append('\n');
            if (head) {
                text.append("|---").append("|---:".repeat(row.size() - 1)).append("|\n");
                head = false;
            }
        }
    }

    /** A label may hold any printable character; none of them is meant as a mark of Markdown. */
    private static String escaped(String text) {
        return MARKS.matcher(text).replaceAll("\\\\$0");
    }
}

package dev.tipwright.core.internal.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A page of headings, paragraphs, lists and tables that can be written as plain text for a wall or as Markdown. It knows nothing of
 * what it says.
 */
public final class Page {

    private static final int WIDTH = 100;

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
     * The page as plain text, no line longer than a hundred characters unless a word or a table row is.
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
            text.append(line).append('\n');
            if (heading.level() < 3) {
                text.append((heading.level() == 1 ? "=" : "-").repeat(line.length()))
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

    private static void plain(Table table, StringBuilder text) {
        List<List<String>> rows = table.rows();
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder("  ");
            for (int column = 0; column < row.size(); column++) {
                int width = width(rows, column);
                String pad = " ".repeat(width - row.get(column).length());
                line.append(column == 0 ? row.get(0) + pad : "  " + pad + row.get(column));
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

    /** Breaks at blanks; following lines start with the indent. */
    private static void wrap(String paragraph, String indent, StringBuilder text) {
        String rest = paragraph;
        while (rest.length() > WIDTH) {
            int blank = rest.lastIndexOf(' ', WIDTH);
            if (blank <= indent.length()) {
                blank = rest.indexOf(' ', WIDTH);
            }
            if (blank < 0) {
                break;
            }
            text.append(rest, 0, blank).append('\n');
            rest = indent + rest.substring(blank + 1);
        }
        text.append(rest).append('\n');
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
                    .append(heading.text())
                    .append('\n');
        } else if (block instanceof Paragraph paragraph) {
            text.append(paragraph.text()).append('\n');
        } else if (block instanceof Item item) {
            text.append("- ")
                    .append(item.mark().isEmpty() ? "" : "**" + item.mark() + "** ")
                    .append(item.text())
                    .append('\n');
            if (!item.below().isEmpty()) {
                text.append("\n  *").append(item.below()).append("*\n\n");
            }
        } else if (block instanceof Table table) {
            markdown(table, text);
        }
    }

    private static void markdown(Table table, StringBuilder text) {
        boolean head = true;
        for (List<String> row : table.rows()) {
            text.append('|');
            row.forEach(
                    cell -> text.append(' ').append(cell.replace("|", "\\|")).append(" |"));
            text.append('\n');
            if (head) {
                text.append("|---").append("|---:".repeat(row.size() - 1)).append("|\n");
                head = false;
            }
        }
    }
}

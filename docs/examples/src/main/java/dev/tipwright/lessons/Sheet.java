package dev.tipwright.lessons;

import dev.tipwright.core.evidence.Caution;
import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.quantity.Units;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;

/** A page of plain text, line by line, the same under every locale. */
final class Sheet {

    private static final int WIDTH = 100;

    private final StringBuilder text = new StringBuilder();

    Sheet title(String title) {
        text.append(title.toUpperCase(Locale.ROOT)).append("\n\n");
        return this;
    }

    /** A paragraph, wrapped at the width of a page. */
    Sheet say(String format, Object... values) {
        wrap("", String.format(Locale.ROOT, format, values));
        text.append('\n');
        return this;
    }

    /** A name and what goes with it. */
    Sheet row(String name, String format, Object... values) {
        text.append(String.format(Locale.ROOT, "  %-38s ", name))
                .append(String.format(Locale.ROOT, format, values))
                .append('\n');
        return this;
    }

    /** A line as it is. */
    Sheet line(String format, Object... values) {
        text.append("  ").append(String.format(Locale.ROOT, format, values)).append('\n');
        return this;
    }

    Sheet gap() {
        text.append('\n');
        return this;
    }

    Sheet findings(List<Finding> findings) {
        for (Finding finding : findings) {
            wrap("  ", finding.severity().name().toLowerCase(Locale.ROOT) + ": " + finding.message(Units.INCH));
        }
        return findings.isEmpty() ? this : gap();
    }

    Sheet cautions(Caution... cautions) {
        text.append("Take care:\n");
        for (Caution caution : cautions) {
            wrap("  ", "- " + caution.text());
        }
        return this;
    }

    private void wrap(String indent, String paragraph) {
        int start = text.length();
        text.append(indent);
        for (String word : paragraph.split(" ", -1)) {
            boolean first = text.length() == start + indent.length()
                    && text.substring(start).equals(indent);
            int column = text.length() - text.lastIndexOf("\n") - 1;
            if (!first) {
                text.append(column + 1 + word.length() > WIDTH ? "\n" + indent + indent : " ");
            }
            text.append(word);
        }
        text.append('\n');
    }

    /** Prints a page, in UTF-8 whatever the console is set to. */
    static void print(String page) {
        new PrintStream(System.out, true, StandardCharsets.UTF_8).print(page);
    }

    @Override
    public String toString() {
        return text.toString();
    }
}

package dev.tipwright.snippets;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A piece of code in the documentation: a {@code java} block of a Markdown page, or a {@code <pre>} block with {@code @code} in a
 * Javadoc comment. A line that ends in {@code // = text} claims that its expression prints as that text.
 *
 * @param file where it stands
 * @param line its first line there
 * @param code the code
 */
record Snippet(Path file, int line, String code) {

    private static final Pattern MARKDOWN = Pattern.compile("```java\\n(.*?)```", Pattern.DOTALL);
    private static final Pattern JAVADOC = Pattern.compile("<pre>\\{@code\\n(.*?)\\n *\\* *\\}</pre>", Pattern.DOTALL);

    /** The snippets of the README, the guide and the Javadoc of the published modules. */
    static List<Snippet> all(Path root) {
        List<Snippet> snippets = new ArrayList<>();
        files(root, "README.md").forEach(file -> snippets.addAll(in(file, MARKDOWN)));
        for (String folder : List.of("docs/guide", "core/src/main", "fit-check/src/main", "swingweight/src/main")) {
            files(root.resolve(folder), "").forEach(file -> {
                if (file.toString().endsWith(".md")) {
                    snippets.addAll(in(file, MARKDOWN));
                } else if (file.toString().endsWith(".java")) {
                    snippets.addAll(in(file, JAVADOC));
                }
            });
        }
        return snippets;
    }

    private static List<Path> files(Path start, String name) {
        if (!Files.exists(start)) {
            return List.of();
        }
        int depth = name.isEmpty() ? Integer.MAX_VALUE : 1;
        try (Stream<Path> files = Files.walk(start, depth)) {
            return files.filter(Files::isRegularFile)
                    .filter(file -> file.getFileName().toString().endsWith(name))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<Snippet> in(Path file, Pattern pattern) {
        String text = read(file);
        List<Snippet> snippets = new ArrayList<>();
        Matcher matcher = pattern.matcher(text);
        while (matcher.find()) {
            int line = 1 + (int) text.substring(0, matcher.start(1)).lines().count();
            String code = pattern == JAVADOC ? matcher.group(1).replaceAll("(?m)^ *\\* ?", "") : matcher.group(1);
            snippets.add(new Snippet(file, line, code));
        }
        return snippets;
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public String toString() {
        return file.getFileName() + ":" + line;
    }
}

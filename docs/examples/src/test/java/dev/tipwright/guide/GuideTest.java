package dev.tipwright.guide;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * The guide's figures are those that the build draws, each is shown by a page, and every link leads to a file. With
 * {@code -Dfigures.write=true} the figures are drawn anew, to be looked at before they are committed.
 */
class GuideTest {

    private static final Path ROOT = Path.of("").toAbsolutePath().getParent().getParent();
    private static final Path GUIDE = ROOT.resolve("docs/guide");
    private static final Path FIGURES = GUIDE.resolve("figures");

    /** Of {@code [text](target)} the target; the text may run over a line's end. */
    private static final Pattern LINK = Pattern.compile("\\]\\(([^)\\s]+)\\)");

    /** Of {@code -Dtest='Name#method'} the name, which may hold asterisks. */
    private static final Pattern TEST = Pattern.compile("-Dtest='?([A-Za-z*]+)");

    @Test
    void theFiguresAreThoseOfTheBuild() throws IOException {
        Map<String, String> figures = Figures.all();
        if (Boolean.getBoolean("figures.write")) {
            Files.createDirectories(FIGURES);
            for (Map.Entry<String, String> figure : figures.entrySet()) {
                Files.writeString(FIGURES.resolve(figure.getKey() + ".svg"), figure.getValue());
            }
        }
        for (Map.Entry<String, String> figure : figures.entrySet()) {
            assertThat(FIGURES.resolve(figure.getKey() + ".svg")).content().isEqualTo(figure.getValue());
        }
        try (Stream<Path> files = Files.list(FIGURES)) {
            assertThat(files.map(file -> file.getFileName().toString()))
                    .containsExactlyInAnyOrderElementsOf(
                            figures.keySet().stream().map(name -> name + ".svg").toList());
        }
    }

    @Test
    void everyLinkLeadsToAFile() throws IOException {
        List<String> broken = new ArrayList<>();
        int links = 0;
        for (Path page : pages()) {
            for (String target : targets(page)) {
                links++;
                if (!Files.exists(page.getParent().resolve(target))) {
                    broken.add(ROOT.relativize(page) + " -> " + target);
                }
            }
        }
        assertThat(broken).isEmpty();
        assertThat(links).isGreaterThan(40);
    }

    @Test
    void everyPageAndFigureIsLinkedFromSomewhere() throws IOException {
        List<Path> linked = new ArrayList<>();
        for (Path page : pages()) {
            for (String target : targets(page)) {
                linked.add(page.getParent().resolve(target).normalize());
            }
        }
        try (Stream<Path> files = Files.walk(GUIDE)) {
            assertThat(files.filter(Files::isRegularFile))
                    .allSatisfy(file -> assertThat(linked).contains(file));
        }
    }

    /** A run of a test that is not there passes without a word. */
    @Test
    void everyTestThatACommandNamesIsThere() throws IOException {
        Set<String> there = new HashSet<>();
        for (String folder : List.of("core", "fit-check", "swingweight", "docs")) {
            try (Stream<Path> files = Files.walk(ROOT.resolve(folder))) {
                files.map(file -> file.getFileName().toString()).forEach(there::add);
            }
        }
        List<String> named = new ArrayList<>();
        for (Path page : pages()) {
            TEST.matcher(Files.readString(page)).results().forEach(found -> named.add(found.group(1)));
        }
        assertThat(named)
                .hasSizeGreaterThan(5)
                .allSatisfy(name ->
                        assertThat(there).anyMatch(file -> file.matches(name.replace("*", ".*") + "\\.java")));
    }

    private static List<Path> pages() throws IOException {
        List<Path> pages = new ArrayList<>(List.of(ROOT.resolve("README.md"), ROOT.resolve("DEVELOPERS.md")));
        try (Stream<Path> files = Files.list(GUIDE)) {
            files.filter(file -> file.toString().endsWith(".md")).sorted().forEach(pages::add);
        }
        return pages;
    }

    /** Links to files, without what follows a {@code #}. */
    private static List<String> targets(Path page) throws IOException {
        return LINK.matcher(Files.readString(page))
                .results()
                .map((MatchResult found) -> found.group(1).replaceAll("#.*", ""))
                .filter(target -> !target.isEmpty() && !target.contains("://"))
                .toList();
    }
}

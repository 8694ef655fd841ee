package dev.tipwright.lessons;

import static org.assertj.core.api.Assertions.assertThat;

import dev.tipwright.core.plan.Progress;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Each lesson prints the page that is checked in under {@code lessons}; what its numbers should be is worked out by hand in
 * {@link LessonNumbersTest}. With {@code -Dlessons.write=true} the pages are written anew, to be read before they are committed.
 */
class LessonPagesTest {

    private static final Path FOLDER = Path.of("src/test/resources/lessons");

    private static String page(String name) throws InterruptedException {
        return switch (name) {
            case "shimmed-tip" -> ShimmedTip.page();
            case "equal-inertia" -> EqualInertia.page();
            case "straightened-line" -> StraightenedLine.page();
            case "stop-on-the-belt" -> StopOnTheBelt.page();
            case "miscut" -> Miscut.page();
            case "catalogue-search" -> catalogue();
            default -> throw new IllegalArgumentException("there is no lesson " + name);
        };
    }

    private static String catalogue() throws InterruptedException {
        ExecutorService pool = Executors.newFixedThreadPool(2);
        try {
            return CatalogueSearch.page(CatalogueSearchTest.SMALL, pool, Progress.UNHEARD);
        } finally {
            pool.shutdownNow();
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "shimmed-tip",
                "equal-inertia",
                "straightened-line",
                "stop-on-the-belt",
                "miscut",
                "catalogue-search"
            })
    void printsItsPage(String name) throws IOException, InterruptedException {
        Path file = FOLDER.resolve(name + ".txt");
        String page = page(name);
        if (Boolean.getBoolean("lessons.write")) {
            Files.createDirectories(FOLDER);
            Files.writeString(file, page);
        }
        assertThat(page).isEqualTo(Files.readString(file));
        assertThat(page.lines()).allMatch(line -> line.length() <= 100);
        assertThat(page).contains("Limits:", "Take care:");
    }

    @Test
    void theMainPrintsThePage() throws IOException {
        PrintStream before = System.out;
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            System.setOut(new PrintStream(out, true, StandardCharsets.UTF_8));
            ShimmedTip.main(new String[0]);
        } finally {
            System.setOut(before);
        }
        assertThat(out.toString(StandardCharsets.UTF_8)).isEqualTo(Files.readString(FOLDER.resolve("shimmed-tip.txt")));
    }
}

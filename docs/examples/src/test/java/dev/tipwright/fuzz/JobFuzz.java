package dev.tipwright.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import com.code_intelligence.jazzer.junit.FuzzTest;
import dev.tipwright.core.plan.PlanText;
import dev.tipwright.core.quantity.Units;
import dev.tipwright.examples.Planned;
import dev.tipwright.examples.Scenario;
import dev.tipwright.examples.read.JobFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;

/**
 * Any bytes in place of one file of a job: its problems are said, or it is planned and printed; nothing is thrown. Run by the
 * profile {@code fuzz}; {@link CorpusTest} tries the files that are kept.
 */
class JobFuzz {

    private static Path folder = Path.of("");

    /** In the order of their names; the first byte of an input chooses one. */
    private static List<Path> files = List.of();

    @BeforeAll
    static void copy() throws IOException {
        folder = Files.createTempDirectory("tipwright-fuzz");
        Scenario.named("practice-set").copiedTo(folder);
        try (Stream<Path> all = Files.list(folder)) {
            files = all.filter(file -> file.toString().endsWith(".csv"))
                    .sorted()
                    .toList();
        }
    }

    @AfterAll
    static void remove() throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            for (Path file : all.toList()) {
                Files.delete(file);
            }
        }
        Files.delete(folder);
    }

    @FuzzTest(maxDuration = "2m")
    void jobs(byte[] bytes) throws IOException {
        if (bytes.length == 0) {
            return;
        }
        Path file = files.get(Byte.toUnsignedInt(bytes[0]) % files.size());
        byte[] before = Files.readAllBytes(file);
        try {
            Files.write(file, Arrays.copyOfRange(bytes, 1, bytes.length));
            JobFolder input = JobFolder.read(folder);
            assertThat(input.job().isEmpty()).isEqualTo(!input.problems().isEmpty());
            assertThat(input.problems())
                    .allSatisfy(problem -> assertThat(problem.toString()).isNotBlank());
            input.job()
                    .ifPresent(job -> assertThat(PlanText.plain(Planned.of(job), Units.INCH))
                            .isNotBlank());
        } finally {
            Files.write(file, before);
        }
    }
}

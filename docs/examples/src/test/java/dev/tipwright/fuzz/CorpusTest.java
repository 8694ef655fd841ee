package dev.tipwright.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The inputs that are kept for fuzzing, each tried once: where fuzzing starts from, and whatever it found. */
class CorpusTest {

    @FunctionalInterface
    private interface Fuzzed {
        void with(byte[] bytes) throws IOException;
    }

    @Test
    void quantities() throws IOException {
        tryAll("ParserFuzzInputs/quantities", new ParserFuzz()::quantities);
    }

    @Test
    void swingWeights() throws IOException {
        tryAll("ParserFuzzInputs/swingWeights", new ParserFuzz()::swingWeights);
    }

    @Test
    void jobs() throws IOException {
        JobFuzz.copy();
        try {
            tryAll("JobFuzzInputs/jobs", new JobFuzz()::jobs);
        } finally {
            JobFuzz.remove();
        }
    }

    private static void tryAll(String folder, Fuzzed fuzzed) throws IOException {
        try (Stream<Path> files = Files.list(Path.of("src/test/resources/dev/tipwright/fuzz", folder))) {
            List<Path> all = files.sorted().toList();
            assertThat(all).hasSizeGreaterThan(5);
            for (Path file : all) {
                fuzzed.with(Files.readAllBytes(file));
            }
        }
    }
}

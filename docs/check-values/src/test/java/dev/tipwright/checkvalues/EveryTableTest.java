package dev.tipwright.checkvalues;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Reads each table of this module, so that one that is not well formed fails here and not in a test that uses it. */
class EveryTableTest {
    @TestFactory
    List<DynamicTest> isReadFromTheClassPathWithItsSource() throws IOException {
        try (Stream<Path> files = Files.list(Path.of(""))) {
            return files.map(file -> file.getFileName().toString())
                    .filter(file -> file.endsWith(".csv"))
                    .sorted()
                    .map(file -> file.substring(0, file.length() - ".csv".length()))
                    .map(name -> DynamicTest.dynamicTest(name, () -> {
                        CheckTable table = CheckTable.named(name);
                        assertThat(table.source()).isNotBlank();
                        assertThat(table.rows()).isNotEmpty();
                    }))
                    .toList();
        }
    }
}

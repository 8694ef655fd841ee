package dev.tipwright.examples.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The README of the practice set describes every file and every column that is read, and every setting. */
class ReadmeTest {
    private static final Path README = Path.of("scenarios", "practice-set", "README.md");

    @ParameterizedTest
    @EnumSource(Table.class)
    void describesEachFileAndItsColumns(Table table) throws IOException {
        String line = Files.readAllLines(README).stream()
                .filter(row -> row.startsWith("| `" + table.file() + "` |"))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no line for " + table.file()));
        for (String column : table.columns()) {
            assertThat(line).contains("`" + column + "`");
        }
    }

    @Test
    void describesEachSetting() throws IOException {
        String text = Files.readString(README);
        for (String setting : Settings.KNOWN) {
            assertThat(text).contains("`" + setting + "`");
        }
    }
}

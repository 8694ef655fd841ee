package dev.tipwright.examples;

import static org.assertj.core.api.Assertions.assertThat;

import dev.tipwright.core.plan.JobPlan;
import dev.tipwright.examples.read.JobFolder;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/** The folder of a scenario: the one that comes with the project, or a copy that is edited as a person would. */
public record Scenario(Path folder) {

    /** The scenario itself. */
    public static Scenario named(String name) {
        return new Scenario(Path.of("scenarios", name));
    }

    /** A copy to edit. */
    public Scenario copiedTo(Path target) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.toList()) {
                Files.copy(file, target.resolve(file.getFileName()));
            }
        }
        return new Scenario(target);
    }

    /** Writes another text into the cells of one column, in every line that starts with a label. */
    public Scenario cell(String file, String label, String column, UnaryOperator<String> edit) {
        return edited(file, text -> {
            List<String> lines = new ArrayList<>();
            int place = -1;
            int changed = 0;
            for (String line : text.lines().toList()) {
                String[] cells = line.split(",", -1);
                if (place < 0) {
                    place = Arrays.asList(cells).indexOf(column);
                    assertThat(place).as("column %s of %s", column, file).isNotNegative();
                } else if (cells[0].equals(label)) {
                    cells[place] = edit.apply(cells[place]);
                    changed++;
                }
                lines.add(String.join(",", cells));
            }
            assertThat(changed).as("lines of %s in %s", label, file).isPositive();
            return String.join("\n", lines) + "\n";
        });
    }

    /** Writes another text into a cell. */
    public Scenario cell(String file, String label, String column, String text) {
        return cell(file, label, column, before -> text);
    }

    /** Changes a file as a whole. */
    public Scenario edited(String file, UnaryOperator<String> edit) {
        try {
            Path path = folder.resolve(file);
            String before = Files.readString(path);
            String after = edit.apply(before);
            assertThat(after).as("%s after the edit", file).isNotEqualTo(before);
            Files.write(path, after.getBytes(StandardCharsets.UTF_8));
            return this;
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    /** The plan; the input must have no problem. */
    public JobPlan plan() {
        JobFolder input = JobFolder.read(folder);
        assertThat(input.problems()).isEmpty();
        return MainJob.plan(input.job().orElseThrow());
    }
}

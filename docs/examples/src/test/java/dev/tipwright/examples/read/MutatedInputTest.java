package dev.tipwright.examples.read;

import static org.assertj.core.api.Assertions.assertThat;

import dev.tipwright.core.plan.PlanText;
import dev.tipwright.core.quantity.Units;
import dev.tipwright.examples.Planned;
import dev.tipwright.examples.Scenario;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Files changed at random, the same way each time: either problems are said or a plan is printed, and nothing is thrown. */
class MutatedInputTest {
    private static final int MUTATIONS = 200;
    private static final List<String> TEXTS = List.of(
            "",
            " ",
            "0 in",
            "-1 in",
            "1/0 in",
            "1e9 in",
            "999999999999 in",
            "3000 mm",
            ".001 in",
            "0 g",
            "1000 g",
            "NaN",
            "Infinity in",
            "2,5 in",
            "\"",
            "\"\"",
            ";",
            "\n",
            "\r",
            "\t",
            "\u0000",
            "\uFEFF",
            "\uFFFD",
            "é",
            "𝄞",
            "=1+1",
            "1/64 in",
            "36 in",
            "1 in",
            ".37 in",
            "A0",
            "G9",
            "Z1",
            "0 points",
            "90 deg",
            "through",
            "mark on the shaft",
            "steel",
            "putter",
            "x".repeat(200));

    @TempDir
    private Path temp;

    private final Random random = new Random(20250101);

    @ParameterizedTest
    @ValueSource(strings = {"practice-set", "wedges-and-wood"})
    void areRefusedOrPlanned(String name) throws IOException {
        Scenario scenario = Scenario.named(name).copiedTo(temp);
        List<Path> files = Arrays.stream(Table.values())
                .map(table -> temp.resolve(table.file()))
                .filter(Files::exists)
                .toList();
        int refused = 0;
        for (int i = 0; i < MUTATIONS; i++) {
            Path file = files.get(random.nextInt(files.size()));
            byte[] before = Files.readAllBytes(file);
            byte[] after = before;
            for (int change = random.nextInt(2); change >= 0; change--) {
                after = changed(after);
            }
            Files.write(file, after);
            refused += refused(scenario, "mutation " + i + " of " + file.getFileName()) ? 1 : 0;
            Files.write(file, before);
        }
        assertThat(refused).as("refused, of %s", MUTATIONS).isBetween(MUTATIONS / 4, MUTATIONS - 20);
    }

    private static boolean refused(Scenario scenario, String what) {
        JobFolder input = JobFolder.read(scenario.folder());
        assertThat(input.job().isEmpty()).as(what).isEqualTo(!input.problems().isEmpty());
        for (Problem problem : input.problems()) {
            assertThat(problem.found()).as(what).isNotBlank().isNotEqualTo("values that do not go together");
            assertThat(problem.expected()).as(what).isNotBlank();
            assertThat(problem.toString()).as(what).doesNotContainPattern("\\p{Cntrl}");
        }
        if (input.job().isPresent()) {
            assertThat(PlanText.plain(Planned.of(input.job().get()), Units.INCH))
                    .as(what)
                    .isNotBlank();
        }
        return input.job().isEmpty();
    }

    private byte[] changed(byte[] bytes) {
        if (random.nextInt(10) == 0) {
            byte[] copy = Arrays.copyOf(bytes, Math.max(1, random.nextInt(bytes.length + 1)));
            copy[random.nextInt(copy.length)] = (byte) random.nextInt(256);
            return copy;
        }
        String text = new String(bytes, StandardCharsets.UTF_8);
        return (random.nextInt(4) == 0 ? lines(text) : cell(text)).getBytes(StandardCharsets.UTF_8);
    }

    /** A line less, twice, or at another place. */
    private String lines(String text) {
        List<String> lines = new ArrayList<>(text.lines().toList());
        if (lines.isEmpty()) {
            return "\n";
        }
        int line = random.nextInt(lines.size());
        switch (random.nextInt(3)) {
            case 0 -> lines.remove(line);
            case 1 -> lines.add(random.nextInt(lines.size()), lines.get(line));
            default -> Collections.swap(lines, line, random.nextInt(lines.size()));
        }
        return String.join("\n", lines) + "\n";
    }

    /** Another text in a cell, or a cell of another line, or a character less or more, or a digit changed. */
    private String cell(String text) {
        List<String> lines = new ArrayList<>(text.lines().toList());
        if (lines.isEmpty()) {
            return TEXTS.get(random.nextInt(TEXTS.size()));
        }
        int line = random.nextInt(lines.size());
        String[] cells = lines.get(line).split(",", -1);
        int cell = random.nextInt(cells.length);
        String[] others = lines.get(random.nextInt(lines.size())).split(",", -1);
        cells[cell] = switch (random.nextInt(4)) {
            case 0 -> TEXTS.get(random.nextInt(TEXTS.size()));
            case 1 -> others[random.nextInt(others.length)];
            case 2 -> cells[cell].replaceFirst("[0-9]", Integer.toString(random.nextInt(10)));
            default -> without(cells[cell]);
        };
        lines.set(line, String.join(",", cells));
        return String.join("\n", lines) + "\n";
    }

    private String without(String text) {
        int gone = random.nextInt(text.length() + 1);
        return IntStream.range(0, text.length())
                .filter(i -> i != gone)
                .mapToObj(i -> text.substring(i, i + 1))
                .collect(Collectors.joining());
    }
}

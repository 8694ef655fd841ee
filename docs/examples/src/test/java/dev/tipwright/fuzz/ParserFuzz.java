package dev.tipwright.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import com.code_intelligence.jazzer.junit.FuzzTest;
import dev.tipwright.swingweight.scale.SwingWeight;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.function.Function;

/**
 * Any text at any parser: it is refused in words, or read as a value that prints as a text that reads as the same value. Run by
 * the profile {@code fuzz}; {@link CorpusTest} tries the texts that are kept.
 */
class ParserFuzz {

    @FuzzTest(maxDuration = "1m")
    void quantities(byte[] bytes) {
        String text = new String(bytes, StandardCharsets.UTF_8);
        for (Function<String, Object> parser : Parsers.ALL) {
            Optional<Object> value = read(parser, text);
            value.ifPresent(read -> assertThat(parser.apply(read.toString())).isEqualTo(read));
        }
    }

    @FuzzTest(maxDuration = "1m")
    void swingWeights(byte[] bytes) {
        String text = new String(bytes, StandardCharsets.UTF_8);
        Optional<Object> value = read(Parsers.SCALE::parse, text);
        value.ifPresent(read -> {
            String printed = Parsers.SCALE.designation((SwingWeight) read);
            // Printed in tenths of a point.
            assertThat(Parsers.SCALE.parse(printed).over((SwingWeight) read)).isBetween(-0.0501, 0.0501);
        });
    }

    private static Optional<Object> read(Function<String, Object> parser, String text) {
        try {
            return Optional.of(parser.apply(text));
        } catch (IllegalArgumentException | ArithmeticException refused) {
            assertThat(refused.getMessage()).isNotBlank();
            return Optional.empty();
        }
    }
}

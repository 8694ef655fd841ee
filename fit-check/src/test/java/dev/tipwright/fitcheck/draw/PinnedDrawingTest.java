package dev.tipwright.fitcheck.draw;

import static org.assertj.core.api.Assertions.assertThat;

import dev.tipwright.core.part.Finish;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Units;
import dev.tipwright.fitcheck.TipFit;
import dev.tipwright.fitcheck.taper.TipSection;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Drawings as they were looked at by a person, stroke by stroke. After a change that is meant, {@code -Ddrawings.write=true} writes
 * them anew; look at them before they are kept.
 */
class PinnedDrawingTest {

    private static final Path FOLDER = Path.of("src/test/resources/drawings");
    private static final Bore TAPER = Bore.ofReadings(
            List.of(
                    Station.of(Length.ZERO, in(".396")),
                    Station.of(in(".015"), in(".3664")),
                    Station.of(in("1.25"), in(".355"))),
            BoreEnd.CONE);

    private static Length in(String inches) {
        return Length.parse(inches + " in");
    }

    enum Drawing {
        BINDS,
        CLEARS,
        THROUGH,
        STAGES,
        STAGES_METRIC;

        String svg() {
            return switch (this) {
                case BINDS -> section(".3735", TAPER, Units.INCH);
                case CLEARS -> section(".340", TAPER, Units.METRIC);
                case THROUGH -> section(".359", TAPER.withEnd(BoreEnd.THROUGH), Units.INCH);
                case STAGES -> stages(Units.INCH);
                case STAGES_METRIC -> stages(Units.METRIC);
            };
        }

        private static String section(String diameter, Bore bore, Units units) {
            DiameterProfile tip = DiameterProfile.of(
                    Station.of(Length.ZERO, in(diameter)),
                    Station.of(in(".5"), in(diameter)),
                    Station.of(in("8"), in(diameter).plus(in(".012"))));
            return SectionDrawing.svg(tip, bore, 20, units);
        }

        private static String stages(Units units) {
            TipSection tip = TipSection.of(DiameterProfile.cylinder(in(".3735"), in("8")), Finish.NONE);
            return StageDrawing.svg(
                    TipFit.of(tip, TAPER, in("1.25"), in(".004")).stages(), units);
        }
    }

    @ParameterizedTest
    @EnumSource
    void isDrawnAsItWasLookedAt(Drawing drawing) throws IOException {
        Path file = FOLDER.resolve(drawing.name().toLowerCase(Locale.ROOT).replace('_', '-') + ".svg");
        if (Boolean.getBoolean("drawings.write")) {
            Files.createDirectories(FOLDER);
            Files.writeString(file, drawing.svg());
        }
        assertThat(drawing.svg()).isEqualTo(Files.readString(file));
    }
}

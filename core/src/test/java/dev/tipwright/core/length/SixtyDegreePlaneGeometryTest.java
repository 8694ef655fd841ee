package dev.tipwright.core.length;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.ezylang.evalex.Expression;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.evidence.Working;
import dev.tipwright.core.flex.SampleClub;
import dev.tipwright.core.part.Head;
import dev.tipwright.core.part.SoleShape;
import dev.tipwright.core.quantity.Angle;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Units;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The 60 degree plane against the club laid on a drawing board: a sole of many points, pushed against the plane. */
class SixtyDegreePlaneGeometryTest {

    /**
     * The club lies along the x axis at height h with the top of its grip at the left, the toe up. Its sole is an arc of points found by
     * turning a point about the arc's centre. The plane leans from (x0, 0) at 60 degrees; the sole lies against it when x0 is the least
     * that leaves no point beyond the plane, found by halving.
     */
    private static double drawn(double lengthMm, double lieDeg, double h, double u, double r) {
        double lie = Math.toRadians(lieDeg);
        double touchX = lengthMm + u * Math.cos(lie);
        double touchY = h + u * Math.sin(lie);
        double centreX = touchX - r * Math.sin(lie);
        double centreY = touchY + r * Math.cos(lie);
        int points = 50_001;
        double low = -1e4;
        double high = 1e4;
        double[] x = new double[points];
        double[] y = new double[points];
        for (int i = 0; i < points; i++) {
            // A quarter turn to heel and toe of where the sole touches the ground.
            double turn = Math.PI / 2 * (2.0 * i / (points - 1) - 1);
            x[i] = centreX + Math.cos(turn) * (touchX - centreX) - Math.sin(turn) * (touchY - centreY);
            y[i] = centreY + Math.sin(turn) * (touchX - centreX) + Math.cos(turn) * (touchY - centreY);
        }
        while (high - low > 1e-9) {
            double x0 = (low + high) / 2;
            boolean clear = true;
            for (int i = 0; i < points && clear; i++) {
                clear = y[i] >= (x[i] - x0) * Math.tan(Math.PI / 3);
            }
            low = clear ? low : x0;
            high = clear ? x0 : high;
        }
        return high;
    }

    @Test
    void agreesWithTheDrawing() {
        Random random = new Random(60);
        for (int i = 0; i < 25; i++) {
            double length = 800 + 400 * random.nextDouble();
            double lie = 45 + 30 * random.nextDouble();
            double h = 10 * random.nextDouble();
            double u = 80 * random.nextDouble() - 20;
            double r = 400 * random.nextDouble();
            SixtyDegreePlane plane = plane(lie, h, u, r);
            // Points 63 microradians apart miss the touching one by at most r (31e-6)^2 / 2 = 2e-7 mm; a nanometre is
            // 1e-6.
            assertThat(plane.length(Length.ofMillimetres(length)).millimetres())
                    .as("L %s lie %s h %s u %s r %s", length, lie, h, u, r)
                    .isCloseTo(drawn(length, lie, h, u, r), within(3e-6));
        }
    }

    @Test
    void byHand() {
        // At 60 deg of lie the sole lies flat against the plane wherever it touches: only h counts, 6.5 / tan 60 =
        // 3.7528.
        assertThat(plane(60, 6.5, 40, 250).shorterBy().millimetres()).isCloseTo(3.752777, within(1e-6));
        // Lie 64, u 30, r 200: sin(-4) = -0.0697565, 1 - cos 4 = 0.0024359;
        // (-2.092694 + 0.487190) / 0.8660254 = -1.853877; so 3.752777 + 1.853877.
        assertThat(plane(64, 6.5, 30, 200).shorterBy().millimetres()).isCloseTo(5.606654, within(2e-5));
        // The other way from 60 the toe-ward sole reaches further out than the ground line: longer by 30 sin 4 / sin 60
        // = 2.416.
        assertThat(plane(56, 0, 30, 0).shorterBy().millimetres()).isCloseTo(-2.416434, within(2e-5));
    }

    @Test
    void thereAndBackIsTheSameToTheNanometre() {
        Random random = new Random(61);
        for (int i = 0; i < 1000; i++) {
            SixtyDegreePlane plane = plane(
                    1 + 89 * random.nextDouble(),
                    100 * random.nextDouble(),
                    600 * random.nextDouble() - 300,
                    3000 * random.nextDouble());
            Length length = Length.ofNanometres(random.nextInt());
            assertThat(plane.alongAxis(plane.length(length))).isEqualTo(length);
        }
    }

    @Test
    void ofAHeadTakesHalfTheHoselAndTheSoleThatWasRead() {
        Head head = SampleClub.head();
        assertThat(SixtyDegreePlane.of(head)).isEqualTo(plane(62, 6.5, 0, 0));
        assertThat(SixtyDegreePlane.assumptions(head))
                .extracting(assumption -> assumption.value().symbol())
                .containsExactly("h", "u");
        SoleShape sole = new SoleShape(SampleClub.mm(30), SampleClub.mm(200));
        Head read = head.withGeometry(head.geometry().withSole(Reading.measured(sole)));
        assertThat(SixtyDegreePlane.of(read)).isEqualTo(plane(62, 6.5, 30, 200));
        assertThat(SixtyDegreePlane.assumptions(read)).hasSize(1);
        Head guessed = head.withGeometry(head.geometry()
                .withSole(Reading.assumed(sole, dev.tipwright.core.evidence.Source.assumption("as its sister"))));
        assertThat(SixtyDegreePlane.assumptions(guessed)).hasSize(2);
    }

    @Test
    void theWorkingGivesWhatItPrints() throws Exception {
        SixtyDegreePlane plane = plane(64, 6.5, 30, 200);
        Working.Line line = plane.working(SampleClub.mm(950)).lines().get(0);
        Expression expression = new Expression(line.formula());
        for (Term term : line.inputs()) {
            expression.with(term.symbol(), new java.math.BigDecimal(term.number(Units.METRIC, 6)));
        }
        // Inputs printed to 1e-7 mm and 1e-8 deg.
        assertThat(expression.evaluate().getNumberValue().doubleValue())
                .isCloseTo(plane.length(SampleClub.mm(950)).millimetres(), within(1e-5));
    }

    @Test
    void refusesWhatCannotBe() {
        assertThatThrownBy(() -> plane(0, 1, 1, 1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("lie");
        assertThatThrownBy(() -> plane(91, 1, 1, 1)).hasMessageContaining("lie");
        assertThatThrownBy(() -> plane(60, -1, 1, 1)).hasMessageContaining("axisHeight");
        assertThatThrownBy(() -> plane(60, 1, 301, 1)).hasMessageContaining("lowest");
        assertThatThrownBy(() -> plane(60, 1, 1, -1)).hasMessageContaining("radius");
        assertThatThrownBy(() -> new SoleShape(Length.ZERO, SampleClub.mm(3001)))
                .hasMessageContaining("radius");
        assertThatThrownBy(() -> plane(60, 1, 1, 1).length(SampleClub.mm(10_001)))
                .hasMessageContaining("alongAxis");
        assertThatThrownBy(() -> plane(60, 1, 1, 1).alongAxis(null))
                .isInstanceOf(NullPointerException.class)
                .hasMessageContaining("byPlane");
    }

    private static SixtyDegreePlane plane(double lie, double h, double u, double r) {
        return new SixtyDegreePlane(Angle.ofDegrees(lie), SampleClub.mm(h), SampleClub.mm(u), SampleClub.mm(r));
    }
}

package shop;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonValue;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import dev.tipwright.core.quantity.Angle;
import dev.tipwright.core.quantity.Area;
import dev.tipwright.core.quantity.BendingStiffness;
import dev.tipwright.core.quantity.Density;
import dev.tipwright.core.quantity.FirstMoment;
import dev.tipwright.core.quantity.Force;
import dev.tipwright.core.quantity.Frequency;
import dev.tipwright.core.quantity.Inertia;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.LineDensity;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.core.quantity.Speed;
import dev.tipwright.core.quantity.Stress;
import dev.tipwright.core.quantity.Torque;
import dev.tipwright.core.quantity.Volume;
import java.util.List;

/** Quantities to JSON and back: each as its own text, which is the same in every version. */
public final class Json {

    /** All that a quantity needs; a record of quantities needs nothing more. */
    private abstract static class AsText {

        @JsonValue
        @Override
        public abstract String toString();

        @JsonCreator
        static Object parse(String text) {
            throw new UnsupportedOperationException("the quantity's own parse is called");
        }
    }

    private record Row(String club, Length trim, Mass head, List<Angle> lies) {}

    private Json() {}

    /**
     * Prints what is written, once it has come back equal.
     *
     * @param args none
     * @throws JsonProcessingException if it does not
     */
    public static void main(String[] args) throws JsonProcessingException {
        ObjectMapper mapper = mapper();
        List<Object> scalars = List.of(
                Length.parse("37 1/2 in"),
                Mass.parse("9.4 oz"),
                Angle.ofDegrees(62.5),
                Area.ofSquareMillimetres(20.25),
                Volume.ofCubicMillimetres(200.5),
                Density.ofGramsPerCubicCentimetre(1.55),
                LineDensity.ofGramsPerInch(2.2),
                FirstMoment.ofOunceInches(213.5),
                Inertia.ofKilogramSquareCentimetres(2700),
                Frequency.ofPerMinute(301.7),
                Stress.ofGigapascals(120),
                BendingStiffness.ofNewtonSquareMetres(20.1),
                Force.ofNewtons(12.5),
                Torque.ofNewtonMetres(1.25),
                Speed.ofMetresPerSecond(44.7));
        for (Object scalar : scalars) {
            String json = mapper.writeValueAsString(scalar);
            Object back = mapper.readValue(json, scalar.getClass());
            if (!back.equals(scalar)) {
                throw new AssertionError(scalar + " came back as " + back);
            }
            System.out.println(json);
        }
        Row row = new Row("6", Length.parse("1/2 in"), Mass.parse("263.9 g"), List.of(Angle.ofDegrees(62)));
        String json = mapper.writeValueAsString(row);
        if (!mapper.readValue(json, Row.class).equals(row)) {
            throw new AssertionError(json);
        }
        System.out.println(json);
        try {
            mapper.readValue("\"37 1/2\"", Length.class);
            throw new AssertionError("a length without a unit was read");
        } catch (JsonMappingException e) {
            System.out.println("refused: " + e.getCause().getMessage());
        }
    }

    private static ObjectMapper mapper() {
        JsonMapper.Builder builder = JsonMapper.builder();
        for (Class<?> scalar : List.<Class<?>>of(
                Length.class,
                Mass.class,
                Angle.class,
                Area.class,
                Volume.class,
                Density.class,
                LineDensity.class,
                FirstMoment.class,
                Inertia.class,
                Frequency.class,
                Stress.class,
                BendingStiffness.class,
                Force.class,
                Torque.class,
                Speed.class)) {
            builder.addMixIn(scalar, AsText.class);
        }
        return builder.build();
    }
}

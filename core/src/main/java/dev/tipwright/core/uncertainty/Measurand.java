package dev.tipwright.core.uncertainty;

import java.util.Objects;

/**
 * What is to be known: an output quantity, its inputs, and the model that leads from these to it. {@link Budget},
 * {@link SecondOrder}, {@link LinearityCheck} and {@link MonteCarlo} all start here.
 */
public final class Measurand {

    private final String name;
    private final String unit;
    private final Inputs inputs;
    private final Model model;

    private Measurand(String name, String unit, Inputs inputs, Model model) {
        this.name = Check.text("name", name);
        this.unit = Check.text("unit", unit);
        this.inputs = Objects.requireNonNull(inputs, "inputs");
        this.model = Objects.requireNonNull(model, "model");
    }

    /**
     * A measurand.
     *
     * @param name what the output is called; not blank
     * @param unit the unit of the output, as text; {@code 1} for a pure number; not blank
     * @param inputs the inputs
     * @param model the model, called with one value per input in the same order
     * @return the measurand
     * @throws NullPointerException if an argument is null
     * @throws IllegalArgumentException if a text is blank
     */
    public static Measurand of(String name, String unit, Inputs inputs, Model model) {
        return new Measurand(name, unit, inputs, model);
    }

    /**
     * What the output is called.
     *
     * @return the name
     */
    public String name() {
        return name;
    }

    /**
     * The unit of the output.
     *
     * @return the unit as text
     */
    public String unit() {
        return unit;
    }

    /**
     * The inputs.
     *
     * @return the inputs in the order of the model
     */
    public Inputs inputs() {
        return inputs;
    }

    /**
     * The model.
     *
     * @return the model as given
     */
    public Model model() {
        return model;
    }

    /** Calls the model and refuses a value that is not a number. */
    double at(double[] values) {
        double value = model.value(values);
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(
                    "model output " + name + " must be finite, was " + value + " " + unit + " at " + described(values));
        }
        return value;
    }

    private String described(double[] values) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < values.length; i++) {
            Input input = inputs.at(i);
            text.append(i == 0 ? "" : ", ")
                    .append(input.name())
                    .append(" = ")
                    .append(values[i])
                    .append(' ')
                    .append(input.unit());
        }
        return text.toString();
    }

    /**
     * Name, unit and number of inputs.
     *
     * @return the text
     */
    @Override
    public String toString() {
        return name + " in " + unit + " from " + inputs.size() + (inputs.size() == 1 ? " input" : " inputs");
    }
}

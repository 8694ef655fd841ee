package dev.tipwright.core.offcut;

import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.part.Shaft;
import java.util.List;

/**
 * A shaft as it is known after a reading.
 *
 * @param shaft the shaft with the reading in place of the estimate; unchanged if the reading cannot be believed
 * @param findings what the reading says beside that
 */
public record ShaftReading(Shaft shaft, List<Finding> findings) {

    /**
     * Checks the values.
     *
     * @param shaft the shaft with the reading in place of the estimate
     * @param findings what the reading says beside that
     */
    public ShaftReading {
        Require.given("shaft", shaft);
        findings = Require.list("findings", findings);
    }
}

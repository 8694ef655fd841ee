package dev.tipwright.core.cut;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.Length;
import java.util.List;

/**
 * One shaft's turn at the saw.
 *
 * @param club label of the club it is for
 * @param shaft label of the shaft
 * @param blank label of its blank
 * @param tipTrim what comes off its tip; zero or more
 * @param couldBecome labels of the clubs it could still become if its tip were cut too far, least trim first; may be empty
 */
public record CutTurn(String club, String shaft, String blank, Length tipTrim, List<String> couldBecome) {

    /**
     * Checks the values.
     *
     * @param club label of the club it is for
     * @param shaft label of the shaft
     * @param blank label of its blank
     * @param tipTrim what comes off its tip; zero or more
     * @param couldBecome labels of the clubs it could still become if its tip were cut too far, least trim first; may be empty
     */
    public CutTurn {
        Require.label("club", club);
        Require.label("shaft", shaft);
        Require.label("blank", blank);
        Require.notNegative("tipTrim", tipTrim);
        couldBecome = Require.list("couldBecome", couldBecome);
    }
}

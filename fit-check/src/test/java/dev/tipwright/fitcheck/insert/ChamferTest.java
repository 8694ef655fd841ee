package dev.tipwright.fitcheck.insert;

import static org.assertj.core.api.Assertions.assertThat;

import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Pins what counts as the chamfer of a bore: the part from the mouth on that narrows by more than half its depth. */
class ChamferTest {

    @Test
    void theChamferEndsWhereTheBoreProperBegins() {
        assertThat(Chamfer.depth(bore(0, 396, 15, 366, 1250, 355))).isEqualTo(mil(15));
    }

    @Test
    void aChamferMayBendOnce() {
        assertThat(Chamfer.depth(bore(0, 410, 10, 396, 25, 366, 1250, 355))).isEqualTo(mil(25));
    }

    @Test
    void aTaperIsNone() {
        assertThat(Chamfer.depth(bore(0, 363, 1250, 355))).isEqualTo(Length.ZERO);
    }

    /** Half its depth is the limit and still belongs to the bore; a thousandth more does not. */
    @Test
    void halfItsDepthIsNotYetSteep() {
        assertThat(Chamfer.depth(bore(0, 370, 10, 365, 1250, 355))).isEqualTo(Length.ZERO);
        assertThat(Chamfer.depth(bore(0, 371, 10, 365, 1250, 355))).isEqualTo(mil(10));
    }

    @Test
    void aCounterboreFurtherDownIsNone() {
        assertThat(Chamfer.depth(bore(0, 370, 500, 370, 500, 355, 1250, 355))).isEqualTo(Length.ZERO);
    }

    @Test
    void aBoreThatIsAllChamferEndsWithIt() {
        assertThat(Chamfer.depth(bore(0, 396, 15, 366, 20, 355))).isEqualTo(mil(20));
        assertThat(Chamfer.depth(bore(0, 396, 15, 366, 1250, 355).shallowedTo(mil(8))))
                .isEqualTo(mil(8));
    }

    private static Bore bore(int... placesAndDiameters) {
        List<Station> stations = new ArrayList<>();
        for (int i = 0; i < placesAndDiameters.length; i += 2) {
            stations.add(Station.of(mil(placesAndDiameters[i]), mil(placesAndDiameters[i + 1])));
        }
        return Bore.ofReadings(stations, BoreEnd.FLAT);
    }

    private static Length mil(double thousandths) {
        return Length.ofThousandths(thousandths);
    }
}

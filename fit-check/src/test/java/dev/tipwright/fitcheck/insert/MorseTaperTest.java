package dev.tipwright.fitcheck.insert;

import static org.assertj.core.api.Assertions.assertThat;

import dev.tipwright.checkvalues.CheckTable;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.quantity.Length;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Pins first contact of a cone in its own taper to the Morse tapers of Machinery's Handbook ({@code tapers-morse.csv}): a plug seats
 * in its own socket at full depth, and one that is larger by 0.001 in everywhere stands out by 0.001 over the taper.
 */
class MorseTaperTest {

    private static final CheckTable TAPERS = CheckTable.named("tapers-morse");
    private static final Length THOUSANDTH = Length.ofThousandths(1);

    static List<CheckTable.Row> tapers() {
        return TAPERS.rows();
    }

    @ParameterizedTest
    @MethodSource("tapers")
    void aPlugSeatsInItsOwnSocket(CheckTable.Row row) {
        FirstContact contact = FirstContact.of(plug(row), socket(row));
        assertThat(contact.kind()).isEqualTo(FirstContact.Kind.CLEARS);
        assertThat(contact.insertion()).isEqualTo(Length.ofInches(row.number("plug_depth_in")));
    }

    /**
     * Within a millionth of an inch: the mouth is rounded to the nanometre, and half of one is worth ten in depth on these tapers; the
     * insertion is rounded down by another.
     */
    @ParameterizedTest
    @MethodSource("tapers")
    void aPlugLargerByAThousandthStandsOut(CheckTable.Row row) {
        FirstContact contact = FirstContact.of(plug(row).widenedBy(THOUSANDTH), socket(row));
        Length standsOut = Length.ofInches(row.number("plug_depth_in")).minus(contact.insertion());
        Length expected = Length.ofInches(0.001 / (row.number("taper_per_foot_in") / 12));
        assertThat(standsOut.within(expected, Length.ofInches(1e-6)))
                .as("%s: stands out %s, expected %s", row, standsOut.inches(), expected.inches())
                .isTrue();
    }

    /** The figure the table's note gives, to its last digit. */
    @Test
    void aMorseZeroPlugStandsOutByNineteenThousandths() {
        CheckTable.Row row = TAPERS.row("morse", "0");
        FirstContact contact = FirstContact.of(plug(row).widenedBy(THOUSANDTH), socket(row));
        assertThat(2 - contact.insertion().inches()).isBetween(0.019205, 0.019215);
    }

    /** The large end as printed, to half its last digit: so the socket of these tests is the socket of the table. */
    @ParameterizedTest
    @MethodSource("tapers")
    void theMouthIsTheTablesLargeEnd(CheckTable.Row row) {
        int digits = row.decimal("large_end_of_socket_in").scale();
        // The table rounds the ends on its way: its last digit may be out by one.
        assertThat(socket(row).profile().diameterAt(Length.ZERO).inches() - row.number("large_end_of_socket_in"))
                .isBetween(-1.5 * Math.pow(10, -digits), 1.5 * Math.pow(10, -digits));
    }

    private static Bore socket(CheckTable.Row row) {
        return Bore.ofMouthAndTaper(
                mouth(row),
                row.number("taper_per_foot_in") / 12,
                Length.ofInches(row.number("plug_depth_in")),
                BoreEnd.FLAT);
    }

    private static DiameterProfile plug(CheckTable.Row row) {
        return DiameterProfile.of(
                Station.of(Length.ZERO, socket(row).profile().stations().get(1).mean()),
                Station.of(Length.ofInches(row.number("plug_depth_in")), mouth(row)));
    }

    private static Length mouth(CheckTable.Row row) {
        return Length.ofInches(row.number("small_end_of_plug_in")
                + row.number("plug_depth_in") * row.number("taper_per_foot_in") / 12);
    }
}

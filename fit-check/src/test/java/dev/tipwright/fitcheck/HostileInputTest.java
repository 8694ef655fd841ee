package dev.tipwright.fitcheck;

import static dev.tipwright.fitcheck.Clubs.cylinder;
import static dev.tipwright.fitcheck.Clubs.mil;
import static dev.tipwright.fitcheck.Clubs.tip;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;

import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.part.Finish;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.ThicknessProfile;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.fitcheck.insert.Chamfer;
import dev.tipwright.fitcheck.insert.Clearance;
import dev.tipwright.fitcheck.insert.FirstContact;
import dev.tipwright.fitcheck.insert.FirstContact.Kind;
import dev.tipwright.fitcheck.taper.MaterialRemoval;
import dev.tipwright.fitcheck.taper.TipSection;
import java.util.List;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;

/** Pins what a caller is told who hands over nothing, or something out of range: the argument, the rule, the value. */
class HostileInputTest {

    private static final Bore BORE = Clubs.taper();
    private static final DiameterProfile TIP = cylinder(373.5);
    private static final TipSection SECTION = TipSection.of(TIP, Finish.NONE);
    private static final Length DEPTH = mil(1250);
    private static final Length WANTED = mil(4);

    @Test
    void nothing() {
        assertNull("tip", () -> FirstContact.of(null, BORE));
        assertNull("bore", () -> FirstContact.of(TIP, null));
        assertNull("insertion", () -> new FirstContact(null, Length.ZERO, Kind.CLEARS));
        assertNull("tipStation", () -> new FirstContact(DEPTH, null, Kind.CLEARS));
        assertNull("kind", () -> new FirstContact(DEPTH, Length.ZERO, null));
        assertNull("tip", () -> Clearance.of(null, BORE, DEPTH));
        assertNull("bore", () -> Clearance.of(TIP, null, DEPTH));
        assertNull("insertion", () -> Clearance.of(TIP, BORE, null));
        assertNull("bore", () -> Chamfer.depth(null));
        assertNull("tip", () -> MaterialRemoval.of(null, BORE, DEPTH, WANTED));
        assertNull("bore", () -> MaterialRemoval.of(SECTION, null, DEPTH, WANTED));
        assertNull("insertion", () -> MaterialRemoval.of(SECTION, BORE, null, WANTED));
        assertNull("clearance", () -> MaterialRemoval.of(SECTION, BORE, DEPTH, null));
        assertNull("outside", () -> TipSection.of(null, Finish.NONE));
        assertNull("finish", () -> TipSection.of(TIP, null));
        assertNull("build", () -> TipSection.of(null));
        assertNull("wall", () -> SECTION.withWall(null));
        assertNull("tip", () -> TipFit.of(null, BORE, DEPTH, WANTED));
        assertNull("bore", () -> TipFit.of(SECTION, null, DEPTH, WANTED));
        assertNull("insertion", () -> TipFit.of(SECTION, BORE, null, WANTED));
        assertNull("clearance", () -> TipFit.of(SECTION, BORE, DEPTH, null));
        assertNull("target", () -> TipFitStep.with(null));
        assertNull("build", () -> TipFitStep.with(Clubs.TARGET).take(null));
        assertNull("clearance", () -> FitTarget.of(null));
        assertNull("least", () -> Clubs.TARGET.withLeastInsertion(null));
        assertNull("least", () -> Clubs.TARGET.withLeastWall(null));
        assertNull("clubs", () -> new StockReview().review(null));
    }

    @Test
    void aWantedClearanceBelowZero() {
        assertRefused("clearance must not be negative, was -0.0254 mm", () -> FitTarget.of(mil(-1)));
        assertRefused(
                "clearance must not be negative, was -0.0254 mm",
                () -> MaterialRemoval.of(SECTION, BORE, DEPTH, mil(-1)));
    }

    @Test
    void aClearanceAsWideAsTheBore() {
        assertRefused(
                "clearance must be less than the bore is wide over the insertion, was 9.017 mm",
                () -> MaterialRemoval.of(SECTION, BORE, DEPTH, mil(355)));
    }

    @Test
    void anInsertionOutOfTheBoreOrTheTip() {
        assertRefused(
                "insertion must be from 0.000001 mm to 31.75 mm, was 0 mm",
                () -> MaterialRemoval.of(SECTION, BORE, Length.ZERO, WANTED));
        assertRefused(
                "insertion must be from 0.000001 mm to 31.75 mm, was 31.750001 mm",
                () -> MaterialRemoval.of(SECTION, BORE, DEPTH.plus(Length.ofNanometres(1)), WANTED));
        TipSection shortTip = TipSection.of(tip(0, 373.5, 500, 373.5), Finish.NONE);
        assertRefused(
                "insertion must be from 0.000001 mm to 12.7 mm, was 31.75 mm",
                () -> MaterialRemoval.of(shortTip, BORE, DEPTH, WANTED));
        assertRefused(
                "insertion must be from 0.000001 mm to 31.75 mm, was 0 mm", () -> Clearance.of(TIP, BORE, Length.ZERO));
        assertRefused(
                "insertion must be from 0.000001 mm to 31.75 mm, was 203.2 mm",
                () -> Clearance.of(TIP, BORE, TIP.length()));
    }

    @Test
    void aFinishAsThickAsTheTip() {
        Finish thick = Finish.NONE.withThickness(ThicknessProfile.uniform(mil(187)));
        TipSection section = TipSection.of(TIP, thick);
        String message = "finish must leave some of the tip under it, was -0.0127 mm";
        assertRefused(message, section::stripped);
        assertRefused(message, () -> MaterialRemoval.of(section, BORE, DEPTH, WANTED));
        assertRefused(message, () -> TipFit.of(section, BORE, DEPTH, WANTED));
    }

    @Test
    void valuesThatContradictEachOther() {
        assertRefused(
                "insertion must not be negative, was -0.0254 mm",
                () -> new FirstContact(mil(-1), Length.ZERO, Kind.TOUCHES));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new FirstContact(mil(1), mil(2), Kind.TOUCHES))
                .withMessageStartingWith("tipStation must be");
        assertRefused(
                "leastAt must not be negative, was -0.0254 mm",
                () -> new Clearance(WANTED, mil(-1), WANTED, Length.ZERO, WANTED, false));
        assertRefused(
                "trimmed must not be negative, was -0.0254 mm",
                () -> new TipSection(TIP, Finish.NONE, Reading.unknown("the maker"), mil(-1)));
        MaterialRemoval some = MaterialRemoval.of(SECTION, BORE, DEPTH, WANTED);
        assertRefused(
                "finished must not be empty, was []",
                () -> new MaterialRemoval(
                        List.of(),
                        some.stockAtEnd(),
                        some.structureAtEnd(),
                        some.finishVolume(),
                        some.structureVolume(),
                        some.mass(),
                        some.leastWall(),
                        some.leastWallAt(),
                        some.leastStiffness(),
                        some.stiffnessAtMouth()));
    }

    private static void assertNull(String name, ThrowingCallable call) {
        assertThatNullPointerException().isThrownBy(call).withMessage("%s must not be null", name);
    }

    private static void assertRefused(String message, ThrowingCallable call) {
        assertThatIllegalArgumentException().isThrownBy(call).withMessage("%s", message);
    }
}

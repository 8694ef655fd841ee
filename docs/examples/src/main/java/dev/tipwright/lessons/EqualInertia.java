package dev.tipwright.lessons;

import static dev.tipwright.lessons.LessonParts.in;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.ClubSet;
import dev.tipwright.core.evidence.Caution;
import dev.tipwright.core.part.Blank;
import dev.tipwright.core.quantity.Inertia;
import dev.tipwright.swingweight.balance.Balance;
import dev.tipwright.swingweight.scale.SwingWeight;
import dev.tipwright.swingweight.scale.SwingWeightScale;
import dev.tipwright.swingweight.set.ClubChange;
import dev.tipwright.swingweight.set.SetAims;
import java.util.List;

/**
 * A set matched by moment of inertia. The customer likes his 6 and says the short irons feel as if they swung themselves: one swing
 * weight through the set is not one inertia. What would it take to give every club the inertia of the 6, by mass at the head or by length?
 */
public final class EqualInertia {

    private static final SwingWeightScale SCALE = SwingWeightScale.LETTERS_AT_14_INCHES;

    private EqualInertia() {}

    /** The set as it is: an inch and a half shorter and some 21 g heavier in the head from the 6 to the 9. */
    static ClubSet set() {
        Blank blank = LessonParts.blank("mid");
        return ClubSet.of(
                club("6", 262, 61.5, "2 1/4", "2.10", blank, "36 3/8"),
                club("7", 269, 62, "2 1/4", "2.12", blank, "35 7/8"),
                club("8", 276, 62.5, "2 1/4", "2.14", blank, "35 3/8"),
                club("9", 283.5, 63, "2 1/4", "2.16", blank, "34 7/8"));
    }

    private static Build club(
            String label, double grams, double lie, String mouth, String centre, Blank blank, String cut) {
        return LessonParts.club(
                LessonParts.head(label, grams, lie, mouth, centre, LessonParts.taperedBore()),
                LessonParts.shaft("for the " + label, blank, "39", 84, "20.2"),
                LessonParts.grip(50),
                in("1/2"),
                in(cut));
    }

    static Inertia wanted() {
        return Balance.of(set().club("6")).inertiaAboutButt();
    }

    /** Prints the page. */
    public static void main(String[] args) {
        Sheet.print(page());
    }

    static String page() {
        Sheet sheet = new Sheet().title("A set of one moment of inertia");
        sheet.say(
                "Four irons of nearly one swing weight. The scale knows moments; the hands feel inertia, which counts distance"
                        + " twice. The 6, at %.1f kg cm2 about the top of the grip, is the one the customer likes.",
                wanted().kilogramSquareCentimetres());
        changes(sheet, "by mass at the head alone", 0);
        changes(sheet, "by length alone", 1);
        changes(sheet, "half by each", 0.5);
        sheet.say(
                "Limits: inertia is about the top of the grip, not about the hands or the body; heads count as measured. Mass is"
                        + " added at the head's centre of mass; a weight in the tip sits higher and takes a little more.");
        sheet.say(
                "Look at the last column before anything is cut: at one inertia the short clubs read heavier on the scale. Which of"
                        + " the two the player wants is for the player to say, with two clubs built and hit.");
        return sheet.cautions(Caution.LEAD, Caution.HEAD_CAN_COME_OFF, Caution.MAKERS_WORD)
                .toString();
    }

    private static void changes(Sheet sheet, String how, double byLength) {
        List<ClubChange> changes = SetAims.equalInertia(set(), wanted(), byLength);
        sheet.line("%s:", how);
        sheet.line("  %-5s %10s %10s %22s %14s", "club", "longer", "heavier", "inertia, kg cm2", "reads");
        for (ClubChange change : changes) {
            SwingWeight before = Balance.of(change.before()).on(SCALE);
            sheet.line(
                    "  %-5s %7.3f in %8.2f g %10.1f -> %8.1f %6s -> %4s",
                    change.club(),
                    change.longer().inches(),
                    change.heavier().grams(),
                    Balance.of(change.before()).inertiaAboutButt().kilogramSquareCentimetres(),
                    change.inertia().kilogramSquareCentimetres(),
                    SCALE.designation(before),
                    SCALE.designation(change.reads(SCALE)));
        }
        sheet.gap().findings(SetAims.notReached(changes));
    }
}

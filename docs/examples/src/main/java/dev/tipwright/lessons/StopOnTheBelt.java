package dev.tipwright.lessons;

import static dev.tipwright.lessons.LessonParts.in;

import dev.tipwright.core.evidence.Caution;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.fitcheck.other.ShimReach;
import dev.tipwright.fitcheck.taper.PassRate;
import dev.tipwright.fitcheck.taper.Stage;
import dev.tipwright.fitcheck.taper.StageTable;
import dev.tipwright.fitcheck.taper.StagedTip;
import dev.tipwright.fitcheck.taper.StockLeft;
import dev.tipwright.fitcheck.taper.StockRange;
import dev.tipwright.fitcheck.taper.StopReading;
import dev.tipwright.fitcheck.taper.StopReport;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A stop on the belt read back. A parallel tip, stripped, is being worked down into a tapered bore. Every few passes the builder stops,
 * pushes it in, reads how far it goes and where it shines, and wants to know what is left: how many passes are safe, and what to
 * measure next. At the last stop it turns out that one pass was too many.
 */
public final class StopOnTheBelt {

    static final Bore BORE = LessonParts.taperedBore();
    static final DiameterProfile BARE = DiameterProfile.cylinder(in(".3685"), in("8"));
    static final DiameterProfile FINISHED =
            DiameterProfile.of(Station.of(Length.ZERO, in(".351")), Station.of(in("1 1/4"), in(".359")));
    static final Length CLEARANCE = in(".004");
    static final Length RULE = in("1/64");
    static final Length MICROMETER = in(".0002");
    /** The loosest that the builder lets pass, the shims in the drawer, and the wall of the tip above its maker's limit. */
    static final Length LOOSEST = in(".006");

    static final List<Length> DRAWER = List.of(in(".001"), in(".002"), in(".003"));
    static final Length SPARE = in(".0042");
    static final StagedTip STAGED = new StagedTip(BARE, FINISHED, BORE, BORE.depth());

    private StopOnTheBelt() {}

    /** Six passes in: depth read, and a witness mark right at the end of the tip. */
    static StopReport first() {
        return read(StopReading.ofDepth(in(".40")).withMarks(List.of(Length.ZERO)));
    }

    /** Three more: depth, and a micrometer at both ends of what is worked. */
    static StopReport second() {
        return read(StopReading.ofDepth(in("1 3/32"))
                .withCalipers(List.of(Station.of(Length.ZERO, in(".356")), Station.of(in("1 1/4"), in(".364")))));
    }

    /** It seats: from here depth is silent. */
    static StopReport third() {
        return read(StopReading.ofDepth(BORE.depth()));
    }

    /** Some more by feel, nobody counted them, and the micrometer again. */
    static StopReport fourth() {
        return read(StopReading.ofDepth(BORE.depth())
                .withCalipers(List.of(Station.of(Length.ZERO, in(".348")), Station.of(in("1 1/4"), in(".3572")))));
    }

    static StopReport read(StopReading reading) {
        return StopReport.of(STAGED, reading, CLEARANCE, RULE, MICROMETER);
    }

    static PassRate rate() {
        return PassRate.learnt(first().stock().orElseThrow(), second().stock().orElseThrow(), 3);
    }

    /** Prints the page. */
    public static void main(String[] args) {
        Sheet.print(page());
    }

    static String page() {
        Sheet sheet = new Sheet().title("A stop on the belt, read back");
        sheet.say(
                "A tip of .3685 in under its finish goes into a bore of .363 in narrowing to .355 in, with .004 in of clearance:"
                        + " 17.5 thousandths come off its end. What to expect at each stop:");
        for (Stage stage : StageTable.of(STAGED, in(".0035")).stages()) {
            sheet.line(
                    "  %5.2f thousandths to go: in %.3f in",
                    stage.stock().thousandths(), stage.insertion().inches());
        }
        sheet.gap()
                .say(
                        "It seats with %.1f thousandths still to come off, so the last of it never shows in depth.",
                        STAGED.seatsAt().thousandths());
        stop(sheet, "First stop, after six passes: .40 in deep, and it shines at the very end", first());
        stop(
                sheet,
                "Second stop, three passes on: 1 3/32 in deep; .3560 at the end, .3640 an inch and a quarter up",
                second());
        PassRate rate = rate();
        StockRange left = second().stock().orElseThrow();
        sheet.row(
                        "a pass takes",
                        "%.2f to %.2f thousandths",
                        rate.least().thousandths(),
                        rate.most().thousandths())
                .row("passes that cannot be too many", "%d", rate.safePasses(left))
                .row("passes before the next stop", "%d", rate.nextPasses(left))
                .gap();
        stop(sheet, "Third stop: it is on the bottom", third());
        stop(sheet, "Fourth stop, some passes later, by feel and uncounted: .3480 at the end, .3572 up", fourth());
        tooMuch(sheet);
        return sheet.cautions(Caution.COMPOSITE_DUST, Caution.CUTTING, Caution.MAKERS_WORD)
                .toString();
    }

    private static void stop(Sheet sheet, String title, StopReport report) {
        sheet.line("%s:", title);
        report.depth().ifPresent(depth -> sheet.row("  depth says", "%s", says(depth)));
        report.stock()
                .ifPresent(stock -> sheet.row(
                        "  left to come off",
                        "%.2f to %.2f thousandths",
                        stock.least().thousandths(),
                        stock.most().thousandths()));
        report.next().ifPresent(next -> {
            sheet.row("  measure next", "%s", next.means());
            next.wanted()
                    .forEach(station -> sheet.row(
                            "    " + where(station), "%.4f in", station.mean().inches()));
        });
        sheet.gap().findings(report.findings());
    }

    private static String says(StockLeft depth) {
        return switch (depth.kind()) {
            case READING ->
                String.format(
                        Locale.ROOT,
                        "%.2f to %.2f thousandths left",
                        depth.least().orElseThrow().thousandths(),
                        depth.most().thousandths());
            default ->
                depth.kind()
                        + String.format(
                                Locale.ROOT,
                                ", at most %.2f thousandths left",
                                depth.most().thousandths());
        };
    }

    private static String where(Station station) {
        return String.format(Locale.ROOT, "finished, %.2f in up", station.at().inches());
    }

    /** By the reading that is furthest off, and what the wall of the tip has to spare. */
    static ShimReach reach() {
        return ShimReach.of(CLEARANCE, LOOSEST, DRAWER, Optional.of(SPARE));
    }

    private static void tooMuch(Sheet sheet) {
        Length over = fourth().shimWall().orElseThrow().times(2);
        sheet.line("what saves it, if up to %.1f thousandths of clearance are allowed:", LOOSEST.thousandths());
        sheet.gap().findings(List.of(reach().judge(over)));
        sheet.row(
                        "no shim saves more than",
                        "%.1f thousandths too much",
                        reach().beyond().thousandths())
                .gap();
        sheet.say(
                "Limits: depth by a rule, give or take 1/64 in; diameters give or take two ten-thousandths. Stock and clearance are"
                        + " on the diameter. How thin the wall may get is the shaft maker's word; here .0042 in of it is to spare.");
    }
}

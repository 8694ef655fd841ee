package dev.tipwright.evidence;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.part.ClubKind;
import dev.tipwright.core.part.GripSize;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.core.rules.ClubLimits;
import dev.tipwright.core.rules.RulesCheck;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** The limits of the Rules, and clubs at them and a hair past them. */
final class RulesChecks {

    private static final ClubLimits RULES = ClubLimits.EQUIPMENT_RULES;

    private static final Map<String, Length> LIMITS = Map.of(
            "longest club", RULES.longest(),
            "shortest club", RULES.shortest(),
            "longest club under Model Local Rule G-10", ClubLimits.WITH_LOCAL_RULE_G10.longest(),
            "grip width", RULES.gripWidest(),
            "grip length", RULES.gripShortest(),
            "straight shaft", RULES.neck(),
            "neck length", RULES.neck());

    private RulesChecks() {}

    static void rulesCheck(Tally tally) {
        tally.cases("rules-limits")
                .filter(row -> row.has("value_in"))
                .forEach(row -> row.same("value_in", row.text("limit"), LIMITS.get(row.text("limit"))));
        tally.cases("rules-cases").forEach(row -> row.says("findings", findings(row)));
    }

    private static String findings(Case row) {
        return RulesCheck.of(club(row), RULES, Length.ZERO).stream()
                .map(finding -> finding.code().name().toLowerCase(Locale.ROOT).replace('_', ' '))
                .collect(Collectors.joining("; "));
    }

    /** A club with that neck and grip, and a cap that makes it so long by the measure of the Rules. */
    private static Build club(Case row) {
        Length wide = row.length("grip_width_in");
        Build build = Club.of(Club.head(), Club.shaft(Club.mm(400), Mass.ofGrams(50)), Club.grip());
        Build kind = Club.withHead(
                build,
                head -> head.withKind(ClubKind.valueOf(row.text("kind").toUpperCase(Locale.ROOT)))
                        .withGeometry(head.geometry().withMouthToGround(row.length("neck_in"))));
        Build gripped = Club.withGrip(
                kind,
                grip -> grip.withLength(row.length("grip_length_in"))
                        .withSize(Reading.measured(new GripSize(wide.half(), wide))));
        Build seated = Club.seated(gripped, Length.ZERO, Length.ZERO, Club.mm(30));
        Length more = row.length("length_in").minus(RulesCheck.length(seated));
        return Club.withGrip(seated, grip -> grip.withCap(grip.cap().plus(more)));
    }
}

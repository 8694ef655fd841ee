package dev.tipwright.core.uncertainty;

import dev.tipwright.core.Bench;
import dev.tipwright.core.club.Build;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.part.Finish;
import dev.tipwright.core.part.Head;
import dev.tipwright.core.part.HeadCentre;
import dev.tipwright.core.part.LineDensityProfile;
import dev.tipwright.core.part.Shaft;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.quantity.Length;
import java.util.List;

/** The invented club of the tests with a bore of three readings and a measured centre, and variants of it. */
final class NudgedClub {

    static final Build BUILD = withBore(
            withCentre(Bench.club("6"), Reading.measured(new HeadCentre(Bench.len("2.1 in"), Length.ZERO))),
            Bore.ofReadings(
                    List.of(
                            Station.of(Length.ZERO, Bench.len(".363 in")),
                            Station.of(Bench.len(".6 in"), Bench.len(".359 in")),
                            Station.of(Bench.len("1.25 in"), Bench.len(".355 in"))),
                    BoreEnd.FLAT));

    private NudgedClub() {}

    static Build withBore(Build build, Bore bore) {
        Build apart = build.withWork(build.work().withSeat(dev.tipwright.core.club.Seat.APART));
        Build other = Bench.withHead(apart, apart.parts().head().withBore(bore));
        return build.work().seat().equals(dev.tipwright.core.club.Seat.APART)
                ? other
                : other.withWork(build.work().withSeat(dev.tipwright.core.club.Seat.onBottomOf(bore)));
    }

    static Build withCentre(Build build, Reading<HeadCentre> centre) {
        Head head = build.parts().head();
        return Bench.withHead(build, head.withMass(head.mass().withCentre(centre)));
    }

    static Build withOutside(Build build, DiameterProfile outside) {
        Shaft shaft = build.parts().shaft();
        return Bench.withShaft(build, shaft.withSection(shaft.section().withOutside(outside)));
    }

    static Build withAlong(Build build, LineDensityProfile along) {
        Shaft shaft = build.parts().shaft();
        return Bench.withShaft(build, shaft.withMass(shaft.mass().withAlong(Reading.measured(along))));
    }

    /** Wall not known, and no finish. */
    static Build without(Build build) {
        Shaft shaft = build.parts().shaft();
        return Bench.withShaft(
                build,
                shaft.withSection(shaft.section()
                        .withWall(Reading.unknown("the maker"))
                        .withFinish(Reading.measured(Finish.NONE))));
    }
}

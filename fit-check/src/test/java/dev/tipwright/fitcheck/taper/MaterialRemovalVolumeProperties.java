package dev.tipwright.fitcheck.taper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;

/**
 * Pins volumes, mass, wall and stiffness left to the definition, point by point and by quadrature, on random tips: out of round, stepped,
 * finish and wall varying along them, in bores of every shape.
 */
class MaterialRemovalVolumeProperties {

    @Provide
    Arbitrary<Sections.Job> jobs() {
        return Sections.jobs();
    }

    /** A part in 1e12, and 1e-12 mm2 over the length: a stock of 1e-6 mm in diameters of 9 mm has no more digits in doubles. */
    @Property(shrinking = ShrinkingMode.BOUNDED)
    void volumesAreThoseOfQuadrature(@ForAll("jobs") Sections.Job job) {
        MaterialRemoval removal = job.removal();
        PointByPoint points = new PointByPoint(job);
        double finish = points.finishVolume();
        double structure = points.structureVolume();
        double digits = 1e-12 * job.insertion().millimetres();
        assertThat(removal.finishVolume().cubicMillimetres()).isCloseTo(finish, within(1e-12 * finish + digits));
        assertThat(removal.structureVolume().cubicMillimetres())
                .isCloseTo(structure, within(1e-12 * structure + digits));
        // Each of two masses is rounded to the picogram.
        assertThat(removal.mass().orElseThrow().grams())
                .isCloseTo((1.25 * finish + 1.55 * structure) / 1000, within(1.1e-12));
    }

    /** Lengths are rounded to the nanometre, half of one either way. */
    @Property(shrinking = ShrinkingMode.BOUNDED)
    void theEndOfTheTipIsThatOfTheDefinition(@ForAll("jobs") Sections.Job job) {
        MaterialRemoval removal = job.removal();
        PointByPoint points = new PointByPoint(job);
        // A hair up: the bore may have a step right at the insertion, and the tip faces what is above it.
        double end = 1e-12 * job.insertion().millimetres();
        double structure = points.widestBare(end) - points.finished(end);
        assertThat(removal.structureAtEnd().millimetres()).isCloseTo(structure, within(0.51e-6));
        assertThat(removal.stockAtEnd().millimetres()).isCloseTo(structure + 2 * points.finish(end), within(0.51e-6));
        // A difference of two that are each rounded.
        assertThat(removal.finishAtEnd().millimetres()).isCloseTo(2 * points.finish(end), within(1.01e-6));
        assertThat(removal.finished().get(0).mean().millimetres()).isCloseTo(points.finished(end), within(0.51e-6));
    }

    /**
     * The least wall is at a station, so a scan finds none thinner. It is rounded to the nanometre, half of one either way, and the
     * scan stays a hair off each place, where a step has two values.
     */
    @Property(shrinking = ShrinkingMode.BOUNDED)
    void noWallIsThinnerAndNoSectionSofterThanReported(@ForAll("jobs") Sections.Job job) {
        MaterialRemoval removal = job.removal();
        PointByPoint points = new PointByPoint(job);
        double thinnest = Double.MAX_VALUE;
        double softest = Double.MAX_VALUE;
        Double before = null;
        for (Double place : points.places()) {
            for (int i = 0; before != null && i <= 16; i++) {
                double z = before + (place - before) * Math.min(Math.max(i / 16.0, 1e-12), 1 - 1e-12);
                double inside = points.inside(z);
                thinnest = Math.min(thinnest, (points.worked(z) - inside) / 2);
                softest = Math.min(softest, share(points.worked(z), points.bare(z), inside));
            }
            before = place;
        }
        assertThat(removal.leastWall().orElseThrow().millimetres()).isCloseTo(thinnest, within(0.7e-6));
        assertThat(removal.leastStiffness().orElseThrow()).isCloseTo(softest, within(1e-6));
        double end = job.insertion().millimetres() * (1 - 1e-12);
        assertThat(removal.stiffnessAtMouth().orElseThrow())
                .isCloseTo(share(points.worked(end), points.bare(end), points.inside(end)), within(1e-9));
    }

    private static double share(double worked, double bare, double inside) {
        double hole = Math.pow(Math.max(0, inside), 4);
        return (Math.pow(worked, 4) - hole) / (Math.pow(bare, 4) - hole);
    }
}

package dev.tipwright.core.internal.beam;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.Seat;
import dev.tipwright.core.club.Stop;
import dev.tipwright.core.club.TipWork;
import dev.tipwright.core.club.Work;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.flex.ClubFrequency;
import dev.tipwright.core.flex.SampleClub;
import dev.tipwright.core.part.Attachment;
import dev.tipwright.core.part.Counterweight;
import dev.tipwright.core.part.HeadCentre;
import dev.tipwright.core.part.HeadMass;
import dev.tipwright.core.part.Shaft;
import dev.tipwright.core.part.ShaftMass;
import dev.tipwright.core.part.TipWeight;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.quantity.Inertia;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import java.util.List;
import java.util.Random;
import java.util.TreeSet;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.junit.jupiter.api.Test;

/** Whole clubs against finite elements with dense matrices: mass, inertia and offset of the head, tip in the bore, cuts and clamp. */
class ClubFrequencyReferenceTest {

    /** An invented club and the plain numbers it was made of; metres, kilograms. */
    private record Case(
            double mass,
            double balance,
            List<Double> at,
            List<Double> ei,
            double trim,
            double insertion,
            double butt,
            double clamp,
            double head,
            double along,
            double off,
            double inertia,
            double tipWeight) {

        static Case random(Random random) {
            List<Double> ei = random.doubles(4, 8, 80).sorted().boxed().toList();
            return new Case(
                    0.05 + 0.08 * random.nextDouble(),
                    0.42 + 0.16 * random.nextDouble(),
                    List.of(0.0, 0.2 + 0.1 * random.nextDouble(), 0.5 + 0.2 * random.nextDouble(), 1.0),
                    ei,
                    0.08 * random.nextDouble(),
                    0.02 + 0.02 * random.nextDouble(),
                    0.1 * random.nextDouble(),
                    0.2 * random.nextDouble(),
                    0.15 + 0.2 * random.nextDouble(),
                    0.08 * random.nextDouble(),
                    0.05 * random.nextDouble(),
                    6e-4 * random.nextDouble(),
                    random.nextBoolean() ? 0 : 0.009 * random.nextDouble() + 1e-5);
        }

        double density(double z) {
            // The straight line with mass and balance point of a shaft of 1 m, from its two conditions.
            double slope = 12 * mass * (balance - 0.5);
            return mass + slope * (z - 0.5);
        }

        double stiffness(double z) {
            int i = 1;
            while (at.get(i) < z) {
                i++;
            }
            return ei.get(i - 1) + (ei.get(i) - ei.get(i - 1)) * (z - at.get(i - 1)) / (at.get(i) - at.get(i - 1));
        }

        Build build() {
            Shaft shaft = SampleClub.shaft()
                    .withMass(ShaftMass.of(Mass.ofGrams(1000 * mass), metres(balance)))
                    .withFlex(SampleClub.flex(SampleClub.stations(
                            0, ei.get(0), 1000 * at.get(1), ei.get(1), 1000 * at.get(2), ei.get(2), 1000, ei.get(3))));
            HeadMass headMass = new HeadMass(
                    Mass.ofGrams(1000 * head),
                    Reading.measured(new HeadCentre(metres(along), metres(off))),
                    Reading.measured(Inertia.ofKilogramSquareCentimetres(1e4 * inertia)));
            List<Attachment> attached = tipWeight == 0
                    ? List.of()
                    : List.of(
                            new TipWeight(
                                    "w", Mass.ofGrams(1000 * tipWeight), metres(0.01), Length.ZERO, metres(0.006)),
                            new Counterweight("c", Mass.ofGrams(20), metres(0.05)));
            Work work = new Work(
                    metres(trim), metres(butt), TipWork.NONE, new Seat(metres(insertion), Stop.MARK), attached);
            Build sample = SampleClub.build();
            return new Build(
                    sample.parts()
                            .withShaft(shaft)
                            .withHead(sample.parts()
                                    .head()
                                    .withMass(headMass)
                                    .withBore(Bore.ofTwoDiameters(
                                            SampleClub.mm(9.45), SampleClub.mm(9.4), SampleClub.mm(50), BoreEnd.FLAT))),
                    work);
        }

        /** By finite elements of the beam from clamp to mouth, and sums over the rigid end by a quadrature rule. */
        double expectedHz() {
            double mouth = trim + insertion;
            double clamped = 1 - butt - clamp;
            GaussIntegrator rule = new GaussIntegratorFactory().legendre(6, trim, mouth);
            double m = head + tipWeight + rule.integrate(this::density);
            double first =
                    head * along + tipWeight * (insertion - 0.006) + rule.integrate(z -> density(z) * (mouth - z));
            double second = inertia
                    + head * (along * along + off * off)
                    + tipWeight * (insertion - 0.006) * (insertion - 0.006)
                    + rule.integrate(z -> density(z) * (mouth - z) * (mouth - z));
            TreeSet<Double> places = new TreeSet<>(List.of(mouth, clamped));
            for (double place : at) {
                if (mouth < place && place < clamped) {
                    places.add(place);
                }
            }
            double[] up = places.stream().mapToDouble(x -> x).toArray();
            int n = up.length;
            double[][] stiffness = new double[2][n];
            double[][] density = new double[2][n];
            for (int i = 0; i < n; i++) {
                double z = up[n - 1 - i];
                stiffness[0][i] = density[0][i] = clamped - z;
                stiffness[1][i] = stiffness(z);
                density[1][i] = density(z);
            }
            double centre = first / m;
            return FiniteElements.frequencyHz(
                    stiffness, density, new EndBody(m, second - m * centre * centre, centre), 15);
        }

        private static Length metres(double metres) {
            return Length.ofMillimetres(1000 * metres);
        }
    }

    @Test
    void aThousandClubsAgree() {
        Random random = new Random(7);
        double worst = 0;
        for (int i = 0; i < 1000; i++) {
            Case club = Case.random(random);
            double expected = club.expectedHz();
            double found = ClubFrequency.of(club.build(), Case.metres(club.clamp()))
                    .orElseThrow()
                    .frequency()
                    .hertz();
            worst = Math.max(worst, Math.abs(found / expected - 1));
            // The bound asked of the library. The error of cubic elements falls with the fourth power of their length:
            // ten
            // between two stations err by up to 2e-6 on tapers like these, fifteen by a fifth of that.
            assertThat(found).as(club.toString()).isCloseTo(expected, within(1e-6 * expected));
        }
        assertThat(worst)
                .as("a bound that is never neared would pin nothing down")
                .isGreaterThan(1e-12);
    }
}

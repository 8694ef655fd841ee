package dev.tipwright.lessons;

import static dev.tipwright.lessons.LessonParts.in;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.part.Blank;
import dev.tipwright.core.part.Grip;
import dev.tipwright.core.part.Head;
import dev.tipwright.core.part.Shaft;
import dev.tipwright.core.part.TipWeight;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.IntStream;

/**
 * What is on the shelves, and every club that can be made of it, by number. No club is kept: number {@code n} is made when it is asked
 * for.
 *
 * @param heads on the shelf
 * @param shafts on the rack
 * @param grips in the drawer
 * @param weights for the tip
 * @param lengths that a shaft may be cut to
 */
record Catalogue(
        List<Head> heads, List<Shaft> shafts, List<Grip> grips, List<TipWeight> weights, List<Length> lengths) {

    private static final Length TIP_TRIM = in("1/2");

    /** An invented one of the sizes asked for. */
    static Catalogue invented(int heads, int shafts, int grips, int weights, int lengths) {
        Blank blank = LessonParts.blank("mid");
        return new Catalogue(
                many(
                        heads,
                        k -> LessonParts.head(
                                "head " + k, 250 + 1.5 * k, 62, "2 1/4", "2.15", LessonParts.taperedBore())),
                many(shafts, k -> LessonParts.shaft("shaft " + k, blank, "39", 60 + 2.5 * k, "20.2")),
                many(grips, k -> LessonParts.grip(42 + 1.7 * k).withLabel("grip " + k)),
                many(
                        weights,
                        k -> new TipWeight(
                                "weight " + k, Mass.ofGrams(1 + 0.5 * k), in(".185"), Length.ZERO, in(".25"))),
                many(lengths, k -> in("36").plus(in("1/8").times(k))));
    }

    private static <T> List<T> many(int count, IntFunction<T> each) {
        return IntStream.range(0, count).mapToObj(each).toList();
    }

    int size() {
        int clubs = 1;
        for (List<?> shelf : List.of(heads, shafts, grips, weights, lengths)) {
            clubs = Math.multiplyExact(clubs, shelf.size());
        }
        return clubs;
    }

    /** Club number {@code n}: the length runs fastest, the head slowest. */
    Build club(int n) {
        int left = n;
        Length length = lengths.get(left % lengths.size());
        left /= lengths.size();
        TipWeight weight = weights.get(left % weights.size());
        left /= weights.size();
        Grip grip = grips.get(left % grips.size());
        left /= grips.size();
        Shaft shaft = shafts.get(left % shafts.size());
        Head head = heads.get(left / shafts.size());
        Build club = LessonParts.club(head, shaft, grip, TIP_TRIM, length);
        return club.withWork(club.work().plus(weight));
    }
}

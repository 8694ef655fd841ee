package dev.tipwright.core.part;

import static dev.tipwright.core.Bench.len;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;

import dev.tipwright.core.club.Work;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Attachments in one piece are the list they were made of, say of each part what it says itself, and nobody can change them. */
class AttachmentsTest {

    private static final Mass GRAM = Mass.ofGrams(1);

    /** One of every kind. */
    private static final List<Attachment> ALL = List.of(
            new Adhesive("glue", GRAM),
            new Counterweight("counterweight", GRAM.times(2), len("2 in")),
            new Extension("plug", GRAM.times(3), len("1 in"), len("1.5 in")),
            new Ferrule("ferrule", GRAM.times(4), len(".37 in"), len(".7 in"), len(".35 in")),
            new GripTape("tape", GRAM.times(5), len("5 in")),
            new OtherMass("lead", GRAM.times(6), new Place(Anchor.HOSEL_MOUTH, len("-2 in"))),
            new Shim("shim", GRAM.times(7), len(".004 in"), len("1 in")),
            new TipWeight("plug weight", GRAM.times(8), len(".2 in"), Length.ZERO, len(".25 in")),
            new Extension("second plug", GRAM.times(9), len(".5 in"), len("1 in")));

    @Test
    void areTheListTheyWereMadeOf() {
        Attachments attached = Attachments.of(ALL);
        assertThat(attached).isEqualTo(ALL).hasSameHashCodeAs(ALL).hasToString(ALL.toString());
        for (int i = 0; i < ALL.size(); i++) {
            assertThat(attached.label(i)).isEqualTo(ALL.get(i).label());
            assertThat(attached.mass(i)).isEqualTo(ALL.get(i).mass());
            assertThat(attached.place(i)).isEqualTo(ALL.get(i).place());
        }
        assertThat(ALL.stream().map(Attachment::getClass).distinct().count())
                .isEqualTo(Attachment.class.getPermittedSubclasses().length);
    }

    /** By hand: an inch and a half of plugs. */
    @Test
    void extensionsAddUp() {
        assertThat(Attachments.of(ALL).added()).isEqualTo(len("1.5 in"));
        assertThat(Attachments.of(ALL.subList(3, 8)).added()).isEqualTo(Length.ZERO);
        assertThat(Attachments.of(List.of()).added()).isEqualTo(Length.ZERO);
    }

    @Test
    void oneMoreIsACopyWithItAtTheEnd() {
        Attachments two = Attachments.of(ALL.subList(0, 2));
        Attachments three = two.plus(ALL.get(2));
        assertThat(three).isEqualTo(ALL.subList(0, 3));
        assertThat(three.added()).isEqualTo(len("1 in"));
        assertThat(two).isEqualTo(ALL.subList(0, 2));
        assertThatNullPointerException().isThrownBy(() -> two.plus(null)).withMessageStartingWith("attachment ");
    }

    @Test
    void workHoldsThemSoAndTheyAreNotCopiedAgain() {
        Work work = Work.NONE.withAttached(ALL);
        assertThat(Attachments.of(work.attached())).isSameAs(work.attached());
        assertThat(work.withTipTrim(len("1 in")).attached()).isSameAs(work.attached());
    }

    @Test
    void nobodyChangesThem() {
        List<Attachment> list = new ArrayList<>(ALL);
        Attachments attached = Attachments.of(list);
        list.clear();
        assertThat(attached).isEqualTo(ALL);
        assertThatExceptionOfType(UnsupportedOperationException.class).isThrownBy(() -> attached.set(0, ALL.get(1)));
        assertThatExceptionOfType(UnsupportedOperationException.class).isThrownBy(() -> attached.remove(0));
        assertThatExceptionOfType(IndexOutOfBoundsException.class).isThrownBy(() -> attached.mass(ALL.size()));
    }

    @Test
    void aHoleIsRefused() {
        assertThatNullPointerException()
                .isThrownBy(() -> Attachments.of(Arrays.asList(ALL.get(0), null)))
                .withMessageContaining("attached");
        assertThatNullPointerException().isThrownBy(() -> Attachments.of(null)).withMessageStartingWith("attached ");
    }
}

package dev.tipwright.core.part;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import java.util.AbstractList;
import java.util.Arrays;
import java.util.List;
import java.util.RandomAccess;

/**
 * Attachments in one piece: an unchangeable list that has asked each of its parts for mass and place once. Work holds what is attached
 * so. Whoever weighs a club over and over takes them from here, and need not know of what kind each part is.
 *
 * <pre>{@code
 * Attachments attached = Attachments.of(List.of(
 *         new Extension("plug", Mass.parse("6.4 g"), Length.parse("1 in"), Length.parse("1.5 in")),
 *         new Adhesive("adhesive", Mass.parse("1.1 g"))));
 * attached.mass(1);              // = 1.1 g
 * attached.place(1).anchor();    // = MID_INSERTION
 * attached.added().inches();     // = 1.0
 * }</pre>
 */
public final class Attachments extends AbstractList<Attachment> implements RandomAccess {

    private final Attachment[] parts;
    private final String[] labels;
    private final Mass[] masses;
    private final Place[] places;
    private final Length added;

    private Attachments(Attachment... parts) {
        this.parts = parts;
        this.labels = new String[parts.length];
        this.masses = new Mass[parts.length];
        this.places = new Place[parts.length];
        Length longer = Length.ZERO;
        for (int index = 0; index < parts.length; index++) {
            Attachment part = parts[index];
            labels[index] = part.label();
            masses[index] = part.mass();
            places[index] = part.place();
            if (part instanceof Extension extension) {
                longer = longer.plus(extension.added());
            }
        }
        this.added = longer;
    }

    /**
     * The attachments of a list; a list that is in one piece already is given back as it is.
     *
     * @param attached any number of them
     * @return the same in one piece
     */
    public static Attachments of(List<Attachment> attached) {
        if (attached instanceof Attachments already) {
            return already;
        }
        return new Attachments(Require.list("attached", attached).toArray(Attachment[]::new));
    }

    /**
     * These and one more.
     *
     * @param attachment what is added
     * @return a copy with it at the end
     */
    public Attachments plus(Attachment attachment) {
        Require.given("attachment", attachment);
        Attachment[] more = Arrays.copyOf(parts, parts.length + 1);
        more[parts.length] = attachment;
        return new Attachments(more);
    }

    @Override
    public int size() {
        return parts.length;
    }

    @Override
    public Attachment get(int index) {
        return parts[index];
    }

    /**
     * How the bench calls a part.
     *
     * @param index which
     * @return its label
     * @throws IndexOutOfBoundsException if there is no such part
     */
    public String label(int index) {
        return labels[index];
    }

    /**
     * What a part weighs.
     *
     * @param index which
     * @return its mass
     * @throws IndexOutOfBoundsException if there is no such part
     */
    public Mass mass(int index) {
        return masses[index];
    }

    /**
     * Where the mass of a part is centred.
     *
     * @param index which
     * @return its place
     * @throws IndexOutOfBoundsException if there is no such part
     */
    public Place place(int index) {
        return places[index];
    }

    /**
     * How much longer the extensions among them make the shaft.
     *
     * @return the sum; zero if there is none
     */
    public Length added() {
        return added;
    }
}

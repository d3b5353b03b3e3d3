package loamline.yard;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import loamline.geometry.Box;
import loamline.geometry.Shape;
import loamline.place.Frame;

/**
 * A yard: everything that was traced, in the order in which it was drawn.
 *
 * @param name what the yard is called; may be empty
 * @param frame the plane of all coordinates
 * @param features keys are unique
 * @param backdrop the image underneath, if any
 * @param planning how its cores are to be planned, if anyone has said so
 * @param attachments tables that belong to the visit
 * @param extras what a file said beyond this
 */
public record Yard(
        String name,
        Frame frame,
        List<Feature> features,
        Optional<Backdrop> backdrop,
        Optional<PlanOptions> planning,
        List<Attachment> attachments,
        Extras extras) {
    /** @throws IllegalArgumentException if two features share a key */
    public Yard {
        features = List.copyOf(features);
        attachments = List.copyOf(attachments);
        Set<String> keys = new HashSet<>();
        for (Feature feature : features) {
            if (!keys.add(feature.key())) {
                throw new IllegalArgumentException("two features have the key " + feature.key());
            }
        }
    }

    /** A yard with nothing in it. */
    public static Yard empty(String name, Frame frame) {
        return new Yard(name, frame, List.of(), Optional.empty(), Optional.empty(), List.of(), Extras.NONE);
    }

    /** All features of one sort, in order. */
    public <T extends Feature> Stream<T> all(Class<T> sort) {
        return features.stream().filter(sort::isInstance).map(sort::cast);
    }

    /** The feature with a key. */
    public Optional<Feature> feature(String key) {
        return features.stream().filter(f -> f.key().equals(key)).findFirst();
    }

    /** The position of a feature in {@link #features()}, or -1 if it is not there. */
    public int indexOf(Feature feature) {
        for (int i = 0; i < features.size(); i++) {
            if (features.get(i).key().equals(feature.key())) {
                return i;
            }
        }
        return -1;
    }

    /** The smallest box round all that is drawn; empty if nothing is. */
    public Optional<Box> box() {
        return Box.around(features.stream().flatMap(f -> f.shape().stream()).flatMap(Shape::vertices));
    }

    public Yard withFeatures(List<Feature> changed) {
        return new Yard(name, frame, changed, backdrop, planning, attachments, extras);
    }

    public Yard withName(String changed) {
        return new Yard(changed, frame, features, backdrop, planning, attachments, extras);
    }

    /** The same numbers in another plane. */
    public Yard withFrame(Frame changed) {
        return new Yard(name, changed, features, backdrop, planning, attachments, extras);
    }

    public Yard withBackdrop(Optional<Backdrop> changed) {
        return new Yard(name, frame, features, changed, planning, attachments, extras);
    }

    public Yard withPlanning(PlanOptions changed) {
        return new Yard(name, frame, features, backdrop, Optional.of(changed), attachments, extras);
    }

    public Yard withAttachments(List<Attachment> changed) {
        return new Yard(name, frame, features, backdrop, planning, changed, extras);
    }

    /** The same with one more table, which takes the place of one of its sort and name about the same thing. */
    public Yard attaching(Attachment table) {
        return withAttachments(
                Stream.concat(attachments.stream().filter(other -> !table.replaces(other)), Stream.of(table))
                        .toList());
    }

    /** The tables of a sort, the one attached last at the end. */
    public List<Attachment> attached(Attachment.Sort sort) {
        return attachments.stream().filter(table -> table.is(sort)).toList();
    }

    public Yard withExtras(Extras changed) {
        return new Yard(name, frame, features, backdrop, planning, attachments, changed);
    }
}

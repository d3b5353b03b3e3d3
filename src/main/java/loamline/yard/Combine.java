package loamline.yard;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import loamline.geometry.Cut;
import loamline.geometry.Outline;
import loamline.geometry.Polyline;
import loamline.geometry.Region;
import loamline.geometry.Shape;
import loamline.place.Frame;

/**
 * Features cut apart and joined.
 *
 * <p>New corners come out on the steps of {@link Frame#onStep}, as a file keeps them: a piece's area may differ by half
 * a step times its perimeter. Pieces share the corners where they meet, so that joining them leaves no gap.
 */
public final class Combine {
    private Combine() {}

    /**
     * What became of features.
     *
     * @param yard with the change
     * @param keys of the features that came out of it, in yard order
     */
    public record Outcome(Yard yard, List<String> keys) {
        public Outcome {
            keys = List.copyOf(keys);
        }
    }

    /**
     * Cuts features along a drawn line. The largest piece keeps the key, and the parts that the line does not divide;
     * the others follow it in the yard, largest first. Pieces of turf become zones of their own: "Front" becomes
     * "Front a", "Front b" and so on, names in use passed over. Gates go with the piece of fence they are on.
     *
     * @return empty if the line divides none of them
     */
    public static Optional<Outcome> cut(Yard yard, Set<String> keys, Polyline along) {
        Yard changed = yard;
        List<String> out = new ArrayList<>();
        for (Feature feature : yard.features()) {
            List<Feature> pieces = keys.contains(feature.key()) ? pieces(feature, along) : List.of();
            if (pieces.size() > 1) {
                List<Feature> named = keyed(changed, zoned(changed, pieces));
                changed = inPlaceOf(changed, feature, named);
                named.forEach(piece -> out.add(piece.key()));
            }
        }
        return out.isEmpty() ? Optional.empty() : Optional.of(new Outcome(changed, out));
    }

    private static List<Feature> pieces(Feature feature, Polyline along) {
        Optional<Shape> shape = feature.shape();
        if (feature instanceof Barrier barrier) {
            return stretches(barrier, along);
        } else if (shape.isPresent() && shape.get() instanceof Outline outline) {
            return outlines(outline, along).stream().map(feature::withShape).toList();
        } else if (shape.isPresent() && shape.get() instanceof Polyline line) {
            return stretches(line, along).stream().map(feature::withShape).toList();
        }
        return List.of();
    }

    /** The pieces of an outline, each on steps; the undivided parts go with the first. */
    private static List<Shape> outlines(Outline outline, Polyline along) {
        List<Region> pieces = new ArrayList<>();
        List<Region> undivided = new ArrayList<>();
        for (Region part : Region.of(outline).parts()) {
            List<Region> cut = Cut.of(part, along);
            (cut.size() > 1 ? pieces : undivided).addAll(cut);
        }
        if (pieces.isEmpty()) {
            return List.of();
        }
        pieces.sort((a, b) -> Double.compare(b.areaM2(), a.areaM2()));
        List<Shape> shapes = new ArrayList<>();
        for (Region piece : pieces) {
            Stream<Region> also = shapes.isEmpty() ? undivided.stream() : Stream.empty();
            shapes.add(new Outline(Stream.concat(Stream.of(piece), also)
                            .flatMap(region -> region.outline().parts().stream())
                            .toList())
                    .map(Frame::onStep));
        }
        return shapes;
    }

    private static List<Polyline> stretches(Polyline line, Polyline along) {
        List<Polyline> stretches = new ArrayList<>();
        double fromM = 0;
        for (double atM : Cut.distancesM(line, along)) {
            stretches.add(onSteps(line.between(fromM, atM)));
            fromM = atM;
        }
        stretches.add(onSteps(line.between(fromM, line.lengthM())));
        return stretches;
    }

    private static Polyline onSteps(Polyline line) {
        return line.map(Frame::onStep);
    }

    private static List<Feature> stretches(Barrier barrier, Polyline along) {
        List<Feature> pieces = new ArrayList<>();
        double fromM = 0;
        List<Polyline> stretches = stretches(barrier.line(), along);
        for (int i = 0; i < stretches.size(); i++) {
            double startM = fromM;
            boolean isLast = i == stretches.size() - 1;
            double endM = isLast
                    ? Double.POSITIVE_INFINITY
                    : startM + stretches.get(i).lengthM();
            pieces.add(barrier.withGates(barrier.gates().stream()
                            .filter(gate -> gate.atM() >= startM && gate.atM() < endM)
                            .map(gate -> new Barrier.Opening(gate.atM() - startM, gate.widthM(), gate.extras()))
                            .toList())
                    .withShape(stretches.get(i)));
            fromM = endM;
        }
        return pieces;
    }

    /** Turf under the names of new zones; anything else as it is. */
    private static List<Feature> zoned(Yard yard, List<Feature> pieces) {
        Set<String> taken = yard.all(Turf.class).map(Turf::zone).collect(Collectors.toSet());
        List<Feature> named = new ArrayList<>();
        for (Feature piece : pieces) {
            if (piece instanceof Turf turf) {
                String name = freeName(turf.zone(), taken);
                taken.add(name);
                named.add(turf.withZone(name));
            } else {
                named.add(piece);
            }
        }
        return named;
    }

    /** The first of "Front a" … "Front z", "Front 27", … that is free. */
    private static String freeName(String stem, Set<String> taken) {
        int n = 1;
        String name = stem + " a";
        while (taken.contains(name)) {
            n++;
            name = stem + " " + (n <= 26 ? String.valueOf((char) ('a' + n - 1)) : String.valueOf(n));
        }
        return name;
    }

    /** The first under its own key, the others under new ones. */
    static List<Feature> keyed(Yard yard, List<Feature> pieces) {
        Yard grown = yard;
        List<Feature> keyed = new ArrayList<>(List.of(pieces.get(0)));
        for (Feature piece : pieces.subList(1, pieces.size())) {
            Feature fresh = piece.withKey(Edits.freeKey(grown));
            grown = Edits.add(grown, fresh);
            keyed.add(fresh);
        }
        return keyed;
    }

    /** The yard with others where one feature was. */
    static Yard inPlaceOf(Yard yard, Feature one, List<Feature> others) {
        return yard.withFeatures(yard.features().stream()
                .flatMap(old -> old.key().equals(one.key()) ? others.stream() : Stream.of(old))
                .toList());
    }

    /**
     * Joins features of one kind. Of outlines, what touches or overlaps becomes one part and what lies apart stays a
     * part of its own; lines are joined end to end, fences with their gates. The first in the yard's order gives key,
     * name, direction and everything else.
     *
     * @return empty unless there are at least two, of one kind, either outlines with ground in them or lines whose
     *     ends meet
     */
    public static Optional<Outcome> join(Yard yard, Set<String> keys) {
        List<Feature> chosen = yard.features().stream()
                .filter(feature -> keys.contains(feature.key()))
                .toList();
        Optional<Feature> whole = joined(chosen);
        return whole.map(one -> {
            Set<String> others = new HashSet<>(keys);
            others.remove(one.key());
            return new Outcome(Edits.remove(Edits.replace(yard, one), others), List.of(one.key()));
        });
    }

    private static Optional<Feature> joined(List<Feature> chosen) {
        if (chosen.size() < 2 || chosen.stream().map(Feature::kind).distinct().count() > 1) {
            return Optional.empty();
        }
        List<Polyline> lines = shapes(chosen, Polyline.class);
        if (lines.size() == chosen.size()) {
            return EndToEnd.of(lines).map(whole -> along(onSteps(whole), chosen));
        }
        List<Outline> outlines = shapes(chosen, Outline.class);
        return outlines.size() < chosen.size()
                ? Optional.empty()
                : Optional.of(Region.union(outlines.stream().map(Region::of).toList()))
                        .filter(all -> !all.isEmpty())
                        .map(all -> chosen.get(0).withShape(all.outline().map(Frame::onStep)));
    }

    /** The first along the line of all, with the gates of all where they were. */
    private static Feature along(Polyline whole, List<Feature> chosen) {
        List<Barrier.Opening> gates = new ArrayList<>();
        for (Feature feature : chosen) {
            if (feature instanceof Barrier barrier) {
                barrier.gates()
                        .forEach(gate -> gates.add(new Barrier.Opening(
                                whole.alongM(barrier.line().at(gate.atM())), gate.widthM(), gate.extras())));
            }
        }
        Feature first = chosen.get(0).withShape(whole);
        return first instanceof Barrier barrier ? barrier.withGates(gates) : first;
    }

    private static <S extends Shape> List<S> shapes(List<Feature> features, Class<S> sort) {
        return features.stream()
                .flatMap(feature -> feature.shape().stream())
                .filter(sort::isInstance)
                .map(sort::cast)
                .toList();
    }
}

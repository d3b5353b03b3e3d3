package loamline.yard;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import loamline.geometry.Outline;
import loamline.geometry.Region;
import loamline.place.Frame;

/**
 * Zones cut where the class of their ground changes, such as by light.
 *
 * <p>A zone all in one class stays as it is. The others become a zone a class, named "Front, full sun"; a zone that was
 * cut so before is cut anew under its first name, so that pieces of one class come together. The largest piece of an
 * outline keeps its key, and all that lies in no class: ground under a house or a bed stays part of the outline. New
 * corners come out on the steps of {@link Frame#onStep}.
 */
public final class ZoneDivision {
    private static final String BETWEEN = ", ";

    private final Yard yard;
    private final List<Part> parts;
    private final double leastM2;

    private ZoneDivision(Yard yard, List<Part> parts, double leastM2) {
        this.yard = yard;
        this.parts = parts;
        this.leastM2 = leastM2;
    }

    /**
     * Ground of one class.
     *
     * @param word the class, as in {@code full sun}
     * @param ground no two parts overlap
     */
    public record Part(String word, Region ground) {}

    /**
     * Cuts all zones.
     *
     * @param parts a class each, no two of one word
     * @param leastM2 of an outline's ground in a class; less goes with the outline's largest piece
     * @return empty if no zone lies in two classes
     */
    public static Optional<Yard> of(Yard yard, List<Part> parts, double leastM2) {
        Yard divided = new ZoneDivision(yard, parts, leastM2).divided();
        return divided.equals(yard) ? Optional.empty() : Optional.of(divided);
    }

    private Yard divided() {
        Map<String, List<Part>> piecesByOutline = new LinkedHashMap<>();
        yard.all(Turf.class).forEach(turf -> piecesByOutline.put(turf.key(), pieces(Region.of(turf.outline()))));
        Map<String, Long> classesByZone = yard.all(Turf.class)
                .collect(Collectors.groupingBy(
                        Turf::zone,
                        Collectors.collectingAndThen(
                                Collectors.flatMapping(
                                        turf -> piecesByOutline.getOrDefault(turf.key(), List.of()).stream()
                                                .map(Part::word)
                                                .distinct(),
                                        Collectors.toSet()),
                                words -> (long) words.size())));
        Yard changed = yard;
        for (Turf turf : yard.all(Turf.class).toList()) {
            List<Part> pieces = piecesByOutline.getOrDefault(turf.key(), List.of());
            if (classesByZone.getOrDefault(turf.zone(), 0L) > 1 && !pieces.isEmpty()) {
                changed = cut(changed, turf, pieces);
            }
        }
        return changed;
    }

    /** An outline by class, largest first; together its ground. None if it lies in no class. */
    private List<Part> pieces(Region drawn) {
        List<Part> bySize = parts.stream()
                .map(part -> new Part(part.word(), drawn.intersection(part.ground())))
                .filter(part -> !part.ground().isEmpty())
                .sorted((a, b) -> Double.compare(b.ground().areaM2(), a.ground().areaM2()))
                .toList();
        if (bySize.isEmpty()) {
            return List.of();
        }
        List<Part> others = bySize.stream()
                .skip(1)
                .filter(part -> part.ground().areaM2() >= leastM2)
                .toList();
        Region rest = drawn.minus(Region.union(others.stream().map(Part::ground).toList()));
        List<Part> pieces = new ArrayList<>(List.of(new Part(bySize.get(0).word(), rest)));
        pieces.addAll(others);
        return pieces;
    }

    private Yard cut(Yard before, Turf turf, List<Part> pieces) {
        List<Feature> made = pieces.stream()
                .<Feature>map(piece -> turf.withZone(firstName(turf.zone()) + BETWEEN + piece.word())
                        .withShape(outline(turf, piece, pieces.size())))
                .toList();
        return Combine.inPlaceOf(before, turf, Combine.keyed(before, made));
    }

    /** An outline that stays whole keeps its corners as drawn. */
    private static Outline outline(Turf turf, Part piece, int of) {
        return of == 1 ? turf.outline() : piece.ground().outline().map(Frame::onStep);
    }

    /** A zone's name before it was cut by class. */
    private String firstName(String zone) {
        return parts.stream()
                .map(part -> BETWEEN + part.word())
                .filter(zone::endsWith)
                .findFirst()
                .map(end -> zone.substring(0, zone.length() - end.length()))
                .orElse(zone);
    }
}

package loamline.files;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import loamline.geometry.Point;
import loamline.yard.Backdrop;
import loamline.yard.Backdrop.Placement;
import loamline.yard.Extras;
import loamline.yard.KnownDistance;
import org.jspecify.annotations.Nullable;

/**
 * The image under the outlines, as it stands in files: the placement as its six numbers a to f, and each known distance,
 * if there are any, as five: column and row of its one end and of its other, then its length in metres.
 */
final class BackdropCodec {
    private static final String DISTANCES = "knownDistances";

    private static final JsonNames NAMES =
            JsonNames.of("file", "widthPx", "heightPx", "placement", "scaleErrorRel", "opacity", DISTANCES);

    private BackdropCodec() {}

    /** Empty, and reported, if the file, its size or its placement is missing: an image is nothing without them. */
    static Optional<Backdrop> read(JsonMembers backdrop) {
        Optional<String> file = backdrop.text("file");
        OptionalInt widthPx = backdrop.whole("widthPx");
        OptionalInt heightPx = backdrop.whole("heightPx");
        Optional<Placement> placement = placement(backdrop);
        if (file.isEmpty() || widthPx.isEmpty() || heightPx.isEmpty() || placement.isEmpty()) {
            backdrop.log()
                    .error(
                            "BACKDROP_INCOMPLETE",
                            backdrop.pointer(),
                            "needs “file”, “widthPx”, “heightPx” and “placement” (six numbers): open the image again");
            return Optional.empty();
        }
        return Optional.of(new Backdrop(
                file.get(),
                widthPx.getAsInt(),
                heightPx.getAsInt(),
                placement.get(),
                backdrop.number("scaleErrorRel", 0),
                backdrop.number("opacity", 1),
                distances(backdrop),
                new Extras(backdrop.others(NAMES))));
    }

    private static Optional<Placement> placement(JsonMembers backdrop) {
        double[] n = finite(backdrop.list("placement"));
        return n.length == 6 ? Optional.of(new Placement(n[0], n[1], n[2], n[3], n[4], n[5])) : Optional.empty();
    }

    private static double[] finite(List<?> list) {
        return list.stream()
                .mapToDouble(v -> v instanceof Number number ? number.doubleValue() : Double.NaN)
                .filter(Double::isFinite)
                .toArray();
    }

    /** One that cannot be is reported and left out; the others count. */
    private static List<KnownDistance> distances(JsonMembers backdrop) {
        List<KnownDistance> distances = new ArrayList<>();
        for (Object raw : backdrop.list(DISTANCES)) {
            double[] n = raw instanceof List<?> list ? finite(list) : new double[0];
            if (n.length == 5 && n[4] > 0 && (n[0] != n[2] || n[1] != n[3])) {
                distances.add(new KnownDistance(new Point(n[0], n[1]), new Point(n[2], n[3]), n[4]));
            } else {
                backdrop.log()
                        .warning(
                                "KNOWN_DISTANCE_UNUSABLE",
                                backdrop.at(DISTANCES),
                                "a known distance needs five numbers, column and row of two ends and a length in metres"
                                        + " above 0; one is left out: measure it again");
            }
        }
        return distances;
    }

    static Map<String, @Nullable Object> written(Backdrop backdrop) {
        Placement p = backdrop.placement();
        Map<String, @Nullable Object> members = new LinkedHashMap<>();
        members.put("file", backdrop.file());
        members.put("widthPx", backdrop.widthPx());
        members.put("heightPx", backdrop.heightPx());
        members.put("placement", List.of(p.a(), p.b(), p.c(), p.d(), p.e(), p.f()));
        members.put("scaleErrorRel", backdrop.scaleErrorRel());
        members.put("opacity", backdrop.opacity());
        if (!backdrop.knownDistances().isEmpty()) {
            members.put(
                    DISTANCES,
                    backdrop.knownDistances().stream()
                            .map(known -> List.of(
                                    known.from().x(),
                                    known.from().y(),
                                    known.to().x(),
                                    known.to().y(),
                                    known.lengthM()))
                            .toList());
        }
        NAMES.addOthers(backdrop.extras().members(), members);
        return members;
    }
}

package loamline.files;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Polyline;
import loamline.geometry.Shape;
import loamline.place.LonLat;
import loamline.sampling.CorePlan;
import loamline.sampling.CorePlan.PlannedCore;
import loamline.sampling.CorePlan.Walk;
import loamline.yard.Feature;
import loamline.yard.Kind;
import loamline.yard.Yard;
import org.jspecify.annotations.Nullable;

/**
 * A yard as KML 2.2 (OGC 07-147r2): a folder a kind, each feature with its properties, then the cores, spares and walks
 * of a plan in folders of their own.
 *
 * <p>A ring of fewer than three points encloses nothing and is left out; a feature of which nothing is left stands in
 * its folder without a geometry. Features of unknown kinds have no place in KML.
 */
public final class KmlFile {
    private static final String NAMESPACE = "http://www.opengis.net/kml/2.2";

    /** Properties that name a feature, the most telling first. */
    private static final List<String> NAMING = List.of("id", "zone", "name", "reason", "note");

    private final Places places;
    private final XmlText kml = new XmlText();

    private KmlFile(Yard yard) {
        this.places = new Places(yard.frame());
    }

    /**
     * The file's text; empty if the yard has no place on the earth, which KML needs.
     *
     * @param plan its cores stand for the yard's own, if it has any
     */
    public static Optional<String> of(Yard yard, CorePlan plan) {
        return yard.frame().origin().map(origin -> new KmlFile(yard).text(yard, plan));
    }

    private String text(Yard yard, CorePlan plan) {
        Map<Kind, List<Feature>> drawn = new LinkedHashMap<>();
        for (Kind kind : Kind.values()) {
            List<Feature> ofKind = yard.features().stream()
                    .filter(f -> f.kind().equals(Optional.of(kind)))
                    .toList();
            if (!ofKind.isEmpty() && (kind != Kind.CORE || plan.cores().isEmpty())) {
                drawn.put(kind, ofKind);
            }
        }
        kml.open("kml").attribute("xmlns", NAMESPACE);
        kml.open("Document").text("name", yard.name());
        Stream.concat(
                        drawn.keySet().stream().map(KmlStyle::of),
                        Stream.of(KmlStyle.CORE, KmlStyle.SPARE, KmlStyle.WALK))
                .distinct()
                .forEach(style -> style.write(kml));
        drawn.forEach((kind, features) -> folder(kind.word(), features, this::feature));
        Map<Boolean, List<PlannedCore>> spares = plan.cores().stream()
                .collect(Collectors.partitioningBy(core -> core.spareOf().isPresent()));
        folder("cores", spares.getOrDefault(false, List.of()), core -> core(core, KmlStyle.CORE));
        folder("spares", spares.getOrDefault(true, List.of()), core -> core(core, KmlStyle.SPARE));
        folder("walks", plan.walks(), this::walk);
        kml.close().close();
        return kml.toString();
    }

    private <T> void folder(String name, List<T> members, Consumer<T> write) {
        if (!members.isEmpty()) {
            kml.open("Folder").text("name", name);
            members.forEach(write);
            kml.close();
        }
    }

    private void feature(Feature feature) {
        Kind kind = feature.kind().orElseThrow();
        Map<String, @Nullable Object> properties = FeatureCodecs.of(kind).properties(feature);
        String name = NAMING.stream()
                .filter(properties::containsKey)
                .map(key -> String.valueOf(properties.get(key)))
                .findFirst()
                .orElse(kind.word());
        placemark(name, KmlStyle.of(kind), properties, feature.shape().orElseThrow());
    }

    private void core(PlannedCore core, KmlStyle style) {
        Map<String, @Nullable Object> properties = new LinkedHashMap<>();
        properties.put("composite", core.composite());
        properties.put("zone", core.zone());
        core.spareOf().ifPresent(id -> properties.put("spareOf", id));
        core.order().ifPresent(order -> properties.put("order", order));
        placemark(core.id(), style, properties, core.at());
    }

    private void walk(Walk walk) {
        Map<String, @Nullable Object> properties = new LinkedHashMap<>();
        properties.put("lengthM", walk.lengthM());
        placemark("walk " + walk.composite(), KmlStyle.WALK, properties, walk.path());
    }

    private void placemark(String name, KmlStyle style, Map<String, @Nullable Object> properties, Shape shape) {
        kml.open("Placemark").text("name", name).text("styleUrl", "#" + style.id());
        if (!properties.isEmpty()) {
            kml.open("ExtendedData");
            properties.forEach((key, value) -> kml.open("Data")
                    .attribute("name", key)
                    .text("value", value instanceof String text ? text : JsonText.excerpt(value, Integer.MAX_VALUE))
                    .close());
            kml.close();
        }
        shape(shape);
        kml.close();
    }

    private void shape(Shape shape) {
        if (shape instanceof Point p) {
            kml.open("Point").text("coordinates", tuple(p)).close();
        } else if (shape instanceof Polyline line) {
            kml.open("LineString")
                    .text("coordinates", tuples(twoAtLeast(line.points())))
                    .close();
        } else {
            outline((Outline) shape);
        }
    }

    /** A line needs two points; one that has not moved repeats its only one. */
    private static List<Point> twoAtLeast(List<Point> points) {
        return points.size() == 1 ? List.of(points.get(0), points.get(0)) : points;
    }

    private void outline(Outline outline) {
        List<Outline.Part> parts =
                outline.parts().stream().filter(part -> encloses(part.shell())).toList();
        if (parts.size() == 1) {
            polygon(parts.get(0));
        } else if (!parts.isEmpty()) {
            kml.open("MultiGeometry");
            parts.forEach(this::polygon);
            kml.close();
        }
    }

    private static boolean encloses(List<Point> ring) {
        return ring.size() >= 3;
    }

    private void polygon(Outline.Part part) {
        kml.open("Polygon");
        ring("outerBoundaryIs", part.shell());
        part.holes().stream().filter(KmlFile::encloses).forEach(hole -> ring("innerBoundaryIs", hole));
        kml.close();
    }

    private void ring(String side, List<Point> ring) {
        kml.open(side).open("LinearRing");
        kml.text("coordinates", tuples(ring) + " " + tuple(ring.get(0)));
        kml.close().close();
    }

    private String tuples(List<Point> points) {
        return points.stream().map(this::tuple).collect(Collectors.joining(" "));
    }

    private String tuple(Point p) {
        LonLat place = places.onEarth(p).orElseThrow();
        return JsonText.number(place.lonDeg()) + "," + JsonText.number(place.latDeg());
    }
}

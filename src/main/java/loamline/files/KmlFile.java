package loamline.files;

import java.io.StringWriter;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Polyline;
import loamline.geometry.Shape;
import loamline.place.LonLat;
import loamline.sampling.CorePlan;
import loamline.yard.Boundary;
import loamline.yard.Building;
import loamline.yard.Core;
import loamline.yard.Cover;
import loamline.yard.Feature;
import loamline.yard.Kind;
import loamline.yard.Turf;
import loamline.yard.Yard;

/** A yard as KML 2.2 (OGC 07-147r2): a folder a kind, then the cores and the walks of a plan. */
public final class KmlFile {
    private static final String NAMESPACE = "http://www.opengis.net/kml/2.2";

    /** Line and fill by kind, as KML writes colours: aabbggrr. */
    private static final Map<Kind, String[]> COLOURS = Map.ofEntries(
            Map.entry(Kind.TURF, new String[] {"ff4d6a2b", "66a0c87f"}),
            Map.entry(Kind.BED, new String[] {"ff3f7fb7", "6690c8e8"}),
            Map.entry(Kind.BUILDING, new String[] {"ff55645c", "99a8b4b8"}),
            Map.entry(Kind.PAVING, new String[] {"ff8a8f90", "66c8cccc"}),
            Map.entry(Kind.WATER, new String[] {"ff7f5524", "66e6bc8f"}));

    private final Yard yard;
    private final Places places;
    private final XMLStreamWriter xml;

    private KmlFile(Yard yard, XMLStreamWriter xml) {
        this.yard = yard;
        this.places = new Places(yard.frame());
        this.xml = xml;
    }

    /** The file's text; empty if the yard has no place on the earth, which KML needs. */
    public static Optional<String> of(Yard yard, CorePlan plan) {
        if (yard.frame().origin().isEmpty()) {
            return Optional.empty();
        }
        try {
            StringWriter out = new StringWriter();
            new KmlFile(yard, XMLOutputFactory.newFactory().createXMLStreamWriter(out)).write(plan);
            return Optional.of(out.toString());
        } catch (XMLStreamException e) {
            throw new IllegalStateException("KML written to memory", e);
        }
    }

    private void write(CorePlan plan) throws XMLStreamException {
        xml.writeStartDocument("UTF-8", "1.0");
        line();
        open("kml");
        xml.writeDefaultNamespace(NAMESPACE);
        open("Document");
        text("name", yard.name());
        for (Kind kind : Kind.values()) {
            if (COLOURS.containsKey(kind)) {
                style(kind);
            }
        }
        for (Kind kind : Kind.values()) {
            folder(kind);
        }
        walks(plan);
        close();
        close();
        xml.writeEndDocument();
        line();
    }

    private void style(Kind kind) throws XMLStreamException {
        String[] colours = COLOURS.getOrDefault(kind, new String[] {"ff000000", "00000000"});
        open("Style");
        xml.writeAttribute("id", kind.word());
        open("LineStyle");
        text("color", colours[0]);
        close();
        open("PolyStyle");
        text("color", colours[1]);
        close();
        close();
    }

    private void folder(Kind kind) throws XMLStreamException {
        List<Feature> members = yard.features().stream()
                .filter(f -> f.kind().filter(kind::equals).isPresent() && hasPlace(f))
                .toList();
        if (members.isEmpty()) {
            return;
        }
        open("Folder");
        text("name", kind.word());
        for (Feature feature : members) {
            open("Placemark");
            text("name", nameOf(feature, kind));
            if (COLOURS.containsKey(kind)) {
                text("styleUrl", "#" + kind.word());
            }
            shape(feature.shape().orElseThrow());
            close();
        }
        close();
    }

    private static boolean hasPlace(Feature feature) {
        return feature.shape().flatMap(shape -> shape.vertices().findAny()).isPresent();
    }

    private static String nameOf(Feature feature, Kind kind) {
        String name = "";
        if (feature instanceof Turf turf) {
            name = turf.zone();
        } else if (feature instanceof Building building) {
            name = building.name();
        } else if (feature instanceof Cover cover) {
            name = cover.name();
        } else if (feature instanceof Boundary boundary) {
            name = boundary.name();
        } else if (feature instanceof Core core) {
            name = core.id();
        }
        return name.isBlank() ? kind.word() : name;
    }

    private void walks(CorePlan plan) throws XMLStreamException {
        if (!plan.cores().isEmpty()) {
            open("Folder");
            text("name", "core plan");
            for (CorePlan.PlannedCore core : plan.cores()) {
                placemark(core.id(), core.at());
            }
            for (CorePlan.Walk walk : plan.walks()) {
                placemark("walk " + walk.composite(), walk.path());
            }
            close();
        }
    }

    private void placemark(String name, Shape shape) throws XMLStreamException {
        open("Placemark");
        text("name", name);
        shape(shape);
        close();
    }

    private void shape(Shape shape) throws XMLStreamException {
        if (shape instanceof Point p) {
            open("Point");
            text("coordinates", tuple(p));
            close();
        } else if (shape instanceof Polyline line) {
            open("LineString");
            text("coordinates", tuples(line.points()));
            close();
        } else {
            open("MultiGeometry");
            for (Outline.Part part : ((Outline) shape).parts()) {
                polygon(part);
            }
            close();
        }
    }

    private void polygon(Outline.Part part) throws XMLStreamException {
        open("Polygon");
        ring("outerBoundaryIs", part.shell());
        for (List<Point> hole : part.holes()) {
            ring("innerBoundaryIs", hole);
        }
        close();
    }

    private void ring(String side, List<Point> ring) throws XMLStreamException {
        open(side);
        open("LinearRing");
        text("coordinates", tuples(ring) + " " + tuple(ring.get(0)));
        close();
        close();
    }

    private String tuples(List<Point> points) {
        return points.stream().map(this::tuple).collect(Collectors.joining(" "));
    }

    private String tuple(Point p) {
        LonLat place = places.onEarth(p).orElseThrow();
        return JsonText.number(place.lonDeg()) + "," + JsonText.number(place.latDeg());
    }

    private void open(String element) throws XMLStreamException {
        xml.writeStartElement(element);
    }

    private void close() throws XMLStreamException {
        xml.writeEndElement();
        line();
    }

    private void line() throws XMLStreamException {
        xml.writeCharacters("\n");
    }

    private void text(String element, String content) throws XMLStreamException {
        xml.writeStartElement(element);
        xml.writeCharacters(content);
        close();
    }
}

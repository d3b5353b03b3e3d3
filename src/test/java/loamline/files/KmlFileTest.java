package loamline.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.stream.Stream;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Polyline;
import loamline.place.Frame;
import loamline.place.LonLat;
import loamline.place.Projection;
import loamline.sampling.CorePlan;
import loamline.yard.Building;
import loamline.yard.Core;
import loamline.yard.Extras;
import loamline.yard.Feature;
import loamline.yard.KeepAway;
import loamline.yard.Trouble;
import loamline.yard.Unknown;
import loamline.yard.Yard;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;

class KmlFileTest {
    private static final CorePlan NO_PLAN =
            new CorePlan(1, List.of(), List.of(), List.of(), List.of(), List.of(), new LinkedHashMap<>());

    private static Yard yard(Feature... features) {
        return Yard.empty("a & b", PlanFixture.COLUMBUS).withFeatures(List.of(features));
    }

    private static Building house(Outline outline) {
        return new Building("f1", "house", 4.5, 0, outline, Extras.NONE);
    }

    private static String text(Yard yard, CorePlan plan) throws Exception {
        String text = KmlFile.of(yard, plan).orElseThrow();
        XmlChecks.validate(text, "kml-2.2-part.xsd");
        return text;
    }

    private static Document kml(Yard yard, CorePlan plan) throws Exception {
        return XmlChecks.parse(text(yard, plan));
    }

    private static List<Point> metres(String coordinates) {
        Projection projection = new Projection(PlanFixture.COLUMBUS.origin().orElseThrow());
        return Stream.of(coordinates.split(" ", -1))
                .map(tuple -> tuple.split(",", -1))
                .map(t -> projection.toYard(new LonLat(Double.parseDouble(t[0]), Double.parseDouble(t[1]))))
                .toList();
    }

    @Test
    void everyFeatureOfTheDemoYardIsThere() throws Exception {
        Yard yard =
                YardFiles.read(Path.of("maps/plover-court.loam.json")).yard().orElseThrow();
        Document kml = kml(yard, NO_PLAN);
        assertThat(XmlChecks.texts(kml, "Placemark")).hasSize(yard.features().size());
    }

    @Test
    void anOutlineKeepsItsPlaceAndHoles() throws Exception {
        Outline ring = new Outline(List.of(new Outline.Part(
                List.of(new Point(0, 0), new Point(10, 0), new Point(10, 10)),
                List.of(List.of(new Point(5, 1), new Point(9, 1), new Point(9, 5))))));
        Document kml = kml(yard(house(ring)), NO_PLAN);
        List<String> rings = XmlChecks.texts(kml, "coordinates");
        assertThat(metres(rings.get(0)))
                .containsExactly(new Point(0, 0), new Point(10, 0), new Point(10, 10), new Point(0, 0));
        assertThat(metres(rings.get(1)))
                .containsExactly(new Point(5, 1), new Point(9, 1), new Point(9, 5), new Point(5, 1));
        assertThat(XmlChecks.texts(kml, "MultiGeometry")).isEmpty();
        assertThat(XmlChecks.texts(kml, "innerBoundaryIs")).hasSize(1);
    }

    @Test
    void anOutlineOfTwoPartsIsOnePlacemark() throws Exception {
        List<Point> one = List.of(new Point(0, 0), new Point(1, 0), new Point(1, 1));
        List<Point> two = List.of(new Point(5, 0), new Point(6, 0), new Point(6, 1));
        Outline both = new Outline(List.of(new Outline.Part(one, List.of()), new Outline.Part(two, List.of())));
        Document kml = kml(yard(house(both)), NO_PLAN);
        assertThat(XmlChecks.texts(kml, "Placemark")).hasSize(1);
        assertThat(XmlChecks.texts(kml, "Polygon")).hasSize(2);
    }

    @Test
    void propertiesComeAlong() throws Exception {
        Document kml = kml(yard(house(Outline.of(0, 0, 1, 0, 1, 1))), NO_PLAN);
        assertThat(XmlChecks.texts(kml, "name")).containsExactly("a & b", "building", "house");
        assertThat(XmlChecks.texts(kml, "value")).containsExactly("house", "4.5", "0.0");
        assertThat(XmlChecks.texts(kml, "styleUrl")).containsExactly("#building");
    }

    @Test
    void aNamelessFeatureIsCalledByItsKind() throws Exception {
        Document kml = kml(yard(new KeepAway("k", 1, "", new Point(1, 2), Extras.NONE)), NO_PLAN);
        assertThat(XmlChecks.texts(kml, "name")).containsExactly("a & b", "keepaway", "keepaway");
    }

    @Test
    void aPlansCoresStandForTheYardsOwn() throws Exception {
        Yard yard = yard(new Core("c", "A1", "A", "front", new Point(2, 3), false, Extras.NONE));
        assertThat(XmlChecks.texts(kml(yard, NO_PLAN), "name")).containsExactly("a & b", "core", "A1");
        Document kml = kml(yard, PlanFixture.plan("front"));
        assertThat(XmlChecks.texts(kml, "name"))
                .containsExactly("a & b", "cores", "A1", "A2", "spares", "A1s", "walks", "walk A");
        assertThat(metres(XmlChecks.texts(kml, "coordinates").get(3)))
                .hasSize(5)
                .contains(new Point(5, 2));
    }

    @Test
    void whatEnclosesNothingIsListedWithoutAGeometry() throws Exception {
        Outline two = new Outline(List.of(new Outline.Part(List.of(new Point(0, 0), new Point(1, 0)), List.of())));
        Document kml = kml(
                yard(
                        house(two),
                        new Trouble("t", "", OptionalInt.empty(), new Outline(List.of()), Extras.NONE),
                        new KeepAway("k", 1, "", new Polyline(List.of(new Point(1, 1))), Extras.NONE)),
                NO_PLAN);
        assertThat(XmlChecks.texts(kml, "Placemark")).hasSize(3);
        assertThat(XmlChecks.texts(kml, "Polygon")).isEmpty();
        assertThat(metres(XmlChecks.texts(kml, "coordinates").get(0)))
                .containsExactly(new Point(1, 1), new Point(1, 1));
    }

    @Test
    void unknownKindsAreLeftOut() throws Exception {
        assertThat(XmlChecks.texts(kml(yard(new Unknown("u", Extras.NONE)), NO_PLAN), "Placemark"))
                .isEmpty();
    }

    @Test
    void namesMayHoldAnything() throws Exception {
        Building odd =
                new Building("f1", "]]> <x> \u0000 \uD83C\uDF33", 3, 0, Outline.of(0, 0, 1, 0, 1, 1), Extras.NONE);
        assertThat(XmlChecks.texts(kml(yard(odd), NO_PLAN), "name")).contains("]]> <x> \uFFFD \uD83C\uDF33");
    }

    @Test
    void coloursAreOpacityBlueGreenRed() throws Exception {
        // building edge #5F5C55; its wash #D6D2CA at 0.4
        assertThat(XmlChecks.texts(kml(yard(house(Outline.of(0, 0, 1, 0, 1, 1))), NO_PLAN), "color"))
                .startsWith("ff555c5f", "ff555c5f", "66cad2d6");
    }

    @Test
    void theSameYardGivesTheSameBytesEverywhere() throws Exception {
        Yard yard = yard(house(Outline.of(0, 0, 1, 0, 1, 1)));
        String text = text(yard, PlanFixture.plan("front"));
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG"));
            assertThat(text(yard, PlanFixture.plan("front"))).isEqualTo(text);
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void aDrawingWithoutAPlaceHasNoKml() {
        assertThat(KmlFile.of(Yard.empty("", Frame.local()), NO_PLAN)).isEmpty();
    }
}

package loamline.yard;

import java.util.Locale;
import java.util.Optional;
import loamline.geometry.Box;
import loamline.geometry.Point;
import loamline.geometry.Shape;
import loamline.place.LonLat;
import loamline.place.Projection;
import loamline.units.Formatting;
import loamline.units.Measure;
import loamline.units.UnitSystem;

/** How problems of a yard name things, places and sizes. */
final class CheckWords {
    /** Beyond this share of the half width from the middle, a point lies in the north, east and so on. */
    private static final double MIDDLE_SHARE = 1.0 / 3;

    private final Optional<LonLat> origin;

    CheckWords(Yard yard) {
        origin = yard.frame().origin();
    }

    /** Kind and name, as in {@code turf “front”}. */
    static String name(Feature feature) {
        String kind = feature.kind().map(Kind::word).orElse("feature");
        String name = Naming.given(feature);
        return name.isBlank() ? kind : kind + " “" + name + "”";
    }

    /** Where a point lies in a shape, and its coordinates as files have them. */
    String place(Point p, Shape in) {
        String side = Box.around(in.vertices()).map(box -> side(p, box)).orElse("");
        return side + " at " + coordinates(p);
    }

    String coordinates(Point p) {
        if (origin.isEmpty()) {
            return String.format(Locale.ROOT, "[%.2f, %.2f]", p.x(), p.y());
        }
        LonLat place = new Projection(origin.get()).toEarth(p); // not made ahead: a yard in order needs none
        return String.format(Locale.ROOT, "[%.7f, %.7f]", place.lonDeg(), place.latDeg());
    }

    private static String side(Point p, Box box) {
        String vertical = third(p.y() - box.centre().y(), box.heightM(), "north", "south");
        String across = third(p.x() - box.centre().x(), box.widthM(), "east", "west");
        if (vertical.isEmpty() && across.isEmpty()) {
            return "in the middle";
        }
        return "in the " + vertical + (vertical.isEmpty() || across.isEmpty() ? "" : "-") + across;
    }

    private static String third(double fromMiddleM, double sizeM, String above, String below) {
        if (Math.abs(fromMiddleM) <= MIDDLE_SHARE * sizeM / 2) {
            return "";
        }
        return fromMiddleM > 0 ? above : below;
    }

    /** An area in both systems. */
    static String area(double areaM2) {
        return both(Measure.AREA, areaM2);
    }

    /** A length in both systems. */
    static String length(double lengthM) {
        return both(Measure.LENGTH, lengthM);
    }

    static String both(Measure measure, double value) {
        return Formatting.format(measure, value, UnitSystem.METRIC).text() + " ("
                + Formatting.format(measure, value, UnitSystem.US).text() + ")";
    }
}

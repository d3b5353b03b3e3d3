package loamline.desk.map;

import java.util.Locale;
import loamline.geometry.Point;
import loamline.place.LonLat;
import loamline.units.Formatting;
import loamline.units.Measure;
import loamline.units.UnitSystem;

/** Where the pointer is, in words. */
final class ReadoutWords {
    private ReadoutWords() {}

    /** In the yard's plane, to a tenth of a foot or a centimetre. */
    static String place(Point at, UnitSystem units) {
        int decimals = units == UnitSystem.US ? 1 : 2;
        return "x " + length(at.x(), units, decimals) + "   y " + length(at.y(), units, decimals);
    }

    private static String length(double metres, UnitSystem units, int decimals) {
        return Formatting.format(Measure.LENGTH, metres, units, decimals).text();
    }

    /** On the earth, to a millionth of a degree: a tenth of a metre. */
    static String earth(LonLat place) {
        return String.format(
                Locale.ROOT,
                "%.6f° %s, %.6f° %s",
                Math.abs(place.latDeg()),
                place.latDeg() < 0 ? "S" : "N",
                Math.abs(place.lonDeg()),
                place.lonDeg() < 0 ? "W" : "E");
    }
}

package loamline.files;

import java.util.Locale;
import loamline.scene.Ink;
import loamline.scene.Palette;
import loamline.scene.Role;
import loamline.yard.Kind;

/**
 * How things look on a globe: the colours of our maps, lines in full and grounds as a wash, since the picture below
 * should be seen.
 *
 * @param id the name it is referred to by
 * @param line outlines, lines and points
 * @param fill grounds
 * @param widthPx of lines
 */
record KmlStyle(String id, Role line, Role fill, double widthPx) {
    /** How much of the ground a wash hides. */
    private static final double WASH = 0.4;

    static final KmlStyle CORE = point("core", Role.ACCENT);
    static final KmlStyle SPARE = point("spare", Role.SOFT);
    static final KmlStyle WALK = new KmlStyle("walk", Role.INK, Role.INK, 2);

    static KmlStyle of(Kind kind) {
        return switch (kind) {
            case BOUNDARY -> ground(kind, Role.LOT_LINE, Role.LOT);
            case TURF -> ground(kind, Role.TURF_EDGE, Role.TURF);
            case BED -> ground(kind, Role.BED_MARK, Role.BED);
            case BUILDING -> ground(kind, Role.BUILDING_EDGE, Role.BUILDING);
            case PAVING -> ground(kind, Role.PAVING_EDGE, Role.PAVING);
            case GRAVEL -> ground(kind, Role.GRAVEL_MARK, Role.GRAVEL);
            case WATER -> ground(kind, Role.WATER_MARK, Role.WATER);
            case DECK -> ground(kind, Role.DECK_MARK, Role.DECK);
            case FENCE, WALL -> ground(kind, Role.BARRIER, Role.BARRIER);
            case TREE -> point(kind.word(), Role.CROWN_EDGE);
            case HEAD -> point(kind.word(), Role.INFO);
            case GATE -> point(kind.word(), Role.INK);
            case KEEPAWAY -> ground(kind, Role.WARN, Role.WARN);
            case TROUBLE -> ground(kind, Role.ERROR, Role.ERROR);
            case CORE -> CORE;
            case PANEL -> ground(kind, Role.SELECT, Role.SELECT);
        };
    }

    private static KmlStyle ground(Kind kind, Role line, Role fill) {
        return new KmlStyle(kind.word(), line, fill, 1.5);
    }

    private static KmlStyle point(String id, Role colour) {
        return new KmlStyle(id, colour, colour, 1.5);
    }

    void write(XmlText kml) {
        Ink edge = Palette.LIGHT.of(line);
        kml.open("Style").attribute("id", id);
        kml.open("IconStyle").text("color", colour(edge)).close();
        kml.open("LineStyle")
                .text("color", colour(edge))
                .text("width", JsonText.number(widthPx))
                .close();
        kml.open("PolyStyle")
                .text("color", colour(Palette.LIGHT.of(fill).at(WASH)))
                .close();
        kml.close();
    }

    /** A colour as KML has it: opacity, blue, green, red in two hexadecimal digits each. */
    private static String colour(Ink ink) {
        long opacity = Math.round(255 * ink.opacity());
        return String.format(Locale.ROOT, "%02x%02x%02x%02x", opacity, ink.blue(), ink.green(), ink.red());
    }
}

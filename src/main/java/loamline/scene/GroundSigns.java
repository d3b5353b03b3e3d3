package loamline.scene;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import loamline.geometry.Outline;
import loamline.geometry.Region;
import loamline.units.Formatting;
import loamline.units.Measure;
import loamline.yard.Boundary;
import loamline.yard.Building;
import loamline.yard.Cover;
import loamline.yard.Yard;
import loamline.yard.Zone;

/** What the ground is: lot, turf, covers, buildings. */
final class GroundSigns {
    private static final double EDGE_MM = 0.25;
    private static final double PATTERN_MM = 0.16;
    private static final double TINT_BAND_MM = 1.1;
    private static final double TINT_OPACITY = 0.28;
    private static final int ZONE_RANK = 0;
    private static final int BUILDING_RANK = 2;
    private static final int COVER_RANK = 4;

    private GroundSigns() {}

    /** The lot; over an image its line alone, since other washes lie on it. */
    static void lot(Sketch sketch, Yard yard) {
        Pen line = new Pen(sketch.ink(Role.LOT_LINE), EDGE_MM, List.of(4.0, 1.0, 0.8, 1.0));
        boolean bare = sketch.options().wash() < 1;
        Paint paint = bare ? Paint.line(line) : Paint.both(sketch.ink(Role.LOT), line);
        yard.all(Boundary.class)
                .map(boundary -> Region.of(boundary.outline()))
                .forEach(lot -> sketch.draw(Layer.BOUNDARY, lot, paint));
    }

    /** Zones as a wash with a darker edge; a band of tint inside the edge tells neighbours apart. */
    static void turf(Sketch sketch, List<Zone> zones) {
        for (int i = 0; i < zones.size(); i++) {
            Region net = zones.get(i).net();
            Region band = net.minus(net.buffer(-sketch.view().metres(TINT_BAND_MM)));
            Ink tint = sketch.options().palette().tint(i).at(TINT_OPACITY);
            sketch.draw(Layer.TURF, net, Paint.fill(sketch.wash(Role.TURF)));
            sketch.draw(Layer.TURF, band, Paint.fill(tint));
            sketch.draw(Layer.TURF, net, Paint.line(sketch.pen(Role.TURF_EDGE, EDGE_MM)));
            label(sketch, zones.get(i));
        }
    }

    private static void label(Sketch sketch, Zone zone) {
        String area = Formatting.format(
                        Measure.AREA, zone.netAreaM2(), sketch.options().units())
                .text();
        Label.Line size = new Label.Line(area, Type.regular(8), sketch.ink(Role.SOFT));
        Label.Line name = name(sketch, zone.name(), 9.5);
        List<Label.Line> broken =
                halves(zone.name()).map(half -> name(sketch, half, 9.5)).collect(Collectors.toList());
        broken.add(size);
        List<Label.Form> forms = List.of(
                new Label.Form(List.of(name, size), 0),
                new Label.Form(broken, 0.1),
                new Label.Form(List.of(name), 0.5),
                new Label.Form(List.of(name(sketch, zone.name(), 7)), 0.8));
        label(sketch, ZONE_RANK, zone.net(), forms);
    }

    private static Label.Line name(Sketch sketch, String words, double sizePt) {
        return new Label.Line(words, Type.bold(sizePt), sketch.ink(Role.INK));
    }

    /** Words broken at the blank nearest to their middle; in one piece without a blank. */
    private static Stream<String> halves(String words) {
        int middle = words.length() / 2;
        int before = words.lastIndexOf(' ', middle);
        int after = words.indexOf(' ', middle);
        int at = after < 0 || (before >= 0 && middle - before <= after - middle) ? before : after;
        return at < 0 ? Stream.of(words) : Stream.of(words.substring(0, at), words.substring(at + 1));
    }

    static void covers(Sketch sketch, Yard yard) {
        yard.all(Cover.class).forEach(cover -> {
            Region ground = Region.of(cover.outline());
            switch (cover.cover()) {
                case BED -> fill(sketch, ground, Role.BED, Role.BED_MARK, Patterns.dots(ground, sketch.view()));
                case GRAVEL ->
                    fill(sketch, ground, Role.GRAVEL, Role.GRAVEL_MARK, Patterns.stipple(ground, sketch.view()));
                case DECK -> ruled(sketch, ground, Role.DECK, Role.DECK_MARK, Patterns.boards(ground, sketch.view()));
                case WATER -> ruled(sketch, ground, Role.WATER, Role.WATER_MARK, Patterns.waves(ground, sketch.view()));
                default ->
                    sketch.draw(
                            Layer.COVERS,
                            ground,
                            Paint.both(sketch.wash(Role.PAVING), sketch.pen(Role.PAVING_EDGE, EDGE_MM)));
            }
            name(sketch, COVER_RANK, cover.name(), 8, cover.outline());
        });
    }

    private static void fill(Sketch sketch, Region ground, Role wash, Role mark, Path pattern) {
        sketch.draw(Layer.COVERS, ground, Paint.both(sketch.wash(wash), sketch.pen(mark, EDGE_MM)));
        sketch.draw(Layer.COVERS, pattern, Paint.fill(sketch.ink(mark)));
    }

    private static void ruled(Sketch sketch, Region ground, Role wash, Role mark, Path pattern) {
        sketch.draw(Layer.COVERS, ground, Paint.fill(sketch.wash(wash)));
        sketch.draw(Layer.COVERS, pattern, Paint.line(sketch.pen(mark, PATTERN_MM)));
        sketch.draw(Layer.COVERS, ground, Paint.line(sketch.pen(mark, EDGE_MM)));
    }

    static void buildings(Sketch sketch, Yard yard) {
        yard.all(Building.class).forEach(building -> {
            Region ground = Region.of(building.outline());
            sketch.draw(Layer.BUILDINGS, ground, Paint.fill(sketch.wash(Role.BUILDING)));
            sketch.draw(
                    Layer.BUILDINGS,
                    Patterns.hatch(ground, sketch.view()),
                    Paint.line(sketch.pen(Role.BUILDING_MARK, PATTERN_MM)));
            sketch.draw(Layer.BUILDINGS, ground, Paint.line(sketch.pen(Role.BUILDING_EDGE, 0.4)));
            name(sketch, BUILDING_RANK, building.name(), 9.5, building.outline());
        });
    }

    private static void name(Sketch sketch, int rank, String name, double sizePt, Outline outline) {
        if (!name.isBlank()) {
            List<Label.Form> forms = List.of(
                    new Label.Form(List.of(name(sketch, name, sizePt)), 0),
                    new Label.Form(List.of(name(sketch, name, 6.5)), 0.3));
            label(sketch, rank, Region.of(outline), forms);
        }
    }

    private static void label(Sketch sketch, int rank, Region ground, List<Label.Form> forms) {
        View view = sketch.view();
        sketch.label(new Label(rank, forms, Places.on(ground, view), mm -> ground.covers(view.onGround(mm))));
    }
}

package loamline.tracing;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.BitSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import loamline.files.YardFiles;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Region;
import loamline.raster.GridSpec;
import loamline.raster.Mask;
import loamline.yard.Backdrop;
import loamline.yard.Boundary;
import loamline.yard.Building;
import loamline.yard.Cover;
import loamline.yard.Feature;
import loamline.yard.Turf;
import loamline.yard.Yard;

/** A demo yard's picture, and its outlines in pixels. */
final class DemoMap {
    private final Yard yard;
    private final BufferedImage image;

    private DemoMap(Yard yard, BufferedImage image) {
        this.yard = yard;
        this.image = image;
    }

    static DemoMap of(String name) throws IOException {
        Path maps = Path.of("maps");
        Yard yard = YardFiles.read(maps.resolve(name + ".loam.json")).yard().orElseThrow();
        return new DemoMap(yard, ImageIO.read(maps.resolve(name + ".tif").toFile()));
    }

    /** The picture, closed beyond the property line and on some ground. */
    Picture picture(Region traced) {
        int width = image.getWidth();
        int height = image.getHeight();
        GridSpec grid = new GridSpec(0, 0, 1, width, height);
        BitSet closed = new BitSet();
        closed.set(0, grid.size());
        for (int index : Mask.of(grid, lot().minus(traced)).indexes()) {
            closed.clear(index);
        }
        return Picture.of(width, height, image.getRGB(0, 0, width, height, null, 0, width))
                .closedTo(closed);
    }

    private Region lot() {
        return all(Boundary.class).map(b -> region(b.outline())).findFirst().orElseThrow();
    }

    /** Everything on the lot but some turf: what is traced when that turf's turn comes. */
    Region allBut(String... zones) {
        Stream<Outline> turf =
                all(Turf.class).filter(t -> !Set.of(zones).contains(t.zone())).map(Turf::outline);
        Stream<Outline> covers = all(Cover.class).map(Cover::outline);
        return union(Stream.concat(turf, covers)).union(roofs());
    }

    /** The ground of features, as seen from above: less what the roofs hide. */
    Region ground(String... names) {
        return union(Stream.of(names).flatMap(this::outlines)).minus(roofs());
    }

    /** Vertices drawn for features. */
    int vertices(String... names) {
        return (int) Stream.of(names)
                .flatMap(this::outlines)
                .flatMap(Outline::vertices)
                .count();
    }

    private Stream<Outline> outlines(String name) {
        return Stream.concat(
                all(Turf.class).filter(t -> t.zone().equals(name)).map(Turf::outline),
                all(Cover.class).filter(c -> c.name().equals(name)).map(Cover::outline));
    }

    Region roofs() {
        return Region.union(all(Building.class).map(this::roof).toList());
    }

    /** A building's roof: its walls and the eaves. */
    Region roof(String name) {
        return roof(building(name));
    }

    int roofVertices(String name) {
        return Canvas.vertices(building(name).outline());
    }

    private Building building(String name) {
        return all(Building.class)
                .filter(b -> b.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private Region roof(Building building) {
        double pixelM = yard.backdrop().orElseThrow().placement().pixelM();
        return region(building.outline()).buffer(building.eaveM() / pixelM);
    }

    private <T extends Feature> Stream<T> all(Class<T> sort) {
        return yard.features().stream().filter(sort::isInstance).map(sort::cast);
    }

    private Region union(Stream<Outline> outlines) {
        List<Region> regions = outlines.map(this::region).toList();
        return Region.union(regions);
    }

    private Region region(Outline outline) {
        return Region.of(outline.map(this::pixel));
    }

    private Point pixel(Point p) {
        Backdrop.Placement m = yard.backdrop().orElseThrow().placement();
        double determinant = m.a() * m.e() - m.b() * m.d();
        double x = p.x() - m.c();
        double y = p.y() - m.f();
        return new Point((m.e() * x - m.b() * y) / determinant, (m.a() * y - m.d() * x) / determinant);
    }
}

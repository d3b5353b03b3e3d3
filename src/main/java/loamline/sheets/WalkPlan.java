package loamline.sheets;

import java.util.ArrayList;
import java.util.List;
import loamline.geometry.Point;
import loamline.sampling.CorePlan;
import loamline.scene.PaperRect;
import loamline.scene.Role;
import loamline.yard.Yard;
import loamline.yard.Zone;

/**
 * The walk plan: what is taken into the yard. First the map under a summary, larger maps of bags that are
 * crowded on it, then a tally for every bag, bags and labels, and how the numbers came about.
 *
 * <p>Neither method does IO; both give the same bytes for the same input.
 *
 * @param zones the yard's turf, as {@link loamline.yard.Zones#of} gives it
 */
public record WalkPlan(Yard yard, List<Zone> zones, CorePlan plan, SheetOptions options) {
    /** Pixels in an inch of the map as an image. */
    private static final double IMAGE_DPI = 200;

    public WalkPlan {
        zones = List.copyOf(zones);
    }

    /** All pages as a PDF. */
    public byte[] pdf() {
        Fonts fonts = new Fonts();
        Blocks blocks = new Blocks(fonts, options.palette());
        WalkFacts facts = new WalkFacts(plan, new Figures(options.units()));
        MapPages maps = new MapPages(yard, zones, plan, options, blocks);
        PaperRect upright = options.paper().upright();
        List<Page> pages = new ArrayList<>();
        pages.add(maps.overview(new Tiles(blocks, facts).row()));
        pages.addAll(maps.details());
        pages.addAll(new TallyPages(facts, blocks, upright).pages());
        pages.addAll(new BagPages(yard.name(), facts, blocks, upright).pages());
        pages.addAll(new AccountPages(zones, facts, blocks, upright).pages());
        return new Book(yard.name(), "walk plan", options, fonts).pdf(pages);
    }

    /** The map of the first page as a PNG of 200 pixels to the inch, a margin round it. */
    public byte[] mapPng() {
        Fonts fonts = new Fonts();
        MapPages maps = new MapPages(yard, zones, plan, options, new Blocks(fonts, options.palette()));
        PaperRect map = maps.overviewRoom()
                .moved(-maps.overviewRoom().leftMm(), -maps.overviewRoom().topMm());
        ImagePainter painter =
                new ImagePainter(fonts, IMAGE_DPI, options.palette().of(Role.PAPER));
        PaperRect framed = new PaperRect(0, 0, map.widthMm() + 2 * FRAME_MM, map.heightMm() + 2 * FRAME_MM);
        Point corner = new Point(FRAME_MM, FRAME_MM);
        return painter.png(painter.image(
                framed, canvas -> maps.overviewMap().draw(canvas, map.moved(corner.x(), corner.y()))));
    }

    /** Paper left free round the map of the image, mm. */
    private static final double FRAME_MM = 4;
}

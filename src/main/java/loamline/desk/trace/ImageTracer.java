package loamline.desk.trace;

import java.io.IOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import loamline.desk.tool.AssistTracer;
import loamline.files.ImageWindow;
import loamline.geometry.Box;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Region;
import loamline.place.Frame;
import loamline.raster.GridSpec;
import loamline.raster.Mask;
import loamline.tracing.Doubt;
import loamline.tracing.Mosaic;
import loamline.tracing.Picture;
import loamline.tracing.Pixel;
import loamline.tracing.Proposal;
import loamline.yard.Backdrop;
import loamline.yard.Boundary;
import loamline.yard.Building;
import loamline.yard.Cover;
import loamline.yard.Feature;
import loamline.yard.Kind;
import loamline.yard.Turf;
import loamline.yard.Yard;

/**
 * Finds ground on a yard's image. What costs time, the mosaic of a window, is kept until the image or what is drawn
 * changes, or a click lies beyond it. Safe for use by several threads, one at a time.
 */
public final class ImageTracer implements AssistTracer {
    /** Holes in turf up to this are filled, m²: a crown of 4.4 m radius and as much shadow (common practice, no source). */
    private static final double TURF_HOLE_M2 = 120;

    /** Holes in other ground that are kept begin here, m². */
    private static final double HOLE_M2 = 0.7;

    /** How near a corner must come to a neighbour's edge to be put on it, pixels. */
    private static final double REACH_PX = 1.5;

    /** Doubts that are told at once. */
    private static final int MOST_DOUBTS = 2;

    private Optional<Prepared> last = Optional.empty();

    /**
     * A window made ready.
     *
     * @param image that it shows
     * @param limits what is closed in it
     */
    private record Prepared(Backdrop image, Limits limits, PixelWindow window, Mosaic mosaic) {
        boolean answers(Backdrop asked, Limits closed, List<Point> clicks) {
            return image.file().equals(asked.file())
                    && image.placement().equals(asked.placement())
                    && limits.equals(closed)
                    && window.holds(clicks);
        }
    }

    /**
     * What no trace may enter.
     *
     * @param lot property lines; nothing beyond them, if there are any
     * @param drawn ground that is traced already
     */
    private record Limits(List<Boundary> lot, List<Feature> drawn) {
        static Limits of(Asked asked) {
            Yard yard = asked.yard();
            return new Limits(
                    yard.all(Boundary.class).toList(),
                    yard.features().stream()
                            .filter(feature -> feature instanceof Cover
                                    || feature instanceof Building
                                    || (feature instanceof Turf turf && !isUnder(turf, asked)))
                            .toList());
        }

        /** Whatever lies on turf may be traced where the turf is drawn already. */
        private static boolean isUnder(Turf turf, Asked asked) {
            return asked.kind() != Kind.TURF && asked.inside().stream().anyMatch(Region.of(turf.outline())::covers);
        }

        Optional<Region> lotGround() {
            return lot.isEmpty()
                    ? Optional.empty()
                    : Optional.of(Region.union(
                            lot.stream().map(b -> Region.of(b.outline())).toList()));
        }

        /** As drawn: buildings by their walls. */
        List<Region> neighbours() {
            return drawn.stream()
                    .flatMap(feature -> feature.shape().stream())
                    .map(shape -> Region.of((Outline) shape))
                    .toList();
        }

        /** As seen from above: buildings with their eaves. */
        Region seen() {
            return Region.union(drawn.stream()
                    .map(feature -> {
                        Region ground = Region.of((Outline) feature.shape().orElseThrow());
                        return feature instanceof Building house ? ground.buffer(house.eaveM()) : ground;
                    })
                    .toList());
        }
    }

    @Override
    public synchronized Found trace(Asked asked) {
        Optional<Backdrop> image =
                asked.yard().backdrop().filter(b -> b.placement().pixelM() > 0);
        if (image.isEmpty()) {
            return nothing("There is no image to trace from.");
        }
        try {
            Prepared ready = prepared(asked, image.get());
            List<Pixel> inside = ready.window().pixels(asked.inside());
            return inside.isEmpty()
                    ? nothing("The image shows nothing where you clicked.")
                    : found(asked, ready, inside);
        } catch (IOException | InvalidPathException e) {
            return nothing("The image cannot be read: " + e.getMessage() + ".");
        }
    }

    private static Found nothing(String why) {
        return new Found(new Outline(List.of()), 0, List.of(why));
    }

    private Prepared prepared(Asked asked, Backdrop image) throws IOException {
        Limits limits = Limits.of(asked);
        List<Point> clicks =
                Stream.concat(asked.inside().stream(), asked.outside().stream()).toList();
        Optional<Prepared> usable = last.filter(kept -> kept.answers(image, limits, clicks));
        if (usable.isPresent()) {
            return usable.get();
        }
        Optional<Region> lot = limits.lotGround();
        List<Box> lotBox = lot.flatMap(Region::box).stream().toList();
        PixelWindow window = PixelWindow.of(image, lotBox, clicks);
        Prepared made = new Prepared(image, limits, window, mosaic(Path.of(image.file()), window, limits, lot));
        last = Optional.of(made);
        return made;
    }

    private static Mosaic mosaic(Path file, PixelWindow window, Limits limits, Optional<Region> lot)
            throws IOException {
        if (window.isEmpty()) {
            return Mosaic.of(Picture.of(1, 1, new int[1]));
        }
        int[] argb = ImageWindow.argb(file, window.part(), window.step());
        GridSpec grid = new GridSpec(0, 0, 1, window.width(), window.height());
        BitSet closed = new BitSet(grid.size());
        lot.ifPresent(ground -> {
            closed.set(0, grid.size());
            cells(grid, window, ground).forEach(closed::clear);
        });
        cells(grid, window, limits.seen()).forEach(closed::set);
        return Mosaic.of(Picture.of(window.width(), window.height(), argb).closedTo(closed));
    }

    private static IntStream cells(GridSpec grid, PixelWindow window, Region ground) {
        Region pixels = Region.of(window.onWindow(ground.outline()));
        return Arrays.stream(Mask.of(grid, pixels).indexes());
    }

    private static Found found(Asked asked, Prepared ready, List<Pixel> inside) {
        PixelWindow window = ready.window();
        double pixelM2 = window.pixelM() * window.pixelM();
        double holeM2 = asked.kind() == Kind.TURF ? TURF_HOLE_M2 : HOLE_M2;
        Proposal proposal = ready.mosaic().trace(inside).at(asked.tolerance(), holeM2 / pixelM2);
        Limits limits = ready.limits();
        Region ground = Abutting.fit(
                window.onGround(proposal.outline()),
                limits.lotGround(),
                limits.neighbours(),
                REACH_PX * window.pixelM());
        List<Pixel> outside = window.pixels(asked.outside());
        if (!outside.isEmpty()) {
            Proposal away = ready.mosaic().trace(outside).at(asked.tolerance(), 0);
            ground = ground.minus(Region.of(window.onGround(away.outline())));
        }
        Outline outline = ground.outline().map(Frame::onStep);
        return new Found(outline, ground.areaM2(), doubts(proposal.doubts(), window));
    }

    private static List<String> doubts(List<Doubt> doubts, PixelWindow window) {
        List<String> words = new ArrayList<>();
        doubts.stream().limit(MOST_DOUBTS).forEach(doubt -> words.add(DoubtWords.of(doubt, window.placement())));
        return words;
    }
}

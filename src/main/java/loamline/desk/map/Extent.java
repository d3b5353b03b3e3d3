package loamline.desk.map;

import java.util.Optional;
import java.util.stream.Stream;
import loamline.geometry.Box;
import loamline.geometry.Point;
import loamline.yard.Backdrop;
import loamline.yard.Yard;

/** What there is to see of a yard. */
final class Extent {
    private Extent() {}

    /** The box round all that is drawn; without a drawing, round the image; empty without either. */
    static Optional<Box> of(Yard yard) {
        return yard.box().or(() -> yard.backdrop().flatMap(Extent::of));
    }

    private static Optional<Box> of(Backdrop image) {
        Backdrop.Placement p = image.placement();
        return Box.around(Stream.of(
                        new Point(0, 0),
                        new Point(image.widthPx(), 0),
                        new Point(0, image.heightPx()),
                        new Point(image.widthPx(), image.heightPx()))
                .map(px ->
                        new Point(p.a() * px.x() + p.b() * px.y() + p.c(), p.d() * px.x() + p.e() * px.y() + p.f())));
    }
}

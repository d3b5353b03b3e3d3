package loamline.demo;

import java.util.List;

/** The demo yards under {@code maps/}. */
final class DemoYards {
    /** Turf of Plover Court that no head reaches, m²; also in {@code docs/demo.md}. */
    static final double HOLE_M2 = 9.5842;

    private DemoYards() {}

    static List<DemoYard> all() {
        return List.of(PloverCourt.yard(), TansyHill.yard());
    }
}

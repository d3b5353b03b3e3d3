package loamline.demo;

import java.util.List;
import loamline.geometry.Outline;

/** Roofs: the highest of several shows, each face leans its own way, shingles lie in rows. */
final class Roofs {
    private static final double ROW_M = 0.24;
    private static final double TAB_M = 0.32;
    private static final double SEAM_M = 0.45;
    private static final double CAP_M = 0.12;

    private final Plate plate;
    private final Noise noise;

    Roofs(Plate plate, Noise noise) {
        this.plate = plate;
        this.noise = noise;
    }

    /**
     * A place on a roof.
     *
     * @param upM how far from the eave of its face
     * @param alongM how far along that eave
     * @param faceU 1 or -1 on the slope of an end, otherwise 0
     * @param faceV 1 or -1 on the slope of a long side, otherwise 0
     * @param cap whether the ridge or a hip runs here
     */
    private record Spot(double upM, double alongM, double faceU, double faceV, boolean cap) {
        static Spot of(Roof roof, double u, double v) {
            double fromEave = roof.acrossM() / 2 - Math.abs(v);
            double fromEnd = roof.alongM() / 2 - Math.abs(u);
            boolean hip = roof.hipped() && Math.abs(fromEnd - fromEave) < CAP_M;
            return roof.hipped() && fromEnd < fromEave
                    ? new Spot(fromEnd, v, Math.signum(u), 0, hip)
                    : new Spot(fromEave, u, 0, Math.signum(v), hip || Math.abs(v) < CAP_M);
        }
    }

    /** Draws one roof where it is higher than what stands there. */
    void draw(Roof roof) {
        Axes axes = roof.axes();
        double lean = roof.pitch() / Math.sqrt(1 + roof.pitch() * roof.pitch());
        float[] colour = new float[3];
        plate.each(Plate.path(plan(roof)), (pixel, x, y, share) -> {
            Spot spot = Spot.of(roof, axes.u(x, y), axes.v(x, y));
            float high = (float) (roof.eaveHeightM() + roof.pitch() * Math.max(0, spot.upM()));
            if (share < 0.5f || high <= plate.aboveM[pixel]) {
                return;
            }
            plate.aboveM[pixel] = high;
            plate.belowM[pixel] = 0;
            plate.leanX[pixel] = (float) (lean * axes.east(spot.faceU(), spot.faceV()));
            plate.leanY[pixel] = (float) (lean * axes.north(spot.faceU(), spot.faceV()));
            cover(roof, spot, colour);
            Texture.scale(colour, (spot.cap() ? 1.13 : 1) * (1 + 0.05 * noise.octaves(x / 2.5, y / 2.5, 3)));
            plate.paint(pixel, colour);
        });
    }

    private void cover(Roof roof, Spot spot, float[] rgb) {
        if (roof.material() == Material.METAL) {
            double seam = Math.abs(spot.alongM() / SEAM_M - Math.rint(spot.alongM() / SEAM_M)) * SEAM_M;
            double rust = noise.octaves(spot.alongM() / 1.5, spot.upM() / 3.5, 4);
            Texture.set(rgb, 0xA3A7A6, roof.tone() * (seam < 0.04 ? 0.86 : 1.0 + 0.03 * rust));
            Texture.towards(rgb, 0x8A6A52, Math.max(0, Math.min(0.45, 0.8 * rust - 0.12)));
            return;
        }
        double rows = spot.upM() / ROW_M;
        long row = (long) Math.floor(rows);
        long tab = (long) Math.floor(spot.alongM() / TAB_M + 0.5 * (row & 1) + 0.3 * noise.of(row, 3));
        double own = 0.16 * (noise.of(row, tab) - 0.5);
        double lip = rows - row < 0.3 ? -0.09 : 0;
        Texture.set(rgb, 0x877C74, roof.tone() * (1 + own + lip));
    }

    /** What a roof covers, seen from above. */
    static Outline plan(Roof roof) {
        Axes axes = roof.axes();
        double u = roof.alongM() / 2;
        double v = roof.acrossM() / 2;
        return Outline.of(List.of(axes.at(-u, -v), axes.at(u, -v), axes.at(u, v), axes.at(-u, v)));
    }
}

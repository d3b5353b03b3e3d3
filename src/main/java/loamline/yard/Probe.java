package loamline.yard;

/**
 * The tool that takes a core.
 *
 * @param diameterM inner diameter, m
 * @param depthM how deep it is pushed, m
 */
public record Probe(double diameterM, double depthM) {
    /** A 3/4 in tube to 4 in: common practice for established turf, no source. */
    public static final Probe USUAL = new Probe(0.75 * 0.0254, 4 * 0.0254);

    /** @throws IllegalArgumentException unless both are positive */
    public Probe {
        if (!(diameterM > 0 && depthM > 0 && Double.isFinite(diameterM) && Double.isFinite(depthM))) {
            throw new IllegalArgumentException("a probe of " + diameterM + " m by " + depthM + " m takes no soil");
        }
    }

    /** Soil in one core, ml: π/4 · d² · depth. */
    public double coreMl() {
        return Math.PI / 4 * diameterM * diameterM * depthM * 1e6;
    }
}

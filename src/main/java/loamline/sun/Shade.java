package loamline.sun;

import java.time.LocalDate;
import loamline.raster.GridSpec;
import loamline.yard.Yard;

/**
 * Sun and shade at a moment, as often as somebody moves the hour: the yard's shadow casters are got ready once.
 * Immutable.
 */
public final class Shade {
    private final GridSpec grid;
    private final CasterTable casters;

    private Shade(GridSpec grid, CasterTable casters) {
        this.grid = grid;
        this.casters = casters;
    }

    /**
     * Gets a yard ready for a day.
     *
     * @param latitudeDeg tells north from south, where trees are in leaf at another time
     */
    public static Shade of(Yard yard, LocalDate date, double latitudeDeg, GridSpec grid) {
        return new Shade(
                grid, new CasterTable(Casters.of(yard, date, latitudeDeg).casters()));
    }

    /** Share of the sun's direct light that reaches each cell, 0 to 1; 0 everywhere while the sun is down. */
    public float[] light(SunPosition sun) {
        float[] light = new float[grid.size()];
        if (sun.isUp()) {
            LightKernel.add(
                    grid,
                    casters,
                    new double[] {sun.shadowEastM()},
                    new double[] {sun.shadowNorthM()},
                    new float[][] {{1}},
                    new float[][] {light});
        }
        return light;
    }
}

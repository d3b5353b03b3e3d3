package loamline.soil;

import java.util.Optional;

/**
 * The twelve texture classes of fine earth.
 *
 * <p>Conditions of the USDA Soil Survey Manual, Handbook 18, 2017, p. 122; points on a line go to the finer class (Benham,
 * Ahrens & Nettleton 2009, second-hand). As written they leave no gap and no overlap.
 */
public enum Texture {
    SAND("sand"),
    LOAMY_SAND("loamy sand"),
    SANDY_LOAM("sandy loam"),
    LOAM("loam"),
    SILT_LOAM("silt loam"),
    SILT("silt"),
    SANDY_CLAY_LOAM("sandy clay loam"),
    CLAY_LOAM("clay loam"),
    SILTY_CLAY_LOAM("silty clay loam"),
    SANDY_CLAY("sandy clay"),
    SILTY_CLAY("silty clay"),
    CLAY("clay");

    /** A sum of sand, silt and clay this far from 100 % is rounding; farther is a mistake in the report. */
    public static final double SUM_TOLERANCE_PCT = 1;

    /** A sum this close to 100 % is 100 %: binary rounding of tenths must not move a point off a line between classes. */
    private static final double SUM_ROUNDING_PCT = 1e-9;

    /** Coarse, middle and fine, as the tables of sulfur have them; common practice, no source. */
    public enum Group {
        SAND,
        LOAM,
        CLAY
    }

    private final String label;

    Texture(String label) {
        this.label = label;
    }

    /** In words, such as {@code silt loam}. */
    public String label() {
        return label;
    }

    public Group group() {
        return switch (this) {
            case SAND, LOAMY_SAND -> Group.SAND;
            case SANDY_CLAY, SILTY_CLAY, CLAY -> Group.CLAY;
            default -> Group.LOAM;
        };
    }

    /**
     * The class of a soil; empty if the parts do not sum to 100 within {@value #SUM_TOLERANCE_PCT}, or one is below 0.
     *
     * @param sandPct 0.05 to 2 mm, per cent by mass
     * @param siltPct 0.002 to 0.05 mm
     * @param clayPct below 0.002 mm
     */
    public static Optional<Texture> of(double sandPct, double siltPct, double clayPct) {
        double sum = sandPct + siltPct + clayPct;
        if (!(sandPct >= 0 && siltPct >= 0 && clayPct >= 0 && Math.abs(sum - 100) <= SUM_TOLERANCE_PCT)) {
            return Optional.empty();
        }
        double toWhole = Math.abs(sum - 100) < SUM_ROUNDING_PCT ? 1 : 100 / sum;
        return Optional.of(classOf(sandPct * toWhole, siltPct * toWhole, clayPct * toWhole));
    }

    private static Texture classOf(double sand, double silt, double clay) {
        if (clay >= 40 && sand <= 45) {
            return silt >= 40 ? SILTY_CLAY : CLAY;
        }
        if (clay >= 35 && sand > 45) {
            return SANDY_CLAY;
        }
        if (clay >= 27 && sand <= 45) {
            return sand > 20 ? CLAY_LOAM : SILTY_CLAY_LOAM;
        }
        if (clay >= 20 && silt < 28 && sand > 45) {
            return SANDY_CLAY_LOAM;
        }
        if (silt >= 50) {
            return silt >= 80 && clay < 12 ? SILT : SILT_LOAM;
        }
        return clay >= 7 && silt >= 28 && sand <= 52 ? LOAM : sandyClassOf(sand, silt, clay);
    }

    private static Texture sandyClassOf(double sand, double silt, double clay) {
        if (sand > 85 && silt + 1.5 * clay < 15) {
            return SAND;
        }
        return sand >= 70 && silt + 2 * clay < 30 ? LOAMY_SAND : SANDY_LOAM;
    }
}

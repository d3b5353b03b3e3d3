package loamline.units;

import java.util.List;
import java.util.stream.Stream;

/**
 * The units of a measure: how each system shows it, and every unit understood, those shown first.
 *
 * <p>The digits shown follow common practice, no source: about three significant ones, fewer where the measurement
 * itself is coarse.
 */
record UnitTable(Shown us, Shown metric, List<Unit> units) {
    private static final UnitTable LENGTH =
            of(new Shown(Units.FT, 1, 1), new Shown(Units.M, 2, 1), Units.IN, Units.YD, Units.CM, Units.MM);
    private static final UnitTable SMALL_LENGTH =
            of(new Shown(Units.SMALL_IN, 2, 1), new Shown(Units.SMALL_MM, 1, 1), Units.SMALL_CM, Units.SMALL_FT);
    private static final UnitTable AREA =
            of(new Shown(Units.FT2, 0, 0), new Shown(Units.M2, 1, 1), Units.YD2, Units.ACRE, Units.HECTARE);
    private static final UnitTable ANGLE = of(new Shown(Units.DEGREE, 0, 0), new Shown(Units.DEGREE, 0, 0));
    private static final UnitTable FLOW = of(
            new Shown(Units.GAL_MIN, 2, 1),
            new Shown(Units.L_MIN, 2, 1),
            Units.GAL_H,
            Units.L_H,
            Units.L_S,
            Units.M3_H);
    private static final UnitTable PRESSURE = of(new Shown(Units.PSI, 0, 0), new Shown(Units.KPA, 0, 0), Units.BAR);
    private static final UnitTable DEPTH_RATE = of(new Shown(Units.IN_H, 2, 1), new Shown(Units.MM_H, 1, 1));
    private static final UnitTable VOLUME_SMALL =
            of(new Shown(Units.ML, 0, 0), new Shown(Units.ML, 0, 0), Units.FL_OZ, Units.SMALL_LITRE);
    private static final UnitTable VOLUME_LIQUID = of(
            new Shown(Units.GAL, 2, 1),
            new Shown(Units.LITRE, 2, 1),
            Units.LIQUID_FL_OZ,
            Units.LIQUID_ML,
            Units.LIQUID_M3);
    private static final UnitTable VOLUME_BULK = of(new Shown(Units.YD3, 2, 1), new Shown(Units.M3, 2, 1), Units.FT3);
    private static final UnitTable MASS =
            of(new Shown(Units.LB, 2, 1), new Shown(Units.KG, 2, 1), Units.OZ, Units.G, Units.SHORT_TON, Units.TONNE);
    private static final UnitTable AREAL_RATE = of(
            new Shown(Units.LB_1000FT2, 2, 0),
            new Shown(Units.KG_100M2, 2, 1),
            Units.OZ_1000FT2,
            Units.LB_ACRE,
            Units.G_M2,
            Units.KG_HA);
    private static final UnitTable PERCENT = of(new Shown(Units.PERCENT, 1, 0), new Shown(Units.PERCENT, 1, 0));
    private static final UnitTable TIME_MINUTES =
            of(new Shown(Units.MIN, 1, 0), new Shown(Units.MIN, 1, 0), Units.HOUR, Units.SECOND);

    private static final UnitTable TIME_HOURS =
            of(new Shown(Units.DAY_HOUR, 1, 1), new Shown(Units.DAY_HOUR, 1, 1), Units.DAY_MIN);

    /**
     * The unit shown and the decimals it gets.
     *
     * @param below10 decimals of numbers that round to less than 10
     * @param below100 decimals of larger numbers that round to less than 100; beyond, none
     */
    record Shown(Unit unit, int below10, int below100) {}

    static UnitTable of(Measure measure) {
        return switch (measure) {
            case LENGTH -> LENGTH;
            case SMALL_LENGTH -> SMALL_LENGTH;
            case AREA -> AREA;
            case ANGLE -> ANGLE;
            case FLOW -> FLOW;
            case PRESSURE -> PRESSURE;
            case DEPTH_RATE -> DEPTH_RATE;
            case VOLUME_SMALL -> VOLUME_SMALL;
            case VOLUME_LIQUID -> VOLUME_LIQUID;
            case VOLUME_BULK -> VOLUME_BULK;
            case MASS -> MASS;
            case AREAL_RATE -> AREAL_RATE;
            case PERCENT -> PERCENT;
            case TIME_MINUTES -> TIME_MINUTES;
            case TIME_HOURS -> TIME_HOURS;
        };
    }

    Shown shown(UnitSystem system) {
        return switch (system) {
            case US -> us;
            case METRIC -> metric;
        };
    }

    private static UnitTable of(Shown us, Shown metric, Unit... others) {
        return new UnitTable(
                us,
                metric,
                Stream.concat(Stream.of(us.unit(), metric.unit()), Stream.of(others))
                        .distinct()
                        .toList());
    }
}

package loamline.units;

import static loamline.units.Spelling.per;
import static loamline.units.Spelling.times;

/** Every unit, by measure; sizes in the unit the measure is stored in, from {@link Factors}. */
final class Units {
    static final Unit IN = Unit.of("in", Factors.M_PER_IN, Spelling.INCH);
    static final Unit FT = Unit.of("ft", Factors.M_PER_FT, Spelling.FOOT).countedIn(IN);
    static final Unit YD = Unit.of("yd", Factors.M_PER_YD, Spelling.YARD).countedIn(FT);
    static final Unit MM = Unit.of("mm", 0.001, Spelling.MM);
    static final Unit CM = Unit.of("cm", 0.01, Spelling.CM);
    static final Unit M = Unit.of("m", 1, Spelling.METRE).countedIn(CM);

    static final Unit SMALL_IN = Unit.of("in", Factors.MM_PER_IN, Spelling.INCH);
    static final Unit SMALL_FT =
            Unit.of("ft", 12 * Factors.MM_PER_IN, Spelling.FOOT).countedIn(SMALL_IN);
    static final Unit SMALL_MM = Unit.of("mm", 1, Spelling.MM);
    static final Unit SMALL_CM = Unit.of("cm", 10, Spelling.CM);

    static final Unit FT2 = Unit.of("ft²", Factors.M2_PER_FT2, Spelling.FT2);
    static final Unit YD2 = Unit.of("yd²", Factors.M2_PER_YD2, Spelling.YD2);
    static final Unit ACRE = Unit.of("ac", Factors.M2_PER_ACRE, Spelling.ACRE);
    static final Unit M2 = Unit.of("m²", 1, Spelling.M2);
    static final Unit HECTARE = Unit.of("ha", 10_000, Spelling.HECTARE);

    static final Unit DEGREE = Unit.of("°", 1, "°|deg|degree|degrees");

    static final Unit GAL_MIN = Unit.of("gal/min", Factors.L_PER_GAL, per(Spelling.GALLON, Spelling.MINUTE) + "|gpm");
    static final Unit GAL_H = Unit.of("gal/h", Factors.L_PER_GAL / 60, per(Spelling.GALLON, Spelling.HOUR) + "|gph");
    static final Unit L_MIN = Unit.of("L/min", 1, per(Spelling.LITRE, Spelling.MINUTE) + "|lpm");
    static final Unit L_H = Unit.of("L/h", 1 / 60.0, per(Spelling.LITRE, Spelling.HOUR));
    static final Unit L_S = Unit.of("L/s", 60, per(Spelling.LITRE, Spelling.SECOND));
    static final Unit M3_H = Unit.of("m³/h", 1000 / 60.0, per(Spelling.M3, Spelling.HOUR));

    static final Unit PSI = Unit.of("psi", Factors.KPA_PER_PSI, "psi|lbf/in2");
    static final Unit KPA = Unit.of("kPa", 1, "kpa|kilopascal|kilopascals");
    static final Unit BAR = Unit.of("bar", 100, "bar|bars");

    static final Unit IN_H = Unit.of("in/h", Factors.MM_PER_IN, per("in|inch|inches", Spelling.HOUR));
    static final Unit MM_H = Unit.of("mm/h", 1, per(Spelling.MM, Spelling.HOUR));

    static final Unit ML = Unit.of("ml", 1, Spelling.ML);
    static final Unit FL_OZ = Unit.of("fl oz", Factors.ML_PER_FL_OZ, Spelling.FLUID_OUNCE);
    static final Unit SMALL_LITRE = Unit.of("L", 1000, Spelling.LITRE);

    static final Unit GAL = Unit.of("gal", Factors.L_PER_GAL, Spelling.GALLON);
    static final Unit LIQUID_FL_OZ = Unit.of("fl oz", Factors.L_PER_GAL / 128, Spelling.FLUID_OUNCE);
    static final Unit LITRE = Unit.of("L", 1, Spelling.LITRE);
    static final Unit LIQUID_ML = Unit.of("ml", 0.001, Spelling.ML);
    static final Unit LIQUID_M3 = Unit.of("m³", 1000, Spelling.M3);

    static final Unit YD3 = Unit.of("yd³", Factors.M3_PER_YD3, Spelling.YD3);
    static final Unit FT3 = Unit.of("ft³", Factors.M3_PER_FT3, Spelling.FT3);
    static final Unit M3 = Unit.of("m³", 1, Spelling.M3);

    static final Unit OZ = Unit.of("oz", Factors.KG_PER_OZ, Spelling.OUNCE);
    static final Unit LB = Unit.of("lb", Factors.KG_PER_LB, Spelling.POUND).countedIn(OZ);
    static final Unit SHORT_TON = Unit.of("ton", 2000 * Factors.KG_PER_LB, "ton|tons|short ton|short tons");
    static final Unit G = Unit.of("g", 0.001, Spelling.GRAM);
    static final Unit KG = Unit.of("kg", 1, Spelling.KILOGRAM);
    static final Unit TONNE = Unit.of("t", 1000, "t|tonne|tonnes|metric ton|metric tons");

    static final Unit LB_1000FT2 =
            Unit.of("lb/1,000 ft²", Factors.G_M2_PER_LB_1000FT2, per(Spelling.POUND, times(1000, Spelling.FT2)));
    static final Unit OZ_1000FT2 =
            Unit.of("oz/1,000 ft²", Factors.G_M2_PER_LB_1000FT2 / 16, per(Spelling.OUNCE, times(1000, Spelling.FT2)));
    static final Unit LB_ACRE =
            Unit.of("lb/ac", 1000 * Factors.KG_PER_LB / Factors.M2_PER_ACRE, per(Spelling.POUND, Spelling.ACRE));
    static final Unit G_M2 = Unit.of("g/m²", 1, per(Spelling.GRAM, Spelling.M2));
    static final Unit KG_100M2 = Unit.of("kg/100 m²", 10, per(Spelling.KILOGRAM, times(100, Spelling.M2)));
    static final Unit KG_HA = Unit.of("kg/ha", 0.1, per(Spelling.KILOGRAM, Spelling.HECTARE));

    static final Unit PERCENT = Unit.of("%", 0.01, "%|percent");

    static final Unit SECOND = Unit.of("s", 1 / 60.0, Spelling.SECOND);
    static final Unit MIN = Unit.of("min", 1, Spelling.MINUTE).countedIn(SECOND);
    static final Unit HOUR = Unit.of("h", 60, Spelling.HOUR).countedIn(MIN);

    static final Unit DAY_MIN = Unit.of("min", 1 / 60.0, Spelling.MINUTE);
    static final Unit DAY_HOUR = Unit.of("h", 1, Spelling.HOUR).countedIn(DAY_MIN);

    private Units() {}
}

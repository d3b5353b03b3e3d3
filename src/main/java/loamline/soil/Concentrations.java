package loamline.soil;

import java.util.Locale;
import java.util.Optional;
import loamline.account.Account;
import loamline.reference.NamedRow;
import loamline.reference.SoilTables;

/** Turns what laboratories print into parts per million and other units, or says why it cannot. */
public record Concentrations(SoilTables tables) {
    private static final double PPM_PER_PERCENT = 10_000;
    private static final double PPM_PER_MG_100G = 10;

    /** A nutrient's value in ppm (mg/kg). */
    public Advice<Double> ppm(LabValue value) {
        Optional<LabUnit> unit = value.unit();
        if (unit.isEmpty()) {
            return Advice.refused("the unit is not known: fill in what the laboratory printed, such as ppm or lb/acre");
        }
        return ppm(value.element(), value.value(), unit.get(), value);
    }

    private Advice<Double> ppm(Element element, double number, LabUnit unit, LabValue value) {
        return switch (unit) {
            case PPM -> given(number, number, "ppm = value", "1 ppm = 1 mg/kg");
            case PERCENT -> given(number * PPM_PER_PERCENT, number, "ppm = 10,000 · value", "1 % = 10,000 ppm");
            case MG_100G -> given(number * PPM_PER_MG_100G, number, "ppm = 10 · value", "100 g are a tenth of 1 kg");
            case LB_ACRE -> given(number / 2, number, "ppm = value / 2", "2,000,000 lb of soil on an acre");
            case KG_HA -> given(number / KG_HA_PER_PPM, number, "ppm = value / 2.2417", "the same slice on a hectare");
            case MEQ_100G -> ofMilliequivalents(element, number);
            case MG_DM3 -> ofVolume(number, value);
            case INDEX -> ofIndex(element, number, value);
            default -> Advice.refused(unit.symbol() + " is no unit for " + element.key() + " in soil");
        };
    }

    /** Soil of the furrow slice on a hectare, in millions of kg: kg/ha for each ppm. */
    private static final double KG_HA_PER_PPM =
            SoilMass.FURROW_SLICE_LB_ACRE * SoilMass.KG_M2_PER_LB_ACRE * 10_000 / 1e6;

    private Advice<Double> given(double ppm, double number, String formula, String note) {
        return Advice.given(
                ppm, Account.of(formula, note, tables.source("furrow-slice")).with("value", number));
    }

    private Advice<Double> ofMilliequivalents(Element element, double meq) {
        return Equivalents.of(tables)
                .ppmPerMeq(element)
                .<Advice<Double>>map(weight -> given(meq * weight, meq, "ppm = value · " + weight, "equivalent weight"))
                .orElseGet(() -> Advice.refused(
                        "no equivalent weight is held for " + element.key() + ": fill in its value in ppm"));
    }

    private Advice<Double> ofVolume(double mgDm3, LabValue value) {
        return value.made().scoopDensityGCm3().isPresent()
                ? given(
                        mgDm3 / value.made().scoopDensityGCm3().getAsDouble(),
                        mgDm3,
                        "ppm = value / scoop density",
                        "a volume of soil in the laboratory's scoop, by its weight")
                : Advice.refused("mg/dm3 is by volume, and ppm by weight: fill in scoop_density_g_cm3 as the laboratory"
                        + " weighed it");
    }

    private Advice<Double> ofIndex(Element element, double number, LabValue value) {
        Optional<NamedRow> row = index(element, value);
        if (row.isEmpty()) {
            return Advice.refused(INDEX_UNKNOWN);
        }
        LabUnit unit = LabUnit.of(row.get().text("unit")).orElseThrow();
        return ppm(element, number * row.get().number("per_index"), unit, value);
    }

    static final String INDEX_UNKNOWN =
            "an index is a laboratory's own scale: write whose (index nc, index oklahoma, lime index), or write the value"
                    + " in its unit";

    private Optional<NamedRow> index(Element element, LabValue value) {
        String named = value.made().unitText().toLowerCase(Locale.ROOT);
        return tables.rows("soil-indexes.csv").stream()
                .filter(r -> r.text("element").equals(element.key()) && named.contains(r.text("index")))
                .findFirst();
    }

    /** A value of pH or buffer pH, its index turned into pH. */
    public Advice<Double> ph(LabValue value) {
        if (!value.isIn(LabUnit.INDEX)) {
            return given(value.value(), value.value(), "pH = value", "");
        }
        return index(value.element(), value)
                .<Advice<Double>>map(row -> given(
                        value.value() * row.number("per_index"),
                        value.value(),
                        "pH = value · " + row.text("per_index"),
                        "the lime test index is ten times the buffer pH"))
                .orElseGet(() -> Advice.refused(INDEX_UNKNOWN));
    }

    /** A nutrient's value in the unit of a table. */
    Advice<Double> in(LabUnit unit, LabValue value) {
        if (value.isIn(unit)) {
            return given(value.value(), value.value(), "value", "");
        }
        return switch (unit) {
            case PPM -> ppm(value);
            case LB_ACRE -> ppm(value).map(ppm -> ppm * 2);
            case MG_DM3 -> inVolume(value);
            case PERCENT -> share(value);
            default -> Advice.refused("the range is in " + unit.symbol() + ": fill in the value in it");
        };
    }

    /** From an index or a weight into milligrams by volume. */
    private Advice<Double> inVolume(LabValue value) {
        Optional<NamedRow> row = index(value.element(), value);
        if (row.filter(r -> r.text("unit").equals(LabUnit.MG_DM3.symbol())).isPresent()) {
            double perIndex = row.get().number("per_index");
            return given(
                    value.value() * perIndex, value.value(), "mg/dm3 = value · " + perIndex, "the index's own key");
        }
        return value.made().scoopDensityGCm3().isPresent()
                ? ppm(value).map(ppm -> ppm * value.made().scoopDensityGCm3().getAsDouble())
                : Advice.refused(
                        "the range is by volume (mg/dm3), and this value by weight: fill in scoop_density_g_cm3");
    }

    /** A share of the soil in per cent. */
    Advice<Double> share(LabValue value) {
        return value.unit()
                .filter(unit -> unit == LabUnit.PERCENT || unit == LabUnit.G_KG)
                .<Advice<Double>>map(unit -> given(
                        unit == LabUnit.G_KG ? value.value() / 10 : value.value(),
                        value.value(),
                        unit == LabUnit.G_KG ? "% = value / 10" : "% = value",
                        ""))
                .orElseGet(() -> Advice.refused("the unit is not known: fill in % or g/kg"));
    }
}

package loamline.cli;

import java.util.LinkedHashMap;
import java.util.Map;
import loamline.reference.SoilTables;
import loamline.soil.LimeMaterial;
import loamline.soil.SoilOptions;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** What lime is spread, and how. */
final class LimeOptions {
    /** To which depth a rate is taken. */
    enum Depth {
        SAMPLED,
        METHOD
    }

    @Option(names = "--target-ph", paramLabel = "PH", description = "pH in water to lime to; default 6.5.")
    private double targetPh = SoilOptions.USUAL.lime().targetPh();

    @Option(
            names = "--lime-cce",
            paramLabel = "PERCENT|MATERIAL",
            description = "CaCO3 equivalent of the lime, or what it is if it is pure: CaCO3, MgCO3, Ca(OH)2, Mg(OH)2,"
                    + " CaO, MgO, CaMg(CO3)2; default 100.")
    private String cce = "100";

    @Option(names = "--lime-moisture", paramLabel = "PERCENT", description = "Water in the lime; default 0.")
    private double moisturePct;

    @Option(
            names = "--lime-fineness",
            paramLabel = "SCHEME:MESH=PASSING[,...]",
            description = "How fine it is, such as cornell:20=95,60=70,100=55; schemes cornell, minnesota, oklahoma"
                    + " (Kansas, Nebraska too), kentucky, iowa. Default: all of it works.")
    private @Nullable String fineness;

    @Option(
            names = "--lime-cap",
            paramLabel = "CAP",
            description = "Rule for the largest dressing: lawn (100 lb/1000 ft2), greens (25), new-hampshire (50),"
                    + " georgia (half above 50, then a new test). Default lawn.")
    private String cap = SoilOptions.USUAL.lime().cap();

    @Option(
            names = "--lime-depth",
            paramLabel = "sampled|method",
            description = "Bring rates to the depth sampled, or take them at the depth of their method; default"
                    + " sampled.")
    private Depth depth = Depth.SAMPLED;

    /** @throws IllegalArgumentException if a choice makes no sense */
    SoilOptions.Lime chosen(SoilTables tables) {
        LimeMaterial material = new LimeMaterial(ccePct(tables), finenessPct(tables), moisturePct);
        return new SoilOptions.Lime(targetPh, material, cap, depth == Depth.SAMPLED);
    }

    private double ccePct(SoilTables tables) {
        return tables.rows("lime-materials.csv").stream()
                .filter(row -> row.text("material").equalsIgnoreCase(cce.strip()))
                .mapToDouble(row -> row.number("cce"))
                .findFirst()
                .orElseGet(() -> percent(cce.strip()));
    }

    private static double percent(String text) {
        if (!text.matches("\\d{1,3}(\\.\\d+)?")) {
            throw new IllegalArgumentException("--lime-cce should be a percentage or a material, not “" + text + "”");
        }
        return Double.parseDouble(text);
    }

    private double finenessPct(SoilTables tables) {
        if (fineness == null) {
            return 100;
        }
        String[] parts = fineness.split(":", 2);
        return LimeMaterial.finenessPct(tables, parts[0].strip(), sieves(parts.length > 1 ? parts[1] : ""));
    }

    private static Map<Integer, Double> sieves(String text) {
        Map<Integer, Double> passing = new LinkedHashMap<>();
        for (String sieve : text.split(",", -1)) {
            if (!sieve.strip().matches("\\d{1,3}=\\d{1,3}(\\.\\d+)?")) {
                throw new IllegalArgumentException("--lime-fineness should read like cornell:20=95,60=70,100=55, and “"
                        + sieve.strip() + "” does not");
            }
            String[] pair = sieve.strip().split("=", 2);
            passing.put(Integer.parseInt(pair[0]), Double.parseDouble(pair[1]));
        }
        return passing;
    }
}

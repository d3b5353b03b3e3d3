package loamline.sun;

import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import loamline.account.Account;
import loamline.account.Source;
import loamline.reference.LightClass;

/**
 * The sun of a zone: hours of direct sun a day, means over the dates.
 *
 * @param name of the zone
 * @param meanHours mean over its cells
 * @param p10 hours that a tenth of its cells do not reach
 * @param p90 hours that a tenth of its cells exceed
 * @param morningHours part of the mean while the sun stands in the east
 * @param afternoonHours the rest of it
 * @param clearDayMolM2 light for plants on a clear day, mol/m², mean over its cells
 * @param classShares share of its cells in each light class, by name, darkest first; all classes
 * @param accounts how the numbers came about, by name
 */
public record ZoneSun(
        String name,
        double meanHours,
        double p10,
        double p90,
        double morningHours,
        double afternoonHours,
        double clearDayMolM2,
        Map<String, Double> classShares,
        Map<String, Account> accounts) {
    private static final Source COUNT = new Source(
            "ray-count", "Positions of the sun counted at which the straight way from the cell to the sun is clear");

    public ZoneSun {
        classShares = Collections.unmodifiableMap(new LinkedHashMap<>(classShares));
        accounts = Collections.unmodifiableMap(new LinkedHashMap<>(accounts));
    }

    /** @param cells of the zone, one at least */
    static ZoneSun of(String name, int[] cells, SunField field, SunRequest request) {
        double[] hours = IntStream.of(cells).mapToDouble(field::hours).sorted().toArray();
        List<LightClass> classes = LightClass.published();
        long[] counts = new long[classes.size()];
        for (double h : hours) {
            counts[LightClass.of(h, classes)]++;
        }
        Map<String, Double> shares = new LinkedHashMap<>();
        for (int i = 0; i < counts.length; i++) {
            shares.put(classes.get(i).name(), (double) counts[i] / hours.length);
        }
        return new ZoneSun(
                name,
                mean(cells, field::hours),
                quantile(hours, 0.1),
                quantile(hours, 0.9),
                mean(cells, field::morningH),
                mean(cells, field::afternoonH),
                mean(cells, field::lightMol),
                shares,
                accounts(cells.length, field, request, classes.get(0).source()));
    }

    private static double mean(int[] cells, IntToDoubleFunction value) {
        return Arrays.stream(cells).mapToDouble(value).sum() / cells.length;
    }

    /** The value with a share of the values below it, between neighbours in proportion (Hyndman & Fan 1996, type 7). */
    static double quantile(double[] sorted, double share) {
        double place = share * (sorted.length - 1);
        int below = (int) Math.floor(place);
        int above = Math.min(below + 1, sorted.length - 1);
        return sorted[below] + (place - below) * (sorted[above] - sorted[below]);
    }

    private static Map<String, Account> accounts(int cells, SunField field, SunRequest request, Source classes) {
        Account hours = Account.of(
                        "hours = Σ step · (share of the sun that reaches the cell) / dates",
                        "Level ground, flat horizon, no refraction, no clouds; crowns pass the share of light that the yard"
                                + " says, bare crowns that of the season's table. Heights and crown sizes change it most.",
                        COUNT,
                        SunPath.SOURCE)
                .with("step_min", request.step().toSeconds() / 60.0)
                .with("dates", request.dates().size())
                .with("positions", field.positions().size())
                .with("cell_m", request.cellM())
                .with("cells", cells);
        Map<String, Account> accounts = new LinkedHashMap<>();
        for (String key : List.of("meanHours", "p10", "p90", "morningHours", "afternoonHours")) {
            accounts.put(key, hours);
        }
        accounts.put(
                "clearDayMolM2",
                Account.of(
                                "light = Σ beam · (share that reaches the cell) + Σ sky",
                                "On a clear day; clouds take a third of it in many places. The light of the sky counts"
                                        + " in full, though walls and crowns take part of it.",
                                ClearSky.SOURCE)
                        .with("positions", field.positions().size()));
        accounts.put(
                "classShares",
                Account.of("share = cells of the class / cells", "", classes).with("cells", cells));
        return accounts;
    }
}

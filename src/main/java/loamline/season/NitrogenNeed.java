package loamline.season;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import loamline.account.Account;
import loamline.account.Source;
import loamline.reference.NamedRow;
import loamline.reference.TurfTables.Grass;

/** Nitrogen of a year: the published range of grass, region and use, less what clippings, age and shade spare. */
record NitrogenNeed(double gM2, Account account, List<String> assumed) {
    /** Where no region is told. */
    static final String USUAL_REGION = "virginia";
    /** What clippings left lying are worth: the least of the published figures, University of California IPM. */
    private static final double CLIPPINGS_SHARE = 0.2;
    /** In shade turf gets half: University of California IPM. */
    private static final double SHADE_SHARE = 0.5;
    /** An old lawn's soil gives at least so much, lb/1,000 ft²: Colorado State University, PlantTalk 1554. */
    private static final double OLD_LB = 1;

    private static final double OLD_YEARS = 30;

    static Optional<NitrogenNeed> of(Target target, Optional<Grass> grass, Shade shade, SeasonOptions options) {
        if (target.nGM2().isPresent()) {
            double decided = target.nGM2().getAsDouble();
            Account account =
                    Account.of("N = target", "Decided in the list of targets.").with("target_g_m2", decided);
            return Optional.of(new NitrogenNeed(decided, account, List.of()));
        }
        return grass.flatMap(g ->
                row(target, g, options).map(row -> published(target, g, row, shade, options, region(target, options))));
    }

    static String region(Target target, SeasonOptions options) {
        return target.region().isEmpty() ? options.region().orElse(USUAL_REGION) : target.region();
    }

    private static Optional<NamedRow> row(Target target, Grass grass, SeasonOptions options) {
        List<NamedRow> rows = options.tables().rows("turf-nitrogen.csv", grass, region(target, options));
        return rows.stream()
                .filter(row -> row.text("use").equalsIgnoreCase(use(target)))
                .findFirst()
                .or(() -> rows.stream()
                        .filter(row -> row.text("use").equals("any"))
                        .findFirst());
    }

    private static String use(Target target) {
        return target.use().isEmpty() ? "medium" : target.use();
    }

    private static NitrogenNeed published(
            Target target, Grass grass, NamedRow row, Shade shade, SeasonOptions options, String region) {
        double share = useShare(use(target));
        double table = row.number("low_lb") + share * (row.number("high_lb") - row.number("low_lb"));
        boolean stay = target.keeping().clippingsStay();
        double shadeShare = shade.isShaded() ? SHADE_SHARE : 1;
        double clippings = stay ? 1 - CLIPPINGS_SHARE : 1;
        double ageLb = stay && target.keeping().ageYears().orElse(0) > OLD_YEARS ? OLD_LB : 0;
        Account account = Account.of(
                        "N = (low + use · (high − low)) · shade · clippings − age",
                        "For " + grass.name() + " in " + region + ", " + use(target) + " use; "
                                + options.tables().origin(row).status() + ". " + shade.words(),
                        Stream.concat(
                                        Stream.of(
                                                options.tables().origin(row).source(),
                                                options.tables().source("uc-fertilize"),
                                                options.tables().source("colorado-1554")),
                                        shade.source().stream())
                                .toArray(Source[]::new))
                .with("low_lb_1000ft2", row.number("low_lb"))
                .with("high_lb_1000ft2", row.number("high_lb"))
                .with("use", share)
                .with("shade", shadeShare)
                .with("clippings", clippings)
                .with("age_lb_1000ft2", ageLb);
        if (shade.sunHours().isPresent()) {
            account = account.with("sun_hours", shade.sunHours().getAsDouble());
        }
        double lb = Math.max(0, table * shadeShare * clippings - ageLb);
        return new NitrogenNeed(Quantities.gM2(lb), account, assumed(target, options, region));
    }

    private static double useShare(String use) {
        return switch (use.toLowerCase(Locale.ROOT)) {
            case "low" -> 0;
            case "high" -> 1;
            default -> 0.5;
        };
    }

    private static List<String> assumed(Target target, SeasonOptions options, String region) {
        return !target.region().isEmpty() || options.region().isPresent()
                ? List.of()
                : List.of("no region is told: the figures of " + region + " are used; fill in region");
    }
}

package loamline.season;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import loamline.reference.NamedRow;
import loamline.reference.TurfTables;
import loamline.units.Factors;

/** A state's rules about nitrogen and phosphorus, as its row of the table has them; a state without a row has none. */
record Law(TurfTables tables, Optional<NamedRow> row, boolean professional, boolean dropSpreader) {
    static Law of(SeasonOptions options) {
        return new Law(
                options.tables(),
                options.state().flatMap(options.tables()::law),
                options.professional(),
                options.dropSpreader());
    }

    /** A cap of the law, g/m². */
    OptionalDouble capGM2(String column) {
        return row.map(r -> r.numberOrNone(column)).orElse(OptionalDouble.empty()).stream()
                .map(lb -> lb * Factors.G_M2_PER_LB_1000FT2)
                .findFirst();
    }

    double leastSlowPct() {
        return row.map(r -> r.numberOrNone("least_slow_pct").orElse(0)).orElse(0.0);
    }

    double setbackM() {
        return row.map(r -> dropSpreader && r.numberOrNone("reduced_ft").isPresent()
                                ? r.number("reduced_ft")
                                : r.numberOrNone("setback_ft").orElse(0))
                        .orElse(0.0)
                * Factors.M_PER_FT;
    }

    /** Whether fertilizer is barred on a day; the first and the last day of the ban count as barred. */
    boolean bars(LocalDate day) {
        if (row.isEmpty() || blackout("from").isEmpty()) {
            return false;
        }
        return DaysOfYear.of(blackout("from"), blackout("to")).holds(day);
    }

    private String blackout(String end) {
        return row.map(r -> r.text((professional ? "pro_" : "home_") + end)).orElse("");
    }

    /**
     * Whether phosphorus may be spread on a day.
     *
     * @param tested day of a test that shows a need; one after the day does not count; empty if none does, or it has no date
     * @param sown whether the ground is sown this season
     */
    boolean allowsPhosphorus(LocalDate day, Optional<LocalDate> tested, boolean sown) {
        if (row.isEmpty() || !row.get().text("p_needs_test").equals("yes") || sown) {
            return true;
        }
        OptionalDouble months = row.get().numberOrNone("test_months");
        return tested.filter(test -> !test.isAfter(day))
                .filter(test -> months.isEmpty()
                        || !test.plusMonths((long) months.getAsDouble()).isBefore(day))
                .isPresent();
    }

    /** Where the row comes from and how old it is. */
    Optional<String> words() {
        return row.map(r -> "The rules of " + r.text("state") + " are "
                + (r.text("as_of").isEmpty() ? "of an unknown year" : "those of " + r.text("as_of")) + " ("
                + tables.origin(r).source().citation() + "; " + r.text("status")
                + "). Statutes change, and local code wins: look up both before spreading.");
    }
}

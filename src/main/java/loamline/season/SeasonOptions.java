package loamline.season;

import java.time.LocalDate;
import java.time.Month;
import java.time.MonthDay;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import loamline.reference.TurfTables;
import loamline.soil.SoilOptions;

/**
 * What is decided by a person for a season.
 *
 * @param from first day on which anything is done; the season ends with its year
 * @param region whose calendar counts where a zone's target does not say
 * @param state two letters, for its law; empty for none
 * @param professional whether somebody is paid for spreading, where the law tells the two apart
 * @param dropSpreader whether a drop spreader or a guard keeps fertilizer in its swath
 * @param meanC usual mean temperature of months, °C; may be empty
 * @param firstFrost usual day of the first killing frost; empty if not told
 * @param soil how laboratory values are read
 */
public record SeasonOptions(
        LocalDate from,
        Optional<String> region,
        Optional<String> state,
        boolean professional,
        boolean dropSpreader,
        Map<Month, Double> meanC,
        Optional<MonthDay> firstFrost,
        SoilOptions soil,
        TurfTables tables) {
    public SeasonOptions {
        Map<Month, Double> kept = new EnumMap<>(Month.class);
        kept.putAll(meanC);
        meanC = Collections.unmodifiableMap(kept);
        if (state.isPresent() && tables.law(state.get()).isEmpty()) {
            throw new IllegalArgumentException("no law is held for the state “" + state.get() + "”: take one of "
                    + String.join(
                            ", ",
                            tables.rows("turf-laws.csv").stream()
                                    .map(row -> row.text("state"))
                                    .toList()));
        }
    }

    /** Where the first frost is not told. */
    public SeasonOptions(
            LocalDate from,
            Optional<String> region,
            Optional<String> state,
            boolean professional,
            boolean dropSpreader,
            Map<Month, Double> meanC,
            SoilOptions soil,
            TurfTables tables) {
        this(from, region, state, professional, dropSpreader, meanC, Optional.empty(), soil, tables);
    }

    public SeasonOptions withFrost(MonthDay day) {
        return new SeasonOptions(
                from, region, state, professional, dropSpreader, meanC, Optional.of(day), soil, tables);
    }

    /** How far fertilizer stays from open water by the state's law, m; 0 without one. */
    public double setbackM() {
        return Law.of(this).setbackM();
    }

    /** A season from a day on, without law, region and weather. */
    public static SeasonOptions from(LocalDate day) {
        return new SeasonOptions(
                day,
                Optional.empty(),
                Optional.empty(),
                false,
                false,
                Map.of(),
                SoilOptions.USUAL,
                TurfTables.published());
    }

    public SeasonOptions in(String stateLetters) {
        return new SeasonOptions(
                from, region, Optional.of(stateLetters), professional, dropSpreader, meanC, firstFrost, soil, tables);
    }

    public SeasonOptions inRegion(String name) {
        return new SeasonOptions(
                from, Optional.of(name), state, professional, dropSpreader, meanC, firstFrost, soil, tables);
    }
}

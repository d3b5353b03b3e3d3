package loamline.season;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Something to do on a day.
 *
 * @param areaM2 ground that it is done on
 * @param product what is spread; empty where nothing is
 * @param kgM2 rate in all passes; 0 where nothing is weighed
 * @param kg in all
 * @param volumeM3 of what is spread by volume; 0 else
 * @param passes each with the same share, each second one at a right angle to the first
 * @param panG what a pan of {@link #PAN_M2} catches in all passes; empty where nothing is spread
 * @param reason one sentence
 * @param cautions what to know before
 */
public record Task(
        LocalDate date,
        String zone,
        Action action,
        double areaM2,
        String product,
        double kgM2,
        double kg,
        double volumeM3,
        int passes,
        OptionalDouble panG,
        String reason,
        List<String> cautions) {
    /** A square foot, m². */
    public static final double PAN_M2 = 0.09290304;

    /** What is done. */
    public enum Action {
        FERTILIZE("fertilize", "Fertilize"),
        LIME("lime", "Spread lime"),
        AMEND("amend", "Spread"),
        CORE("core", "Core aerate"),
        TOPDRESS("topdress", "Topdress"),
        SEED("seed", "Seed"),
        WETTING_AGENT("wetting agent", "Apply wetting agent");

        private final String word;
        private final String title;

        Action(String word, String title) {
            this.word = word;
            this.title = title;
        }

        /** As files have it. */
        public String word() {
            return word;
        }

        /** As pages have it. */
        public String title() {
            return title;
        }
    }

    public Task {
        cautions = List.copyOf(cautions);
    }
}

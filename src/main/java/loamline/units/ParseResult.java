package loamline.units;

import java.util.Optional;
import java.util.OptionalDouble;

/** What became of a text: a value, or the reason why there is none. */
public sealed interface ParseResult {

    /** The value in the measure's stored unit, if there is one. */
    OptionalDouble value();

    /** The reason why there is none, if so. */
    Optional<Refused> refusal();

    /**
     * The text was understood.
     *
     * @param stored in the measure's stored unit; finite, never negative zero
     */
    record Parsed(double stored) implements ParseResult {
        @Override
        public OptionalDouble value() {
            return OptionalDouble.of(stored);
        }

        @Override
        public Optional<Refused> refusal() {
            return Optional.empty();
        }
    }

    /**
     * The text was not understood.
     *
     * @param reason what is the matter
     * @param position where in the text it starts, counted in {@code char}s from 0; after the last that is no
     *     blank when something is missing at the end
     * @param part the piece of the text that was not understood; empty when something is missing
     * @param measure what was expected
     */
    record Refused(Reason reason, int position, String part, Measure measure) implements ParseResult {
        @Override
        public OptionalDouble value() {
            return OptionalDouble.empty();
        }

        @Override
        public Optional<Refused> refusal() {
            return Optional.of(this);
        }

        /** Two sentences for the person who typed: what is the matter and where, and what would be accepted. */
        public String message() {
            return "%s Write %s such as %s."
                    .formatted(reason.sentence.formatted(part, position + 1), measure.noun(), measure.examples());
        }
    }

    /** Why a text was not understood. */
    enum Reason {
        /** Nothing but blanks. */
        EMPTY("Nothing is written."),
        /** More characters than any quantity needs. */
        TOO_LONG("This is too long."),
        /** A number should stand here. */
        NUMBER_MISSING("A number is missing at character %2$d."),
        /** Digits and marks that make no number: {@code 1,00,0}, {@code 1.2.3}, {@code 1/0}. */
        NOT_A_NUMBER("“%s” at character %d is not a number."),
        /** No unit of this measure. */
        NOT_A_UNIT("“%s” at character %d is not a unit that fits."),
        /** A second number that does not continue the first, as in {@code 3 psi 4}. */
        LEFT_OVER("“%s” at character %d does not belong to what stands before it."),
        /** A second number that fills the unit before it, as in {@code 12 ft 14 in}. */
        PART_TOO_LARGE("“%s” at character %d is as much as the unit before it, or more.");

        private final String sentence;

        Reason(String sentence) {
            this.sentence = sentence;
        }
    }
}

package loamline.reference;

import loamline.account.Source;

/**
 * Where a row of a table comes from, and how far to trust it.
 *
 * @param status {@code published}, {@code published, second-hand}, {@code author's article}, {@code derived}, {@code
 *     from memory, high}, {@code from memory, medium}, {@code common practice, no source}, or the user's own word
 */
public record Origin(String status, Source source) {
    /** Whether a person should hold the row against the publication before much depends on it. */
    public boolean isFromMemory() {
        return status.startsWith("from memory");
    }
}

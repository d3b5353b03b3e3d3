package loamline.account;

/** How much a problem matters, least first. */
public enum Severity {
    /** Worth knowing; nothing is wrong. */
    INFO,
    /** Something was put right or looks doubtful; the result stands. */
    WARNING,
    /** Part of the input could not be used; the result leaves it out. */
    ERROR;

    /** The word in reports: {@code info}, {@code warning}, {@code error}. */
    public String word() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }
}

package loamline.account;

/**
 * Something about an input that its owner should know.
 *
 * @param code a stable name in capitals, such as {@code OUTLINE_SELF_CROSSING}
 * @param message one sentence or two: what is the matter and what to do about it
 */
public record Problem(Severity severity, String code, Where where, String message) {
    public static Problem info(String code, Where where, String message) {
        return new Problem(Severity.INFO, code, where, message);
    }

    public static Problem warning(String code, Where where, String message) {
        return new Problem(Severity.WARNING, code, where, message);
    }

    public static Problem error(String code, Where where, String message) {
        return new Problem(Severity.ERROR, code, where, message);
    }

    public boolean isError() {
        return severity == Severity.ERROR;
    }

    /** The report line: {@code SEVERITY file[:line|:/pointer] CODE message}. */
    public String line(String file) {
        return severity.word() + " " + file + where.suffix() + " " + code + " " + message;
    }
}

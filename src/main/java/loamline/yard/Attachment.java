package loamline.yard;

/**
 * A table that belongs to the visit, letter by letter as it came: cup readings, a log, a lab report, a price list. It
 * goes wherever the yard goes.
 *
 * @param sort what it is, one of the {@link Sort} words; any other is kept for a program that knows it
 * @param name what it is called, as its file was
 * @param about what it is about where the sort asks for it, as the valve of cup readings; may be empty
 * @param text CSV
 * @param extras what a file said beyond this
 */
public record Attachment(String sort, String name, String about, String text, Extras extras) {
    /** What a table may be. */
    public enum Sort {
        READINGS("readings"),
        LOG("log"),
        LAB("lab"),
        PRODUCTS("products"),
        SERVICE("service"),
        TARGETS("targets"),
        CLIMATE("climate");

        private final String word;

        Sort(String word) {
            this.word = word;
        }

        /** Its name in files. */
        public String word() {
            return word;
        }
    }

    public static Attachment of(Sort sort, String name, String about, String text) {
        return new Attachment(sort.word(), name, about, text, Extras.NONE);
    }

    public boolean is(Sort wanted) {
        return sort.equals(wanted.word());
    }

    /** Whether it takes the place of another: the same sort of table about the same thing under the same name. */
    boolean replaces(Attachment other) {
        return sort.equals(other.sort) && about.equals(other.about) && name.equals(other.name);
    }
}

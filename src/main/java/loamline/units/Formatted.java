package loamline.units;

/**
 * A number as it is read, its unit apart, so that numbers can be set flush right and units in a softer ink.
 *
 * @param number such as {@code 7,410} or {@code 7,410 ± 90}
 * @param unit such as {@code ft²}
 */
public record Formatted(String number, String unit) {

    /** Both as one text: a blank between them, except before a degree sign (NIST SP 811, section 7.2). */
    public String text() {
        return unit.equals("°") ? number + unit : number + " " + unit;
    }

    /** The same as {@link #text()}. */
    @Override
    public String toString() {
        return text();
    }
}

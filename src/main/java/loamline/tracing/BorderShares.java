package loamline.tracing;

/**
 * What a border lies on, in shares of its length; together 1, or all 0 where there is no border.
 *
 * @param clear a change of colour or texture that is easily seen
 * @param shadow a change that looks like the edge of a shadow: same hue, other brightness
 * @param faint a change that is hardly seen, or none
 * @param limit ground closed to tracing
 * @param pictureEdge the edge of the picture or of its data
 */
public record BorderShares(double clear, double shadow, double faint, double limit, double pictureEdge) {
    static final BorderShares NONE = new BorderShares(0, 0, 0, 0, 0);
}

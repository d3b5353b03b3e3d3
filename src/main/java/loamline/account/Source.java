package loamline.account;

/**
 * Where a formula or a figure comes from.
 *
 * @param id short and stable, such as {@code walvoort-2010}
 * @param citation enough to find it, or "common practice, no source", or "from memory of …"
 */
public record Source(String id, String citation) {}

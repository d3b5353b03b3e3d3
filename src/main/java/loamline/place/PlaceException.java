package loamline.place;

/** What an image or a text says of its place cannot be used; the message says why and what to do. */
public final class PlaceException extends Exception {
    public PlaceException(String message, Throwable cause) {
        super(message, cause);
    }

    public PlaceException(String message) {
        super(message);
    }
}

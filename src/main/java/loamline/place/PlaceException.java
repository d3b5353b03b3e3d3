package loamline.place;

/** What an image or a text says of its place cannot be used; the message says why and what to do. */
public final class PlaceException extends Exception {
    private final String message;

    public PlaceException(String message, Throwable cause) {
        super(message, cause);
        this.message = message;
    }

    public PlaceException(String message) {
        super(message);
        this.message = message;
    }

    @Override
    public String getMessage() {
        return message;
    }
}

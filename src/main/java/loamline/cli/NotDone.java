package loamline.cli;

/** A command cannot be carried out; the message is a code and a sentence for the user. */
final class NotDone extends Exception {
    private static final long serialVersionUID = 1;

    NotDone(String code, String message) {
        super(code + " " + message);
    }
}

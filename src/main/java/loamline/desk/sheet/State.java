package loamline.desk.sheet;

/** How far a step is, told by a sign's shape and by this word. */
public enum State {
    NOT_STARTED("not started"),
    UNDER_WAY("under way"),
    NEEDS_YOU("needs you"),
    DONE("done");

    private final String word;

    State(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}

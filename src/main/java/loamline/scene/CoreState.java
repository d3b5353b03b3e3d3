package loamline.scene;

/** How far a core has come. */
public enum CoreState {
    /** Hollow, with its number. */
    PLANNED,
    /** Filled. */
    LOGGED,
    /** Struck through. */
    REFUSED
}

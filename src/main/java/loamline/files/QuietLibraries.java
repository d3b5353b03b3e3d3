package loamline.files;

import java.util.logging.Level;
import java.util.logging.Logger;

/** Libraries that talk to the console of their own accord. */
public final class QuietLibraries {
    /** Held, because a logger that nobody holds is forgotten together with its level. */
    private static final Logger SIS = Logger.getLogger("org.apache.sis");

    private QuietLibraries() {}

    /** Silences Apache SIS: what matters of its warnings comes back as problems. */
    public static void silence() {
        SIS.setLevel(Level.OFF);
    }
}

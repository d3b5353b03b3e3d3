package loamline.place;

import java.io.OutputStream;

/**
 * The registry of coordinate reference systems that comes with Apache SIS, an embedded Derby database. It opens at the
 * first EPSG code that is looked up, which takes some seconds; nothing opens it before.
 */
public final class EpsgDatabase {
    /** Where Derby's log goes; Derby finds it by name. */
    public static final OutputStream NOWHERE = OutputStream.nullOutputStream();

    private static final String LOG_FIELD = "derby.stream.error.field";

    private EpsgDatabase() {}

    /** Keeps Derby from writing a derby.log into the working directory, unless the user sends it elsewhere. */
    static void keepQuiet() {
        if (System.getProperty("derby.stream.error.file") == null && System.getProperty(LOG_FIELD) == null) {
            System.setProperty(LOG_FIELD, EpsgDatabase.class.getName() + ".NOWHERE");
        }
    }
}

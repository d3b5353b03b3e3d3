package loamline.desk.log;

import java.util.List;
import java.util.OptionalInt;
import loamline.files.LogFile;
import loamline.files.RawTable;

/** A photo written into a log, by its name. */
final class PhotoCells {
    private static final String CORE = "core";
    private static final String BETWEEN = ";";

    private PhotoCells() {}

    /** The log with a photo more in a core's last row, which is begun if the core has none. */
    static RawTable with(RawTable log, String core, String photo) {
        RawTable wide = log.withColumn(CORE).withColumn(LogFile.PHOTO_NAME);
        int cores = wide.column(CORE).orElseThrow();
        int photos = wide.column(LogFile.PHOTO_NAME).orElseThrow();
        int row = last(wide, cores, core).orElse(wide.rows().size());
        String before = wide.cell(row, photos);
        boolean known = List.of(before.split(BETWEEN)).contains(photo);
        String after = before.isEmpty() ? photo : known ? before : before + BETWEEN + photo;
        return wide.with(row, cores, row < wide.rows().size() ? wide.cell(row, cores) : core)
                .with(row, photos, after);
    }

    private static OptionalInt last(RawTable log, int column, String core) {
        for (int row = log.rows().size() - 1; row >= 0; row--) {
            if (log.cell(row, column).strip().equalsIgnoreCase(core)) {
                return OptionalInt.of(row);
            }
        }
        return OptionalInt.empty();
    }
}

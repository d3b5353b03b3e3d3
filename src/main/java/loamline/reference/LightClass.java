package loamline.reference;

import java.util.List;
import loamline.account.Source;

/**
 * A class of lawns by the direct sun they get.
 *
 * @param name such as {@code partial shade}
 * @param fromHours least hours a day, 0 or more
 * @param advice what grows there
 */
public record LightClass(String name, double fromHours, String advice, Source source) {
    /** The published classes, darkest first; the first begins at 0. */
    public static List<LightClass> published() {
        return PublishedTable.rows("light-classes.csv").stream()
                .map(row ->
                        new LightClass(row.text("name"), row.number("from_hours"), row.text("advice"), row.source()))
                .toList();
    }

    /** The position in {@link #published} of the class of so many hours. */
    public static int of(double hours, List<LightClass> classes) {
        int found = 0;
        while (found + 1 < classes.size() && hours >= classes.get(found + 1).fromHours) {
            found++;
        }
        return found;
    }
}

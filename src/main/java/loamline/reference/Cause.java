package loamline.reference;

import java.util.ArrayList;
import java.util.List;
import loamline.account.Source;

/**
 * A reason why turf struggles.
 *
 * @param id short and stable, such as {@code thatch}
 * @param title in a few words
 * @param client what it is, in a sentence a client understands
 * @param confirm the test that would confirm it
 * @param action what to do if it is
 * @param caution what to beware of
 * @param prior how common it is next to the others, as a logarithm of odds
 * @param signs what speaks for and against it
 */
public record Cause(
        String id,
        String title,
        String client,
        String confirm,
        String action,
        String caution,
        double prior,
        List<CauseSign> signs,
        Source source) {
    public Cause {
        signs = List.copyOf(signs);
    }

    /** The causes of the tables that come with the program. */
    public static List<Cause> published() {
        List<NamedRow> signs = PublishedTable.rows("cause-signs.csv");
        List<Cause> causes = new ArrayList<>();
        for (NamedRow row : PublishedTable.rows("causes.csv")) {
            causes.add(new Cause(
                    row.text("cause"),
                    row.text("title"),
                    row.text("client"),
                    row.text("confirm"),
                    row.text("action"),
                    row.text("caution"),
                    row.number("prior"),
                    signs.stream()
                            .filter(sign -> sign.text("cause").equals(row.text("cause")))
                            .map(CauseSign::of)
                            .toList(),
                    row.source()));
        }
        return List.copyOf(causes);
    }
}

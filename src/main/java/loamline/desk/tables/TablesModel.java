package loamline.desk.tables;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleObjectProperty;
import loamline.account.Problem;
import loamline.desk.session.Session;
import loamline.files.RawTable;
import loamline.files.Read;
import loamline.yard.Attachment;
import loamline.yard.Yard;

/** The tables of one sort that a yard carries, and the one of them that is open. Every change is an edit of the yard. */
public final class TablesModel {
    private final Session session;
    private final TableKind kind;
    private final ReadOnlyObjectWrapper<List<Attachment>> tables = new ReadOnlyObjectWrapper<>(List.of());
    private final ObjectProperty<Optional<Attachment>> open = new SimpleObjectProperty<>(Optional.empty());
    private final ReadOnlyStringWrapper said = new ReadOnlyStringWrapper("");

    public TablesModel(Session session, TableKind kind) {
        this.session = session;
        this.kind = kind;
        session.shown().addListener((o, before, now) -> follow(now));
        follow(session.shown().get());
    }

    /** The open table stays open as long as one of its name is there; else the last is opened. */
    private void follow(Yard yard) {
        List<Attachment> now = yard.attached(kind.sort());
        if (now.equals(tables.get())) {
            return;
        }
        Optional<Attachment> same = open.get()
                .flatMap(before -> now.stream()
                        .filter(table -> name(table).equals(name(before)))
                        .findFirst());
        tables.set(now);
        open.set(same.or(() -> now.stream().reduce((first, last) -> last)));
    }

    /** Takes a file in as it is. */
    public void bringIn(Path file, String about) {
        Read<String> read = RawTable.text(file);
        said.set(read.problems().stream()
                .map(problem -> file.getFileName() + " " + problem.message() + ".")
                .collect(Collectors.joining(" ")));
        read.value().ifPresent(text -> attach(file.getFileName().toString(), about, text, "bring in "));
    }

    /** Takes in what was copied elsewhere: a table with its header, or rows under the usual one. */
    public void paste(String text, String about) {
        RawTable read = RawTable.of(text);
        boolean headed = read.header().stream()
                .anyMatch(name -> kind.header().stream().anyMatch(name.strip()::equalsIgnoreCase));
        RawTable table =
                headed ? read : RawTable.empty(kind.header()).pasted(0, 0, RawTable.block(text.replace(',', '\t')));
        if (table.rows().isEmpty()) {
            said.set("There is no table on the clipboard: copy the cells first.");
        } else {
            attach(freeName("pasted"), about, table.text(), "paste ");
        }
    }

    /** Begins an empty one. */
    public void begin(String about) {
        attach(freeName(kind.word()), about, RawTable.empty(kind.header()).text(), "begin ");
    }

    private String freeName(String stem) {
        String name = stem.replace(' ', '-');
        int number = 1;
        while (isTaken(numbered(name, number))) {
            number++;
        }
        return numbered(name, number);
    }

    private static String numbered(String stem, int number) {
        return number == 1 ? stem : stem + "-" + number;
    }

    private boolean isTaken(String name) {
        return tables.get().stream().anyMatch(table -> table.name().equals(name));
    }

    private void attach(String name, String about, String text, String verb) {
        Attachment table = Attachment.of(kind.sort(), name, about, text);
        open.set(Optional.of(table));
        session.edit(verb + name, now().attaching(table));
        open.set(Optional.of(table));
    }

    /** Puts other cells into the open table. */
    public void change(RawTable changed) {
        open.get().ifPresent(before -> {
            Attachment after =
                    new Attachment(before.sort(), before.name(), before.about(), changed.text(), before.extras());
            replace(before, after, "type into " + before.name());
        });
    }

    /** Says what the open table is about. */
    public void tellAbout(String about) {
        open.get()
                .filter(before -> !before.about().equals(about))
                .ifPresent(before -> replace(
                        before,
                        new Attachment(before.sort(), before.name(), about, before.text(), before.extras()),
                        "put " + before.name() + " to " + kind.about() + " " + about));
    }

    private void replace(Attachment before, Attachment after, String label) {
        open.set(Optional.of(after));
        session.edit(
                label,
                now().withAttachments(now().attachments().stream()
                        .map(table -> table.equals(before) ? after : table)
                        .toList()));
    }

    /** Takes the open table out of the yard; undo brings it back. */
    public void remove() {
        open.get()
                .ifPresent(table -> session.edit(
                        "remove " + table.name(),
                        now().withAttachments(now().attachments().stream()
                                .filter(other -> !other.equals(table))
                                .toList())));
    }

    private Yard now() {
        return session.history().get().now();
    }

    /** What is wrong with the open table. */
    public List<Problem> problems() {
        return open.get().map(kind.check()).orElse(List.of());
    }

    /** A table as it is called in a list. */
    String name(Attachment table) {
        return table.about().isEmpty() ? table.name() : table.name() + " (" + kind.about() + " " + table.about() + ")";
    }

    TableKind kind() {
        return kind;
    }

    public ReadOnlyObjectProperty<List<Attachment>> tables() {
        return tables.getReadOnlyProperty();
    }

    public ObjectProperty<Optional<Attachment>> open() {
        return open;
    }

    /** What went wrong in bringing a table in; blank if nothing did. */
    public ReadOnlyStringProperty said() {
        return said.getReadOnlyProperty();
    }
}

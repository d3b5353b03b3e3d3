package loamline.desk.tables;

import java.util.List;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javafx.beans.property.SimpleStringProperty;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TablePosition;
import javafx.scene.control.TableView;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import loamline.files.RawTable;

/**
 * Cells to type into, made for speed: a letter begins a cell anew, Enter goes down, Tab goes right, arrows go anywhere,
 * Ctrl+D repeats what stands above, a block copied in a spreadsheet is pasted where the cursor is. Below the last row
 * there is always one more.
 */
final class TableGrid extends TableView<Integer> {
    private static final double LEAST_COLUMN_PX = 64;
    private static final double MOST_COLUMN_PX = 260;
    private static final double CHARACTER_PX = 9;

    /** Rows that are looked at for the width of a column. */
    private static final int ROWS_LOOKED_AT = 100;

    private final Consumer<RawTable> onEdit;
    private RawTable table = RawTable.empty(List.of());

    /** What the next cell to be edited begins with in the place of its text. */
    private String typed = "";

    /** @param onEdit given the table after each cell that was changed */
    TableGrid(Consumer<RawTable> onEdit) {
        this.onEdit = onEdit;
        getStyleClass().add("grid");
        setEditable(true);
        getSelectionModel().setCellSelectionEnabled(true);
        setAccessibleHelp("Type into a cell; Enter goes down, Tab goes right, Ctrl+D repeats what stands above");
        addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
        addEventFilter(KeyEvent.KEY_TYPED, this::typed);
    }

    /** Shows a table; the cursor stays where it is. */
    void show(RawTable changed) {
        boolean sameColumns = changed.header().equals(table.header());
        table = changed;
        if (!sameColumns) {
            getColumns()
                    .setAll(IntStream.range(0, table.header().size())
                            .mapToObj(this::column)
                            .toList());
        }
        List<Integer> rows =
                IntStream.rangeClosed(0, table.rows().size()).boxed().toList();
        if (!getItems().equals(rows)) {
            getItems().setAll(rows);
        }
        refresh();
    }

    private TableColumn<Integer, String> column(int place) {
        String name = table.header().get(place);
        TableColumn<Integer, String> column = new TableColumn<>(name);
        column.setSortable(false);
        column.setReorderable(false);
        column.setPrefWidth(Math.max(LEAST_COLUMN_PX, Math.min(MOST_COLUMN_PX, longest(place) * CHARACTER_PX)));
        column.setCellValueFactory(row -> new SimpleStringProperty(table.cell(row.getValue(), place)));
        column.setCellFactory(any -> new GridCell(this::takeTyped, this::go));
        column.setOnEditCommit(e -> change(table.with(e.getTablePosition().getRow(), place, e.getNewValue())));
        return column;
    }

    /** Characters of the longest text in a column, with a little air. */
    private int longest(int column) {
        return 2
                + Stream.concat(
                                Stream.of(table.header().get(column)),
                                table.rows().stream().limit(ROWS_LOOKED_AT).map(row -> row.get(column)))
                        .mapToInt(String::length)
                        .max()
                        .orElse(0);
    }

    private String takeTyped() {
        String text = typed;
        typed = "";
        return text;
    }

    private void change(RawTable changed) {
        if (!changed.equals(table)) {
            onEdit.accept(changed);
        }
    }

    private boolean isEditing() {
        return getEditingCell() != null && getEditingCell().getRow() >= 0;
    }

    private void pressed(KeyEvent e) {
        if (isEditing() || getColumns().isEmpty()) {
            return;
        }
        TablePosition<?, ?> at = cursor();
        boolean used = true;
        if (e.isShortcutDown() && e.getCode() == KeyCode.V) {
            change(table.pasted(
                    at.getRow(),
                    at.getColumn(),
                    RawTable.block(Clipboard.getSystemClipboard().getString())));
        } else if (e.isShortcutDown() && e.getCode() == KeyCode.C) {
            copy(table.cell(at.getRow(), at.getColumn()));
        } else if (e.isShortcutDown() && e.getCode() == KeyCode.D) {
            repeatAbove(at);
        } else if (e.isShortcutDown() && e.getCode() == KeyCode.DELETE) {
            change(table.without(at.getRow()));
        } else if (e.getCode() == KeyCode.DELETE || e.getCode() == KeyCode.BACK_SPACE) {
            change(table.with(at.getRow(), at.getColumn(), ""));
        } else if (e.getCode() == KeyCode.ENTER || e.getCode() == KeyCode.F2) {
            edit(at.getRow(), getColumns().get(at.getColumn()));
        } else {
            used = false;
        }
        if (used) {
            e.consume();
        }
    }

    /** A character typed over a cell begins it anew. */
    private void typed(KeyEvent e) {
        String text = e.getCharacter();
        boolean plain = !e.isShortcutDown() && !e.isAltDown() && !text.isEmpty() && text.charAt(0) > ' ';
        if (plain && !isEditing() && !getColumns().isEmpty() && text.charAt(0) != KeyEvent.CHAR_UNDEFINED.charAt(0)) {
            TablePosition<?, ?> at = cursor();
            typed = text;
            edit(at.getRow(), getColumns().get(at.getColumn()));
            e.consume();
        }
    }

    private TablePosition<?, ?> cursor() {
        TablePosition<?, ?> focused = getFocusModel().getFocusedCell();
        return new TablePosition<>(
                this, Math.max(0, focused.getRow()), getColumns().get(Math.max(0, focused.getColumn())));
    }

    private void repeatAbove(TablePosition<?, ?> at) {
        if (at.getRow() > 0) {
            change(table.with(at.getRow(), at.getColumn(), table.cell(at.getRow() - 1, at.getColumn())));
            go(1, 0);
        }
    }

    private static void copy(String text) {
        ClipboardContent content = new ClipboardContent();
        content.putString(text);
        Clipboard.getSystemClipboard().setContent(content);
    }

    /** Moves the cursor, at the end of a row to the start of the next. */
    private void go(int rows, int columns) {
        TablePosition<?, ?> at = cursor();
        int width = getColumns().size();
        int flat = at.getColumn() + columns;
        int row = Math.max(0, Math.min(table.rows().size(), at.getRow() + rows + Math.floorDiv(flat, width)));
        TableColumn<Integer, ?> column = getColumns().get(Math.floorMod(flat, width));
        getSelectionModel().clearAndSelect(row, column);
        scrollTo(Math.max(0, row - 1));
        scrollToColumn(column);
        requestFocus();
    }
}

package loamline.desk.tables;

import java.util.function.BiConsumer;
import java.util.function.Supplier;
import javafx.scene.control.TableCell;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import org.jspecify.annotations.Nullable;

/** A cell of a {@link TableGrid}, with a field in it while it is edited. */
final class GridCell extends TableCell<Integer, String> {
    private final Supplier<String> typed;
    private final BiConsumer<Integer, Integer> go;
    private final TextField field = new TextField();

    /**
     * @param typed what editing begins with; empty for the text there is
     * @param go moves the cursor by rows and columns
     */
    GridCell(Supplier<String> typed, BiConsumer<Integer, Integer> go) {
        this.typed = typed;
        this.go = go;
        field.getStyleClass().add("grid-field");
        field.addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
        field.focusedProperty().addListener((o, before, now) -> {
            if (!now && isEditing()) {
                commitEdit(field.getText());
            }
        });
    }

    private void pressed(KeyEvent e) {
        if (e.getCode() == KeyCode.ENTER || e.getCode() == KeyCode.DOWN) {
            leave(1, 0);
        } else if (e.getCode() == KeyCode.UP) {
            leave(-1, 0);
        } else if (e.getCode() == KeyCode.TAB) {
            leave(0, e.isShiftDown() ? -1 : 1);
        } else if (e.getCode() == KeyCode.ESCAPE) {
            cancelEdit();
        } else {
            return;
        }
        e.consume();
    }

    private void leave(int rows, int columns) {
        commitEdit(field.getText());
        go.accept(rows, columns);
    }

    @Override
    public void startEdit() {
        super.startEdit();
        if (isEditing()) {
            String begun = typed.get();
            field.setText(begun.isEmpty() ? getItem() : begun);
            setText(null);
            setGraphic(field);
            field.requestFocus();
            field.end();
        }
    }

    @Override
    public void cancelEdit() {
        super.cancelEdit();
        showText(getItem());
    }

    @Override
    public void commitEdit(String text) {
        super.commitEdit(text);
        showText(text);
    }

    @Override
    protected void updateItem(@Nullable String item, boolean empty) {
        super.updateItem(item, empty);
        if (!isEditing()) {
            showText(empty ? null : item);
        }
    }

    private void showText(@Nullable String text) {
        setGraphic(null);
        setText(text);
    }
}

package loamline.desk.cores;

import javafx.scene.Node;
import javafx.scene.control.Hyperlink;
import javafx.scene.layout.VBox;

/** Words that unfold something beneath them, and fold it away again; what is folded away costs no time. */
final class Fold extends VBox {
    private final Node content;

    Fold(String words, Node content) {
        super(4);
        this.content = content;
        Hyperlink ask = new Hyperlink(words);
        ask.setOnAction(e -> {
            if (isOpen()) {
                getChildren().remove(content);
            } else {
                open();
            }
            ask.setVisited(false); // the colour of a visited link says nothing here
        });
        getChildren().add(ask);
    }

    private boolean isOpen() {
        return getChildren().contains(content);
    }

    void open() {
        if (!isOpen()) {
            getChildren().add(content);
        }
    }
}

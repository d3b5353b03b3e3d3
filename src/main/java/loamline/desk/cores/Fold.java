package loamline.desk.cores;

import javafx.scene.Node;
import javafx.scene.control.Hyperlink;
import javafx.scene.layout.VBox;

/** Words that unfold something beneath them, and fold it away again. */
final class Fold extends VBox {
    private final Node content;

    Fold(String words, Node content) {
        super(4);
        this.content = content;
        Hyperlink ask = new Hyperlink(words);
        ask.setOnAction(e -> {
            content.setVisible(!content.isVisible());
            ask.setVisited(false); // the colour of a visited link says nothing here
        });
        content.setVisible(false);
        content.managedProperty().bind(content.visibleProperty());
        getChildren().addAll(ask, content);
    }

    void open() {
        content.setVisible(true);
    }
}

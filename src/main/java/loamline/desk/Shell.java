package loamline.desk;

import javafx.scene.Node;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Region;
import javafx.scene.text.Text;

/** The places of the window's parts, with the yard's name and as bare paper until they are filled. */
final class Shell extends BorderPane {
    /** @param narrow whether the facts are folded away */
    Shell(String name, boolean narrow) {
        Text title = new Text(name);
        title.getStyleClass().add("yard-name");
        BorderPane top = new BorderPane();
        top.setLeft(title);
        top.getStyleClass().addAll("top", "top-bare");
        Region facts = paper("facts");
        if (narrow) {
            facts.getStyleClass().add("facts-folded");
        }
        fill(top, paper("sheet"), paper("middle"), facts, paper("foot"));
    }

    private static Region paper(String styleClass) {
        Region region = new Region();
        region.getStyleClass().add(styleClass);
        return region;
    }

    /** Puts the parts in their places, in the order in which Tab goes through them. */
    void fill(Node top, Node left, Node centre, Node right, Node bottom) {
        setTop(top);
        setLeft(left);
        setCenter(centre);
        setRight(right);
        setBottom(bottom);
    }
}

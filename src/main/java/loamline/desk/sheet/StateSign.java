package loamline.desk.sheet;

import java.util.Locale;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.StackPane;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Polygon;
import javafx.scene.shape.Shape;

/** The sign before a step: a ring, a triangle or a disc with a tick, so that shape tells and not colour alone. */
final class StateSign {
    private StateSign() {}

    static Node of(Steps.State state) {
        Shape shape = switch (state) {
            case NOT_STARTED, DONE -> new Circle(8);
            case NEEDS_YOU -> new Polygon(8, 0, 16, 15, 0, 15);
        };
        String kind = state.name().toLowerCase(Locale.ROOT).replace('_', '-');
        shape.getStyleClass().addAll("sign", "sign-" + kind);
        Label mark = new Label(
                switch (state) {
                    case NOT_STARTED -> "";
                    case NEEDS_YOU -> "!";
                    case DONE -> "✓";
                });
        mark.getStyleClass().addAll("sign-mark", "mark-" + kind);
        StackPane sign = new StackPane(shape, mark);
        sign.setMinWidth(18);
        sign.setMaxHeight(20);
        return sign;
    }
}

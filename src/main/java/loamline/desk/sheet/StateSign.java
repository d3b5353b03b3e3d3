package loamline.desk.sheet;

import java.util.Locale;
import javafx.scene.Node;
import javafx.scene.layout.StackPane;
import javafx.scene.shape.Arc;
import javafx.scene.shape.ArcType;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import javafx.scene.shape.Polygon;
import javafx.scene.shape.Polyline;
import javafx.scene.shape.Shape;

/**
 * The sign before a step: a ring, a ring half filled, a disc with a tick, a triangle with a stroke, so that shape tells
 * and not colour alone.
 */
final class StateSign {
    private static final double RADIUS = 8;

    private StateSign() {}

    static Node of(State state) {
        StackPane sign = new StackPane(shape(state), mark(state));
        sign.getStyleClass()
                .addAll("sign", "sign-" + state.name().toLowerCase(Locale.ROOT).replace('_', '-'));
        return sign;
    }

    private static Shape shape(State state) {
        Shape shape = state == State.NEEDS_YOU
                ? new Polygon(RADIUS, 0, 2 * RADIUS, 15, 0, 15)
                : new Circle(RADIUS, RADIUS, RADIUS);
        shape.getStyleClass().add("sign-shape");
        return shape;
    }

    private static Shape mark(State state) {
        Shape mark = switch (state) {
            case NOT_STARTED -> new Line();
            case UNDER_WAY -> new Arc(RADIUS, RADIUS, RADIUS, RADIUS, 90, 180);
            case NEEDS_YOU -> new Polygon(7.2, 5, 8.8, 5, 8.8, 10, 7.2, 10);
            case DONE -> new Polyline(4.5, 8.2, 7.2, 10.8, 11.6, 5.6);
        };
        if (mark instanceof Arc half) {
            half.setType(ArcType.CHORD);
            StackPane.setAlignment(mark, javafx.geometry.Pos.CENTER_LEFT);
        }
        mark.setVisible(state != State.NOT_STARTED);
        mark.getStyleClass().add("sign-mark");
        return mark;
    }
}

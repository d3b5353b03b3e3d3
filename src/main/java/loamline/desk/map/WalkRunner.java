package loamline.desk.map;

import java.util.Optional;
import javafx.animation.AnimationTimer;
import javafx.beans.value.ObservableValue;
import javafx.scene.Group;
import javafx.scene.paint.Color;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Polyline;
import javafx.scene.shape.StrokeLineCap;
import loamline.scene.Palette;
import loamline.scene.Role;

/** A dot with a chevron that runs along the walk once. */
final class WalkRunner extends Group {
    private static final double RADIUS_PX = 8;
    private static final double NANOS = 1e-9;

    private final ObservableValue<Viewport> viewport;
    private final Circle dot = new Circle(RADIUS_PX);
    private final Polyline chevron = new Polyline(-2, -4, 2.5, 0, -2, 4);
    private Optional<WalkPace> walk = Optional.empty();
    private long started;
    private final AnimationTimer timer = new AnimationTimer() {
        @Override
        public void handle(long now) {
            started = started == 0 ? now : started;
            step((now - started) * NANOS);
        }
    };

    WalkRunner(ObservableValue<Viewport> viewport) {
        this.viewport = viewport;
        chevron.setStrokeWidth(2);
        chevron.setStrokeLineCap(StrokeLineCap.ROUND);
        chevron.setFill(Color.TRANSPARENT);
        dot.setStrokeWidth(2);
        getChildren().addAll(dot, chevron);
        setManaged(false);
        setMouseTransparent(true);
        setVisible(false);
    }

    void start(WalkPace pace, Palette palette) {
        dot.setFill(ScreenCanvas.color(palette.of(Role.ACCENT)));
        dot.setStroke(ScreenCanvas.color(palette.of(Role.PANEL)));
        chevron.setStroke(ScreenCanvas.color(palette.of(Role.ON_ACCENT)));
        walk = Optional.of(pace);
        started = 0;
        timer.start();
    }

    void stop() {
        timer.stop();
        walk = Optional.empty();
        setVisible(false);
    }

    private void step(double seconds) {
        double share = walk.map(pace -> seconds / pace.durationS()).orElse(1.0);
        if (share >= 1) {
            stop();
            return;
        }
        walk.map(pace -> pace.at(share)).ifPresent(place -> {
            setTranslateX(viewport.getValue().xPx(place.at()));
            setTranslateY(viewport.getValue().yPx(place.at()));
            setRotate(place.headingDeg());
            setVisible(true);
        });
    }
}

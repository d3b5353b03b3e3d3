package loamline.desk.map;

import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import loamline.geometry.Point;
import loamline.place.LonLat;
import loamline.place.Projection;
import loamline.units.UnitSystem;

/** The map's lower edge between scale bar and north arrow: what the tool wants next, and where the pointer is. */
final class Readout extends HBox {
    private final Label hint = new Label();
    private final Label place = new Label();
    /** Longer hints take a second line. */
    private static final double HINT_PX = 640;

    private final Label earth = new Label();
    private Optional<LonLat> origin = Optional.empty();
    private Optional<CompletableFuture<Projection>> projection = Optional.empty();

    Readout() {
        getStyleClass().add("readout");
        setMouseTransparent(true);
        setAlignment(Pos.BOTTOM_LEFT);
        hint.getStyleClass().add("map-hint");
        hint.setMinWidth(0);
        hint.setWrapText(true);
        hint.setMaxWidth(HINT_PX);
        place.getStyleClass().add("map-place");
        earth.getStyleClass().addAll("map-place", "soft");
        earth.setManaged(false);
        VBox where = new VBox(place, earth);
        where.getStyleClass().add("map-where");
        where.setAlignment(Pos.BOTTOM_RIGHT);
        where.setMinWidth(Region.USE_PREF_SIZE);
        where.visibleProperty().bind(place.textProperty().isNotEmpty());
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        getChildren().addAll(hint, gap, where);
        hint("");
    }

    void hint(String words) {
        hint.setText(words);
        hint.setVisible(!words.isBlank());
    }

    /** The yard's place on the earth. */
    void origin(Optional<LonLat> changed) {
        if (!changed.equals(origin)) {
            origin = changed;
            earth.setText("");
            projection = Optional.empty();
        }
    }

    /** Where the pointer is; the projection is made in the background, which takes a moment the first time. */
    void pointer(Optional<Point> at, UnitSystem units) {
        if (at.isPresent() && projection.isEmpty()) {
            projection = origin.map(o -> CompletableFuture.supplyAsync(() -> new Projection(o)));
        }
        place.setText(at.map(p -> ReadoutWords.place(p, units)).orElse(""));
        earth.setText(at.flatMap(p -> ready().map(to -> ReadoutWords.earth(to.toEarth(p))))
                .orElse(""));
        earth.setManaged(!earth.getText().isEmpty());
    }

    private Optional<Projection> ready() {
        return projection
                .filter(made -> made.isDone() && !made.isCompletedExceptionally())
                .map(CompletableFuture::join);
    }
}

package loamline.desk.map;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Slider;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import loamline.desk.session.Results;
import loamline.desk.session.Session;
import loamline.scene.Palette;
import loamline.yard.Backdrop;
import loamline.yard.Yard;
import org.jspecify.annotations.Nullable;

/** The list of layers in the map's corner: a check box each with its sign, and how opaque the image is. */
final class LayersView extends VBox {
    private static final double STEP = 0.05;

    private final Session session;
    private final MapLayers layers;
    private final ScreenText text = new ScreenText();
    private final ToggleButton head = new ToggleButton("Layers");
    private final VBox rows = new VBox();
    private final Slider opacity = new Slider(0, 1, 1);
    private final Map<MapLayer, CheckBox> boxes = new EnumMap<>(MapLayer.class);
    private final Map<MapLayer, LayerSign> signs = new EnumMap<>(MapLayer.class);
    private Set<MapLayer> drawnFor = Set.of();
    private @Nullable Palette drawnIn;
    private boolean following;

    LayersView(Session session, MapLayers layers) {
        this.session = session;
        this.layers = layers;
        getStyleClass().addAll("map-card", "layers");
        head.getStyleClass().add("layers-head");
        head.setAccessibleText("Layers: show or hide the list");
        head.setMaxWidth(Double.MAX_VALUE);
        head.setSelected(true);
        head.selectedProperty().addListener((o, before, open) -> fold(!open));
        rows.getStyleClass().add("layers-rows");
        for (MapLayer layer : MapLayer.values()) {
            addRow(layer);
        }
        setUpOpacity();
        getChildren().addAll(head, rows);
        fold(false);
    }

    private void fold(boolean folded) {
        head.setText(folded ? "Layers ▸" : "Layers ▾");
        rows.setVisible(!folded);
        rows.setManaged(!folded);
    }

    private void addRow(MapLayer layer) {
        CheckBox box = new CheckBox(layer.title());
        box.setSelected(layers.shown().get().contains(layer));
        box.selectedProperty().addListener((o, before, seen) -> layers.show(layer, seen));
        layers.shown().addListener((o, before, shown) -> box.setSelected(shown.contains(layer)));
        LayerSign sign = new LayerSign(layer);
        boxes.put(layer, box);
        signs.put(layer, sign);
        HBox row = new HBox(8, sign, box);
        row.getStyleClass().add("layers-row");
        rows.getChildren().add(row);
        if (layer == MapLayer.IMAGE) {
            rows.getChildren().add(opacity);
        }
    }

    private void setUpOpacity() {
        opacity.setAccessibleText("How opaque the image is");
        opacity.setBlockIncrement(STEP);
        opacity.setMajorTickUnit(STEP);
        opacity.setMinorTickCount(0);
        opacity.setSnapToTicks(true);
        opacity.valueProperty().addListener((o, before, now) -> {
            if (!following) {
                turn(now.doubleValue());
            }
        });
        opacity.valueChangingProperty().addListener((o, before, changing) -> {
            if (!changing) {
                turn(opacity.getValue());
            }
        });
    }

    /** Shows another opacity while the slider moves, and makes it an edit when it rests. */
    private void turn(double value) {
        Yard yard = session.history().get().now();
        Optional<Backdrop> turned = yard.backdrop().map(b -> opaque(b, Math.rint(value / STEP) * STEP));
        if (opacity.isValueChanging()) {
            session.preview(yard.withBackdrop(turned));
        } else if (!turned.equals(yard.backdrop())) {
            session.edit("change how opaque the image is", yard.withBackdrop(turned));
        }
    }

    private static Backdrop opaque(Backdrop b, double opacity) {
        return new Backdrop(
                b.file(), b.widthPx(), b.heightPx(), b.placement(), b.scaleErrorRel(), opacity, b.extras());
    }

    /** Follows what there is to show. */
    void follow(Results results, Palette palette) {
        Set<MapLayer> available = layers.available().get();
        boxes.forEach((layer, box) -> {
            box.setDisable(!available.contains(layer));
            signs.get(layer).setOpacity(available.contains(layer) ? 1 : 0.35);
        });
        Optional<Backdrop> image = results.yard().backdrop();
        double opaque = image.map(Backdrop::opacity).orElse(1.0);
        following = true;
        opacity.setValue(opaque);
        following = false;
        opacity.setVisible(image.isPresent());
        opacity.setManaged(image.isPresent());
        boxes.get(MapLayer.IMAGE)
                .setText(MapLayer.IMAGE.title() + (image.isPresent() ? " " + Math.round(100 * opaque) + " %" : ""));
        if (palette != drawnIn || !available.equals(drawnFor)) {
            drawnIn = palette;
            drawnFor = available;
            signs.values().forEach(sign -> sign.draw(results, palette, text));
        }
    }
}

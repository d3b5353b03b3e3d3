package loamline.desk.map;

import java.util.ArrayList;
import java.util.List;
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

/** The list of layers in the map's corner: a check box each with its sign, and how opaque the image is. */
final class LayersView extends VBox {
    private static final double STEP = 0.05;
    private static final double FAINT = 0.35;

    private final Session session;
    private final MapLayers layers;
    private final ScreenText text = new ScreenText();
    private final ToggleButton head = new ToggleButton("Layers");
    private final VBox rows = new VBox();
    private final AmountsLegend legend = new AmountsLegend();
    private final Slider opacity = new Slider(0, 1, 1);
    private final List<Row> list = new ArrayList<>();
    private Set<MapLayer> drawnFor = Set.of();
    private Optional<Palette> drawnIn = Optional.empty();
    private boolean following;

    private record Row(MapLayer layer, CheckBox box, LayerSign sign) {
        void offer(boolean available) {
            box.setDisable(!available);
            sign.setOpacity(available ? 1 : FAINT);
        }
    }

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
        list.add(new Row(layer, box, sign));
        HBox row = new HBox(8, sign, box);
        row.getStyleClass().add("layers-row");
        rows.getChildren().add(row);
        if (layer == MapLayer.IMAGE) {
            rows.getChildren().add(opacity);
        } else if (layer == MapLayer.AMOUNTS) {
            rows.getChildren().add(legend);
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
        Optional<Backdrop> turned = yard.backdrop().map(b -> b.withOpacity(Math.rint(value / STEP) * STEP));
        if (opacity.isValueChanging()) {
            session.preview(yard.withBackdrop(turned));
        } else if (!turned.equals(yard.backdrop())) {
            session.edit("change how opaque the image is", yard.withBackdrop(turned));
        }
    }

    /** Follows what there is to show. */
    void follow(Results results, Found found, Palette palette) {
        Set<MapLayer> available = layers.available().get();
        list.forEach(row -> row.offer(available.contains(row.layer)));
        followImage(results);
        legend.show(found, palette, session.units().get(), text);
        Optional<Palette> wanted = Optional.of(palette);
        if (!wanted.equals(drawnIn) || !available.equals(drawnFor)) {
            drawnIn = wanted;
            drawnFor = available;
            list.forEach(row -> row.sign.draw(results, palette, text));
        }
    }

    private void followImage(Results results) {
        Optional<Backdrop> image = results.yard().backdrop();
        double opaque = image.map(Backdrop::opacity).orElse(1.0);
        following = true;
        opacity.setValue(opaque);
        following = false;
        opacity.setVisible(image.isPresent());
        opacity.setManaged(image.isPresent());
        String share = image.isPresent() ? " " + Math.round(100 * opaque) + " %" : "";
        list.stream()
                .filter(row -> row.layer == MapLayer.IMAGE)
                .forEach(row -> row.box.setText(row.layer.title() + share));
    }
}

package loamline.desk.zones;

import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.input.ClipboardContent;
import javafx.scene.input.DragEvent;
import javafx.scene.input.TransferMode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import loamline.units.Formatting;
import loamline.units.Measure;
import loamline.units.UnitSystem;
import loamline.yard.Zone;

/** A bag with its zones: a zone dragged onto it goes into it, and each zone has a choice of bags beside it. */
final class BagView extends VBox {
    private static final double CHOICE_PX = 58;

    private final String bag;
    private final List<String> choices;
    private final BiConsumer<String, String> move;
    private final Consumer<String> select;
    private final UnitSystem units;

    BagView(
            ZoneBags.Bag bag,
            List<String> choices,
            BiConsumer<String, String> move,
            Consumer<String> select,
            UnitSystem units) {
        super(2);
        this.bag = bag.name();
        this.choices = choices;
        this.move = move;
        this.select = select;
        this.units = units;
        getStyleClass().add("bag");
        Label title = new Label(this.bag.isEmpty() ? "In no bag" : "Bag " + this.bag);
        title.getStyleClass().add("bag-title");
        title.setMinWidth(USE_PREF_SIZE);
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        HBox head = new HBox(8, title, gap, area(bag.areaM2()));
        head.setAlignment(javafx.geometry.Pos.BASELINE_LEFT);
        getChildren().add(head);
        bag.zones().forEach(zone -> getChildren().add(row(zone)));
        if (!this.bag.isEmpty()) {
            setOnDragOver(this::over);
            setOnDragDropped(this::dropped);
        }
    }

    private HBox row(Zone zone) {
        Hyperlink name = new Hyperlink(zone.name());
        name.getStyleClass().add("zone-name");
        name.setWrapText(true);
        name.setMinSize(0, USE_PREF_SIZE);
        name.setMaxWidth(Double.MAX_VALUE);
        name.setAccessibleText("Zone " + zone.name());
        name.setOnAction(e -> select.accept(zone.name()));
        VBox words = new VBox(name, area(zone.netAreaM2()));
        words.setMinWidth(0);
        HBox.setHgrow(words, Priority.ALWAYS);
        ComboBox<String> choice = new ComboBox<>();
        choice.getItems().setAll(choices);
        if (!bag.isEmpty()) {
            choice.setValue(bag);
        }
        choice.setMinWidth(CHOICE_PX);
        choice.setPrefWidth(CHOICE_PX);
        choice.setAccessibleText("Bag of zone " + zone.name());
        choice.setOnAction(e -> move.accept(zone.name(), choice.getValue()));
        HBox row = new HBox(6, words, choice);
        row.setAlignment(javafx.geometry.Pos.CENTER_LEFT);
        row.getStyleClass().add("zone-row");
        row.setOnDragDetected(e -> {
            ClipboardContent content = new ClipboardContent();
            content.putString(zone.name());
            row.startDragAndDrop(TransferMode.MOVE).setContent(content);
            e.consume();
        });
        return row;
    }

    private Label area(double areaM2) {
        Label label = new Label(Formatting.format(Measure.AREA, areaM2, units).text());
        label.getStyleClass().add("soft");
        label.setMinWidth(USE_PREF_SIZE);
        return label;
    }

    private void over(DragEvent e) {
        if (e.getDragboard().hasString()) {
            e.acceptTransferModes(TransferMode.MOVE);
        }
        e.consume();
    }

    private void dropped(DragEvent e) {
        move.accept(e.getDragboard().getString(), bag);
        e.setDropCompleted(true);
        e.consume();
    }
}

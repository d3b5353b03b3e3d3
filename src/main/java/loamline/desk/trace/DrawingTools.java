package loamline.desk.trace;

import java.util.Arrays;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;
import loamline.desk.tool.Tool;
import loamline.desk.tool.ToolChoice;
import loamline.desk.tool.ToolChoice.Variant;
import loamline.desk.tool.ToolHost;

/** Every drawing tool as a button with its key; the one in hand is pressed, and says how it may be drawn. */
public final class DrawingTools extends VBox {
    private static final int COLUMNS = 2;

    /** Letters of a label that fit into half of the sheet. */
    private static final int LONGEST_IN_HALF = 13;

    /** Letters that would fit into the padding of a variant's button. */
    private static final int VARIANT_ROOM = 3;

    private static final int VARIANT_SUM = Arrays.stream(Variant.values())
            .mapToInt(variant -> variant.label().length() + VARIANT_ROOM)
            .sum();

    private final ToolHost host;
    private final GridPane variants = new GridPane();

    public DrawingTools(ToolHost host) {
        super(8);
        this.host = host;
        getStyleClass().add("drawing-tools");
        GridPane tools = grid();
        int place = 0;
        for (ToolChoice choice : ToolChoice.values()) {
            int span = choice.label().length() > LONGEST_IN_HALF ? COLUMNS : 1;
            place += place % COLUMNS + span > COLUMNS ? 1 : 0;
            tools.add(button(choice), place % COLUMNS, place / COLUMNS, span, 1);
            place += span;
        }
        variants.getStyleClass().add("drawing-variants");
        variants.setHgap(4);
        for (Variant variant : Variant.values()) {
            variants.getColumnConstraints().add(share(variant.label().length() + VARIANT_ROOM, VARIANT_SUM));
        }
        getChildren().addAll(variants, tools);
        host.current().addListener((o, before, now) -> showVariants(now));
        showVariants(host.current().get());
    }

    private static GridPane grid() {
        GridPane grid = new GridPane();
        grid.setHgap(4);
        grid.setVgap(4);
        grid.getColumnConstraints().addAll(share(1, COLUMNS), share(1, COLUMNS));
        return grid;
    }

    private static ColumnConstraints share(int part, int whole) {
        ColumnConstraints share = new ColumnConstraints();
        share.setPercentWidth(100.0 * part / whole);
        return share;
    }

    private ToggleButton button(ToolChoice choice) {
        ToggleButton button = toggle(choice.label(), choice.hint() + " (" + choice.key() + ")");
        button.setOnAction(e -> {
            boolean inHand = ToolChoice.of(host.current().get()).equals(Optional.of(choice));
            if (inHand) {
                host.putDown();
            } else {
                host.take(choice.tool());
            }
            button.setSelected(!inHand);
        });
        host.current()
                .addListener((o, before, now) ->
                        button.setSelected(ToolChoice.of(now).equals(Optional.of(choice))));
        return button;
    }

    private void showVariants(Tool tool) {
        Optional<ToolChoice> choice = ToolChoice.of(tool);
        variants.getChildren().clear();
        choice.filter(chosen -> !chosen.variants().isEmpty())
                .ifPresent(chosen -> variants.addRow(
                        0,
                        Arrays.stream(Variant.values())
                                .map(variant -> button(chosen, variant, tool))
                                .toArray(Node[]::new)));
        variants.setManaged(!variants.getChildren().isEmpty());
    }

    private ToggleButton button(ToolChoice choice, Variant variant, Tool tool) {
        ToggleButton button = toggle(variant.label(), "Draw it as: " + variant.label() + " (" + variant.key() + ")");
        button.setSelected(Variant.of(tool).equals(Optional.of(variant)));
        button.setOnAction(e -> host.take(choice.tool(variant)));
        return button;
    }

    private static ToggleButton toggle(String label, String help) {
        ToggleButton button = new ToggleButton(label);
        button.setMaxWidth(Double.MAX_VALUE);
        button.setTooltip(new Tooltip(help));
        button.setAccessibleHelp(help);
        return button;
    }
}

package loamline.desk.sun;

import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.VBox;
import loamline.desk.theme.Words;

/** The button that cuts zones by sun, and under it what came of that. */
public final class SunZonesView extends VBox {
    private static final String HELP = "Cuts the zones where the class of light changes, on the days of the Sun step";

    public SunZonesView(SunZones zones) {
        super(4);
        Button cut = new Button("Zones by sun");
        cut.setTooltip(new Tooltip(HELP));
        cut.setAccessibleHelp(HELP);
        cut.setOnAction(e -> zones.cut());
        Label outcome = Words.wrapped("", "soft");
        outcome.textProperty().bind(zones.cutting().outcome());
        getChildren().addAll(cut, outcome);
    }
}

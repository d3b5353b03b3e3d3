package loamline.desk.zones;

import java.util.Locale;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import loamline.desk.theme.Words;
import loamline.yard.Divisions;

/** Buttons that cut all zones by what is on the map, and under them what came of that. */
public final class ZoneCuttingView extends VBox {
    /** @param bySun cuts them by the hours of sun */
    public ZoneCuttingView(ZoneCutting cutting, Runnable bySun) {
        super(4);
        Label outcome = Words.wrapped("", "soft");
        outcome.textProperty().bind(cutting.outcome());
        outcome.managedProperty().bind(outcome.textProperty().isNotEmpty());
        getChildren()
                .addAll(
                        Words.wrapped("Cut all zones by", "soft"),
                        new FlowPane(
                                6,
                                6,
                                button(
                                        "Front and back",
                                        "Cuts through the middle of the house, along the wall that looks to the street",
                                        () -> cutting.cut(new ZoneCutting.Proposal(
                                                "into front and back",
                                                "Front and back need a building, and paving that meets the property"
                                                        + " line or a gate to tell where the street is.",
                                                "the middle of the house",
                                                Divisions::byHouse))),
                                button(
                                        "Valve",
                                        "Gives each spot to the valve of the head that reaches it",
                                        () -> cutting.cut(new ZoneCutting.Proposal(
                                                "by valve",
                                                "That needs heads with a radius, on two valves at least.",
                                                "the heads that reach them",
                                                Divisions::byValve))),
                                button(
                                        "Trouble",
                                        "Makes zones of the trouble spots",
                                        () -> cutting.cut(new ZoneCutting.Proposal(
                                                "by trouble",
                                                "There is no trouble spot on the map.",
                                                "the trouble spots",
                                                Divisions::byTrouble))),
                                button(
                                        "Sun",
                                        "Cuts where the class of light changes, on the days of the Sun step",
                                        bySun)),
                        outcome);
    }

    private static Button button(String words, String help, Runnable action) {
        Button button = new Button(words);
        button.setTooltip(new Tooltip(help));
        button.setAccessibleText("Cut all zones by " + words.toLowerCase(Locale.ROOT));
        button.setAccessibleHelp(help);
        button.setOnAction(e -> action.run());
        return button;
    }
}

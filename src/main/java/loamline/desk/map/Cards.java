package loamline.desk.map;

import javafx.event.Event;
import javafx.scene.Node;
import javafx.scene.input.ContextMenuEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;

/** What lies on the map and stays where it is: the readout below, the list of layers and the missing image above. */
final class Cards {
    /** Between a card and the map's edge. */
    static final double EDGE_PX = 12;

    private Cards() {}

    /** Keeps the mouse from the tool. */
    static void keepMouse(Node card) {
        card.addEventHandler(MouseEvent.ANY, Event::consume);
        card.addEventHandler(ScrollEvent.ANY, Event::consume);
        card.addEventHandler(ContextMenuEvent.ANY, Event::consume);
    }

    /** Puts them in their places on a map of a size. */
    static void place(Readout readout, LayersView layers, MissingImage missing, double width, double height) {
        double readoutWidth = Math.max(0, width - Furniture.BAR_PX - Furniture.NORTH_PX);
        double readoutHeight = readout.prefHeight(readoutWidth);
        readout.resizeRelocate(Furniture.BAR_PX, height - readoutHeight, readoutWidth, readoutHeight);
        layers.autosize();
        layers.relocate(width - layers.getWidth() - EDGE_PX, EDGE_PX);
        double room = Math.max(0, width - layers.getWidth() - 3 * EDGE_PX);
        double missingWidth = Math.min(room, missing.prefWidth(-1));
        missing.resizeRelocate(EDGE_PX, EDGE_PX, missingWidth, missing.prefHeight(missingWidth));
    }
}

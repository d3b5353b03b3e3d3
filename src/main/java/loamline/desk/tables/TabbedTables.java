package loamline.desk.tables;

import java.util.List;
import javafx.scene.control.Tab;
import javafx.scene.control.TabPane;

/** Tables of several sorts, one of them in front. */
public final class TabbedTables extends TabPane {
    private static final double LEAST_PX = 240;

    public TabbedTables(List<TablesView> tables) {
        getStyleClass().add("tabbed-tables");
        setTabClosingPolicy(TabClosingPolicy.UNAVAILABLE);
        setMinHeight(LEAST_PX);
        tables.forEach(table -> getTabs().add(new Tab(table.title(), table)));
    }
}

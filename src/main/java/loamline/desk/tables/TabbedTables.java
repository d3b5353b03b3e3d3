package loamline.desk.tables;

import java.util.List;
import java.util.stream.Collectors;
import javafx.scene.control.Tab;
import javafx.scene.control.TabPane;

/** Tables of several sorts, one of them in front. */
public final class TabbedTables extends TabPane {
    private static final double LEAST_PX = 240;

    public TabbedTables(List<TablesView> tables) {
        getStyleClass().add("tabbed-tables");
        setTabClosingPolicy(TabClosingPolicy.UNAVAILABLE);
        setMinHeight(LEAST_PX);
        setAccessibleText(tables.stream().map(TablesView::title).collect(Collectors.joining(", ")));
        tables.forEach(table -> getTabs().add(new Tab(table.title(), table)));
    }
}

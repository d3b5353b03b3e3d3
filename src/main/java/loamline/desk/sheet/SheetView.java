package loamline.desk.sheet;

import java.util.ArrayList;
import java.util.List;
import javafx.beans.InvalidationListener;
import javafx.beans.property.IntegerProperty;
import javafx.beans.property.SimpleIntegerProperty;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;
import loamline.desk.session.Session;

/** The sheet: a line a step, of which the open one unfolds its tools. */
public final class SheetView extends ScrollPane {
    private final Session session;
    private final List<StepView> views = new ArrayList<>();
    private final IntegerProperty open = new SimpleIntegerProperty(-1);

    /** @param steps in the order in which they are shown */
    public SheetView(Session session, List<Step> steps) {
        this.session = session;
        getStyleClass().add("sheet");
        setFitToWidth(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        for (Step step : steps) {
            int place = views.size();
            views.add(new StepView(step, place + 1, () -> open.set(place)));
        }
        VBox lines = new VBox();
        lines.getChildren().setAll(views);
        lines.getStyleClass().add("steps");
        setContent(lines);
        open.addListener((o, before, now) -> unfold());
        InvalidationListener changed = o -> fill();
        session.results().addListener(changed);
        session.units().addListener(changed);
        fill();
    }

    /** Position of the open step, from 0; -1 while none is. */
    public IntegerProperty open() {
        return open;
    }

    /** Opens a step, if there is one at that position. */
    public void open(int place) {
        if (place >= 0 && place < views.size()) {
            open.set(place);
            views.get(place).requestFocus();
        }
    }

    private void unfold() {
        for (int i = 0; i < views.size(); i++) {
            views.get(i).setOpen(i == open.get());
        }
        fill();
    }

    /** Tells anew what every step has come to. */
    public void fill() {
        session.results()
                .get()
                .ifPresent(results ->
                        views.forEach(view -> view.show(results, session.units().get())));
    }
}

package loamline.desk.tool;

import java.util.List;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import loamline.desk.session.Results;
import loamline.desk.session.Session;
import loamline.yard.Yard;

/** Holds the tool in hand, gives it its inputs and does what it wants done. */
public final class ToolHost {
    private final Session session;
    private final Tool home;
    private final ReadOnlyObjectWrapper<Tool> current;
    private final ReadOnlyStringWrapper said = new ReadOnlyStringWrapper("");

    /** @param home the tool that is in hand when no other is */
    public ToolHost(Session session, Tool home) {
        this.session = session;
        this.home = home;
        current = new ReadOnlyObjectWrapper<>(home);
    }

    /** Takes a tool in hand; what the one before had under way is dropped. */
    public void take(Tool tool) {
        session.dropPreview();
        said.set("");
        current.set(tool);
    }

    /** Gives an input to the tool; false if it meant nothing to it. */
    public boolean send(Input input, double metresPerPx) {
        Tool.Step step = current.get().on(input, around(metresPerPx));
        current.set(step.next());
        step.effects().forEach(this::carryOut);
        return step.used();
    }

    /** What the tool wants drawn over the map. */
    public List<Guide> guides(double metresPerPx) {
        return current.get().guides(around(metresPerPx));
    }

    private Surroundings around(double metresPerPx) {
        Yard yard = session.history().get().now();
        return new Surroundings(
                yard,
                session.selection().get(),
                session.units().get(),
                metresPerPx,
                session.results()
                        .get()
                        .filter(results -> results.yard().equals(yard))
                        .flatMap(Results::plan));
    }

    private void carryOut(Effect effect) {
        if (effect instanceof Effect.Edit edit) {
            session.edit(edit.label(), edit.after());
        } else if (effect instanceof Effect.Preview preview) {
            session.preview(preview.moving());
        } else if (effect instanceof Effect.DropPreview) {
            session.dropPreview();
        } else if (effect instanceof Effect.Select select) {
            session.selection().set(select.selection());
        } else if (effect instanceof Effect.Say say) {
            said.set(say.words());
        } else if (effect instanceof Effect.Done) {
            current.set(home);
        }
    }

    public ReadOnlyObjectProperty<Tool> current() {
        return current.getReadOnlyProperty();
    }

    /** What the tool said last; blank if nothing. */
    public ReadOnlyStringProperty said() {
        return said.getReadOnlyProperty();
    }
}

package loamline.desk.tool;

import java.util.List;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import loamline.desk.session.Results;
import loamline.desk.session.Session;
import loamline.yard.Feature;
import loamline.yard.Yard;

/** Holds the tool in hand, gives it its inputs and does what it wants done. */
public final class ToolHost {
    private final Session session;
    private Tool home;
    private final ReadOnlyObjectWrapper<Tool> current;
    private final ReadOnlyObjectWrapper<List<Feature>> copied = new ReadOnlyObjectWrapper<>(List.of());
    private final ReadOnlyStringWrapper said = new ReadOnlyStringWrapper("");

    /** Ground to a logical pixel when the map last said; what comes from elsewhere is taken at the same. */
    private double lastMetresPerPx = 1;

    /** @param home the tool that is in hand when no other is */
    public ToolHost(Session session, Tool home) {
        this.session = session;
        this.home = home;
        current = new ReadOnlyObjectWrapper<>(home);
        session.results().addListener((o, before, now) -> {
            if (now.isEmpty()) {
                current.set(this.home); // another yard comes: what was being drawn was the old one's
            }
        });
    }

    /** Takes a tool in hand; what the one before had under way is dropped. */
    public void take(Tool tool) {
        session.dropPreview();
        said.set("");
        current.set(tool);
    }

    /** Makes a tool the one that is in hand when no other is, and takes it. */
    public void settle(Tool tool) {
        home = tool;
        take(tool);
    }

    /** Puts the tool down, so that the one at home is in hand again. */
    public void putDown() {
        take(home);
    }

    /** Gives an input to the tool; false if it meant nothing to it. */
    public boolean send(Input input, double metresPerPx) {
        lastMetresPerPx = metresPerPx;
        Tool.Step step = current.get().on(input, around(metresPerPx));
        current.set(step.next());
        if (step.used() && !(input instanceof Input.Move)) {
            said.set("");
        }
        step.effects().forEach(this::carryOut);
        return step.used();
    }

    /** Gives the tool an input that comes from the sheet or from the background. */
    public boolean send(Input.OfTool input) {
        return send(input, lastMetresPerPx);
    }

    /** What the tool wants drawn over the map. */
    public List<Guide> guides(double metresPerPx) {
        return current.get().guides(around(metresPerPx));
    }

    /** Does what a command does; what the tool in hand has under way is dropped. */
    public void run(Command command) {
        take(home);
        command.on(context()).forEach(this::carryOut);
    }

    /** What commands depend on, as it is now. */
    public Command.Context context() {
        return new Command.Context(
                session.history().get().now(), session.selection().get(), copied.get());
    }

    /** What was copied last, in this window. */
    public ReadOnlyObjectProperty<List<Feature>> copied() {
        return copied.getReadOnlyProperty();
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
        } else if (effect instanceof Effect.Copy copy) {
            copied.set(copy.copied());
        } else if (effect instanceof Effect.Take take) {
            take(take.tool());
        } else if (effect instanceof Effect.Later later) {
            session.work().latest("tool", later.words(), later.task(), found -> send(found, lastMetresPerPx));
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

package loamline.desk.tool;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import loamline.desk.session.Selection;
import loamline.geometry.Point;
import loamline.units.UnitSystem;
import loamline.yard.Feature;
import loamline.yard.History;
import loamline.yard.Yard;

/** A session without a screen: what a tool and its effects lead to. A pixel is a centimetre of ground. */
final class Desk {
    static final double METRES_PER_PX = 0.01;

    private final Tool home = PointerTool.with(SnapHook.NONE);
    Tool tool = home;
    History history;
    Yard shown;
    Selection selection = Selection.NOTHING;
    List<Feature> copied = List.of();
    String said = "";
    boolean used;

    Desk(Yard yard) {
        history = History.of(yard);
        shown = yard;
    }

    Yard yard() {
        return history.now();
    }

    String label() {
        return history.undoLabel().orElse("");
    }

    Desk select(String... keys) {
        selection = Selection.ofFeatures(List.of(keys));
        return this;
    }

    Desk send(Input... inputs) {
        for (Input input : inputs) {
            Tool.Step step = tool.on(input, around());
            tool = step.next();
            used = step.used();
            step.effects().forEach(this::carryOut);
        }
        return this;
    }

    Desk run(Command command) {
        tool = home;
        shown = yard();
        command.on(context()).forEach(this::carryOut);
        return this;
    }

    Command.Context context() {
        return new Command.Context(yard(), selection, copied);
    }

    Surroundings around() {
        return new Surroundings(yard(), selection, UnitSystem.US, METRES_PER_PX);
    }

    private void carryOut(Effect effect) {
        if (effect instanceof Effect.Edit edit) {
            history = history.then(edit.label(), edit.after());
            settle();
        } else if (effect instanceof Effect.Preview preview) {
            shown = preview.moving();
        } else if (effect instanceof Effect.DropPreview) {
            shown = yard();
        } else if (effect instanceof Effect.Select select) {
            selection = select.selection();
        } else if (effect instanceof Effect.Say say) {
            said = say.words();
        } else if (effect instanceof Effect.Copy copy) {
            copied = copy.copied();
        } else if (effect instanceof Effect.Take take) {
            tool = take.tool();
        } else {
            tool = home;
        }
    }

    void settle() {
        shown = yard();
        Set<String> keys = yard().features().stream().map(Feature::key).collect(Collectors.toSet());
        selection = selection.within(keys);
    }

    static Input press(double x, double y) {
        return new Input.Press(new Point(x, y), 1, Input.Held.NONE);
    }

    static Input press(double x, double y, Input.Held held) {
        return new Input.Press(new Point(x, y), 1, held);
    }

    static Input drag(double x, double y) {
        return new Input.Drag(new Point(x, y), Input.Held.NONE);
    }

    static Input release(double x, double y) {
        return new Input.Release(new Point(x, y), Input.Held.NONE);
    }

    static Input key(Input.KeyName name) {
        return new Input.Key(name, Input.Held.NONE);
    }

    Desk click(double x, double y) {
        return send(press(x, y), release(x, y));
    }

    Desk pull(double fromX, double fromY, double toX, double toY) {
        double middleX = (fromX + toX) / 2;
        return send(press(fromX, fromY), drag(middleX, fromY), drag(toX, toY), release(toX, toY));
    }
}

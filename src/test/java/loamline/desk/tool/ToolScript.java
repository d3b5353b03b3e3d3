package loamline.desk.tool;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import loamline.desk.session.Selection;
import loamline.desk.tool.Input.Held;
import loamline.desk.tool.Input.KeyName;
import loamline.geometry.Point;
import loamline.geometry.Shape;
import loamline.units.UnitSystem;
import loamline.yard.Feature;
import loamline.yard.Yard;

/**
 * A tool in use, without a screen: a centimetre of ground to a pixel, so that snaps reach 10 cm.
 *
 * <p>Steps are divided by {@code ;}. {@code move 1 2}, {@code click 1 2}, {@code double 1 2}, {@code drag 1 2 3 4} (down
 * at the first place, up at the second), {@code type 12ft}, and {@code enter}, {@code escape}, {@code backspace},
 * {@code tab}. {@code +shift} or {@code +alt} after a step is held with it.
 */
final class ToolScript {
    static final double METRES_PER_PX = 0.01;

    Tool tool;
    Yard yard;
    UnitSystem units = UnitSystem.METRIC;
    Selection selection = Selection.NOTHING;
    final List<String> said = new ArrayList<>();
    final List<String> edits = new ArrayList<>();
    boolean isDone;
    boolean wasUsed;
    int inputs;

    ToolScript(Tool tool, Yard yard) {
        this.tool = tool;
        this.yard = yard;
    }

    Surroundings around() {
        return new Surroundings(yard, selection, units, METRES_PER_PX);
    }

    ToolScript run(String steps) {
        Arrays.stream(steps.split(";"))
                .map(String::strip)
                .filter(step -> !step.isEmpty())
                .forEach(this::step);
        return this;
    }

    private void step(String step) {
        Held held = new Held(step.contains("+shift"), false, step.contains("+alt"));
        String[] words = step.replaceAll("\\+(shift|alt)", "").strip().split(" ", 2);
        String rest = words.length > 1 ? words[1].strip() : "";
        switch (words[0]) {
            case "move" -> send(new Input.Move(at(rest, 0), held));
            case "click" -> click(at(rest, 0), 1, held);
            case "double" -> {
                click(at(rest, 0), 1, held);
                click(at(rest, 0), 2, held);
            }
            case "drag" -> {
                send(new Input.Press(at(rest, 0), 1, held));
                send(new Input.Drag(at(rest, 2), held));
                send(new Input.Release(at(rest, 2), held));
            }
            case "type" -> rest.chars().forEach(c -> send(new Input.Typed((char) c)));
            default -> send(new Input.Key(KeyName.valueOf(words[0].toUpperCase(Locale.ROOT)), held));
        }
    }

    private void click(Point at, int clicks, Held held) {
        send(new Input.Press(at, clicks, held));
        send(new Input.Release(at, held));
    }

    private static Point at(String numbers, int from) {
        String[] parts = numbers.split(" +");
        return new Point(Double.parseDouble(parts[from]), Double.parseDouble(parts[from + 1]));
    }

    private void send(Input input) {
        inputs++;
        Tool.Step step = tool.on(input, around());
        tool = step.next();
        wasUsed = step.used();
        step.effects().forEach(this::note);
        tool.guides(around());
    }

    private void note(Effect effect) {
        if (effect instanceof Effect.Edit edit) {
            edits.add(edit.label());
            yard = edit.after();
        } else if (effect instanceof Effect.Select select) {
            selection = select.selection();
        } else if (effect instanceof Effect.Say say) {
            said.add(say.words());
        } else if (effect instanceof Effect.Done) {
            isDone = true;
        }
    }

    Feature last() {
        return yard.features().get(yard.features().size() - 1);
    }

    /** Everything drawn as its corners to a millimetre, as in {@code 0 0, 4 0, 4 3}; things divided by bars. */
    String drawn() {
        return yard.features().stream()
                .flatMap(feature -> feature.shape().stream())
                .map(ToolScript::corners)
                .collect(Collectors.joining(" / "));
    }

    private static String corners(Shape shape) {
        return shape.vertices().map(p -> number(p.x()) + " " + number(p.y())).collect(Collectors.joining(", "));
    }

    private static String number(double value) {
        double rounded = Math.rint(value * 1000) / 1000 + 0.0;
        return rounded == Math.rint(rounded) ? Long.toString((long) rounded) : Double.toString(rounded);
    }

    /** The words beside the drawing. */
    List<String> words() {
        return tool.guides(around()).stream()
                .filter(Guide.Words.class::isInstance)
                .map(guide -> ((Guide.Words) guide).text())
                .toList();
    }
}

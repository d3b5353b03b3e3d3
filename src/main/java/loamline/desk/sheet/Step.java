package loamline.desk.sheet;

import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.scene.Node;
import loamline.desk.session.Results;
import loamline.desk.tool.Hand;
import loamline.desk.tool.Tool;
import loamline.units.UnitSystem;

/**
 * A step of the visit.
 *
 * @param title its name, a word
 * @param line what it has come to, from what was computed last
 * @param start what to begin with, while there is nothing for its tools to work on
 * @param tools made when the step is opened first
 * @param middle what stands in the map's place while the step is open, made when it is seen first; empty for the map
 *     itself
 * @param tool what is in hand while nothing else is
 * @param under what stands under the map while the step is open, made when it is seen first
 */
public record Step(
        String title,
        BiFunction<Results, UnitSystem, Line> line,
        Function<Results, Optional<Start>> start,
        Once<Node> tools,
        Optional<Once<Node>> middle,
        Optional<Once<Node>> under,
        Supplier<Tool> tool) {

    /** A result in a line, and how far the step is. */
    public record Line(String result, State state) {}

    /** One sentence that says what belongs here, and the one button that starts it. */
    public record Start(String sentence, String button, Runnable action) {}

    /** A step on the map whose tools always have something to work on. */
    public static Step of(String title, BiFunction<Results, UnitSystem, Line> line, Supplier<Node> tools) {
        return new Step(
                title,
                line,
                results -> Optional.empty(),
                Once.of(tools),
                Optional.empty(),
                Optional.empty(),
                Hand::new);
    }

    /** The same step with something to begin with. */
    public Step startingWith(Function<Results, Optional<Start>> changed) {
        return new Step(title, line, changed, tools, middle, under, tool);
    }

    /** The same step with something in the map's place. */
    public Step inTheMiddle(Supplier<Node> node) {
        return new Step(title, line, start, tools, Optional.of(Once.of(node)), under, tool);
    }

    /** The same step with something under the map, such as a table. */
    public Step under(Supplier<Node> node) {
        return new Step(title, line, start, tools, middle, Optional.of(Once.of(node)), tool);
    }

    /** The same step with a tool that is in hand while no other is; the hand that moves the map, if none is named. */
    public Step inHand(Supplier<Tool> usual) {
        return new Step(title, line, start, tools, middle, under, usual);
    }
}

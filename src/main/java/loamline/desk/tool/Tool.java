package loamline.desk.tool;

import java.util.List;

/**
 * What the mouse and the keys do on the map, as a state machine: a value that answers an input with the tool it
 * becomes and what is to happen. A tool knows no screen; places are metres in the yard's plane.
 */
public interface Tool {
    /** What the tool becomes, and what is to happen, on an input. An input that means nothing to it changes nothing. */
    Step on(Input input, Surroundings around);

    /** What to draw over the map while the tool is at work; asked again after every input. */
    List<Guide> guides(Surroundings around);

    /** What to do next, in a line. */
    String hint();

    /** The shape of the mouse pointer over the map. */
    default Pointer cursor() {
        return Pointer.CROSS;
    }

    /** Shapes of the mouse pointer: one picks, one sets a place. */
    enum Pointer {
        ARROW,
        CROSS
    }

    /**
     * The answer to an input.
     *
     * @param next the tool from now on
     * @param effects what is to happen, in order
     * @param used whether the input meant something; one that did not is left to the map (pan, pick, zoom)
     */
    record Step(Tool next, List<Effect> effects, boolean used) {
        public Step {
            effects = List.copyOf(effects);
        }

        /** The input meant something. */
        public static Step to(Tool next, Effect... effects) {
            return new Step(next, List.of(effects), true);
        }

        /** The input meant nothing. */
        public static Step pass(Tool same) {
            return new Step(same, List.of(), false);
        }
    }
}

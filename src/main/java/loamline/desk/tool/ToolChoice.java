package loamline.desk.tool;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import loamline.yard.Kind;

/** Every drawing tool, in the order in which one traces a yard. */
public enum ToolChoice {
    BOUNDARY("Property line", 'L', Kind.BOUNDARY, "Outline the lot"),
    BUILDING("Building", 'H', Kind.BUILDING, "Outline a house, a garage, a shed"),
    PAVING("Paving", 'P', Kind.PAVING, "Outline a drive, a walk, a patio"),
    TURF("Turf", 'T', Kind.TURF, "Outline grass; what lies on it is taken off by itself"),
    BED("Bed", 'B', Kind.BED, "Outline a planted bed"),
    GRAVEL("Gravel", 'G', Kind.GRAVEL, "Outline gravel or mulch paths"),
    WATER("Water", 'W', Kind.WATER, "Outline a pond, a pool, a stream"),
    DECK("Deck", 'D', Kind.DECK, "Outline a deck"),
    FENCE("Fence", 'N', Kind.FENCE, "Draw a fence from post to post"),
    WALL("Wall", 'A', Kind.WALL, "Draw a free-standing wall"),
    TREE("Tree", 'E', Kind.TREE, "Click the trunk and drag out the crown"),
    HEAD("Head", 'S', Kind.HEAD, "Click a sprinkler head and drag to where its arc begins"),
    GATE("Gate", 'I', Kind.GATE, "Click where the walk starts and ends"),
    TROUBLE("Trouble spot", 'U', Kind.TROUBLE, "Outline grass that looks poor"),
    KEEPAWAY_SPOT("Keep-away spot", 'K', Kind.KEEPAWAY, "Click a spot without cores and drag out its radius"),
    KEEPAWAY_LINE("Keep-away line", 'Y', Kind.KEEPAWAY, "Draw a buried line to stay off"),
    KEEPAWAY_AREA("Keep-away area", 'Z', Kind.KEEPAWAY, "Outline ground without cores"),
    PANEL("Panel", 'Q', Kind.PANEL, "Draw the foot of a window or panel; it faces the left side");

    /** How an outline is drawn. */
    public enum Variant {
        OUTLINE("Outline", 'O'),
        RECTANGLE("Rectangle", 'R'),
        CIRCLE("Circle", 'C');

        private final String label;
        private final char key;

        Variant(String label, char key) {
            this.label = label;
            this.key = key;
        }

        public String label() {
            return label;
        }

        /** How a tool draws; empty if it has no choice. */
        public static Optional<Variant> of(Tool tool) {
            return tool instanceof Draw draw && draw.choice().variants().contains(draw.variant())
                    ? Optional.of(draw.variant())
                    : Optional.empty();
        }

        /** The key that changes to it while nothing is drawn, a capital letter. */
        public char key() {
            return key;
        }
    }

    private final String label;
    private final char key;
    private final Kind kind;
    private final String hint;

    ToolChoice(String label, char key, Kind kind, String hint) {
        this.label = label;
        this.key = key;
        this.kind = kind;
        this.hint = hint;
    }

    /** The tool for a typed character, in either case. */
    public static Optional<ToolChoice> of(char typed) {
        return Arrays.stream(values())
                .filter(choice -> choice.key == Character.toUpperCase(typed))
                .findFirst();
    }

    /** Which of these a tool is; empty if it draws nothing new. */
    public static Optional<ToolChoice> of(Tool tool) {
        return tool instanceof Draw draw ? Optional.of(draw.choice()) : Optional.empty();
    }

    public String label() {
        return label;
    }

    /** The key that takes it in hand, a capital letter. */
    public char key() {
        return key;
    }

    public Kind kind() {
        return kind;
    }

    /** What it is for, in a line. */
    public String hint() {
        return hint;
    }

    /** The ways to draw it; empty if there is no choice. */
    public List<Variant> variants() {
        return Forms.only(this).isPresent() ? List.of() : List.of(Variant.values());
    }

    /** The tool, with nothing drawn, corner by corner if there is a choice. */
    public Tool tool() {
        return tool(Variant.OUTLINE);
    }

    /**
     * The tool, with nothing drawn.
     *
     * @param variant of no effect where there is no choice
     */
    public Tool tool(Variant variant) {
        return Draw.with(this, variant);
    }

    /** What is added, as in "add bed". */
    String noun() {
        return label.toLowerCase(Locale.ROOT);
    }
}

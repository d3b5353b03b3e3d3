package loamline.desk.tool;

import java.util.Optional;
import java.util.function.BiFunction;
import loamline.desk.tool.ToolChoice.Variant;
import loamline.geometry.Outline;
import loamline.yard.Feature;
import loamline.yard.Kind;
import loamline.yard.Yard;

/** What each tool draws, and how. */
final class Forms {
    private Forms() {}

    static Form of(ToolChoice choice, Variant variant) {
        return only(choice).orElseGet(() -> ground(choice.kind(), variant));
    }

    /** The form of what is drawn in one way only; empty for ground, whose outline may be drawn in several. */
    static Optional<Form> only(ToolChoice choice) {
        return switch (choice) {
            case FENCE, WALL, KEEPAWAY_LINE, PANEL -> Optional.of(line(choice.kind()));
            case TREE -> Optional.of(new RoundForm(NewFeatures::tree, false));
            case KEEPAWAY_SPOT -> Optional.of(new RoundForm(NewFeatures::keepAway, false));
            case HEAD -> Optional.of(new HeadForm());
            case GATE -> Optional.of(new PointForm(NewFeatures::gate));
            case BOUNDARY, BUILDING, PAVING, TURF, BED, GRAVEL, WATER, DECK, TROUBLE, KEEPAWAY_AREA -> Optional.empty();
        };
    }

    private static Form line(Kind kind) {
        return new LineForm((line, yard) -> NewFeatures.line(kind, line, yard));
    }

    private static Form ground(Kind kind, Variant variant) {
        BiFunction<Outline, Yard, Feature> making = (outline, yard) -> NewFeatures.area(kind, outline, yard);
        return switch (variant) {
            case OUTLINE -> new OutlineForm(making);
            case RECTANGLE -> new RectangleForm(making);
            case CIRCLE ->
                new RoundForm(
                        (centre, radiusM, yard) ->
                                making.apply(Outline.of(Rings.circle(centre, radiusM.orElseThrow())), yard),
                        true);
        };
    }
}

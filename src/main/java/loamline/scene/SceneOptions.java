package loamline.scene;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import loamline.units.UnitSystem;

/**
 * How a map is drawn.
 *
 * @param view the ground shown and its scale
 * @param layers what is drawn
 * @param palette its colours
 * @param units how areas are told
 * @param text measures words
 * @param states how far cores have come, by id; a core that is not named is planned
 */
public record SceneOptions(
        View view,
        Set<Layer> layers,
        Palette palette,
        UnitSystem units,
        TextMeasure text,
        Map<String, CoreState> states) {
    public SceneOptions {
        EnumSet<Layer> copy = EnumSet.noneOf(Layer.class);
        copy.addAll(layers);
        layers = Collections.unmodifiableSet(copy);
        states = Map.copyOf(states);
    }

    /** All layers but the throws of the heads, in light colours and US units, every core planned. */
    public static SceneOptions usual(View view, TextMeasure text) {
        return new SceneOptions(
                view, EnumSet.complementOf(EnumSet.of(Layer.THROWS)), Palette.LIGHT, UnitSystem.US, text, Map.of());
    }

    public SceneOptions with(Set<Layer> changed) {
        return new SceneOptions(view, changed, palette, units, text, states);
    }

    public SceneOptions with(Palette changed) {
        return new SceneOptions(view, layers, changed, units, text, states);
    }

    public SceneOptions with(UnitSystem changed) {
        return new SceneOptions(view, layers, palette, changed, text, states);
    }

    public SceneOptions with(Map<String, CoreState> changed) {
        return new SceneOptions(view, layers, palette, units, text, changed);
    }
}

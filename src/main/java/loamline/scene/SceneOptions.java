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
 * @param wash opacity of washes over the ground, 0 to 1; below 1, an image underneath shows through
 */
public record SceneOptions(
        View view,
        Set<Layer> layers,
        Palette palette,
        UnitSystem units,
        TextMeasure text,
        Map<String, CoreState> states,
        double wash) {
    /** @throws IllegalArgumentException if the opacity of washes is not from 0 to 1 */
    public SceneOptions {
        if (!(wash >= 0 && wash <= 1)) {
            throw new IllegalArgumentException("the opacity of washes must be 0 to 1, not " + wash);
        }
        EnumSet<Layer> copy = EnumSet.noneOf(Layer.class);
        copy.addAll(layers);
        layers = Collections.unmodifiableSet(copy);
        states = Map.copyOf(states);
    }

    /** All layers but the throws of the heads, in light colours and US units, every core planned. */
    public static SceneOptions usual(View view, TextMeasure text) {
        return new SceneOptions(
                view, EnumSet.complementOf(EnumSet.of(Layer.THROWS)), Palette.LIGHT, UnitSystem.US, text, Map.of(), 1);
    }

    public SceneOptions with(Set<Layer> changed) {
        return new SceneOptions(view, changed, palette, units, text, states, wash);
    }

    public SceneOptions with(Palette changed) {
        return new SceneOptions(view, layers, changed, units, text, states, wash);
    }

    public SceneOptions with(UnitSystem changed) {
        return new SceneOptions(view, layers, palette, changed, text, states, wash);
    }

    public SceneOptions with(Map<String, CoreState> changed) {
        return new SceneOptions(view, layers, palette, units, text, changed, wash);
    }

    public SceneOptions withWash(double changed) {
        return new SceneOptions(view, layers, palette, units, text, states, changed);
    }
}

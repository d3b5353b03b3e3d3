package loamline.desk.map;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import loamline.sampling.CorePlan;
import loamline.scene.Layer;
import loamline.yard.Yard;

/** Which layers are to be seen, and which have anything to show. */
public final class MapLayers {
    private final ReadOnlyObjectWrapper<Set<MapLayer>> shown =
            new ReadOnlyObjectWrapper<>(set(EnumSet.complementOf(EnumSet.of(MapLayer.THROWS))));
    private final ReadOnlyObjectWrapper<Set<MapLayer>> available =
            new ReadOnlyObjectWrapper<>(set(EnumSet.noneOf(MapLayer.class)));

    private static Set<MapLayer> set(EnumSet<MapLayer> layers) {
        return Collections.unmodifiableSet(layers);
    }

    /** Shows or hides a layer. */
    public void show(MapLayer layer, boolean seen) {
        EnumSet<MapLayer> changed = EnumSet.noneOf(MapLayer.class);
        changed.addAll(shown.get());
        if (seen) {
            changed.add(layer);
        } else {
            changed.remove(layer);
        }
        shown.set(set(changed));
    }

    /** Looks again at what there is to show. */
    void look(Yard yard, Optional<CorePlan> plan, Found found) {
        EnumSet<MapLayer> there = EnumSet.noneOf(MapLayer.class);
        for (MapLayer layer : MapLayer.values()) {
            if (layer.isIn(yard, plan, found)) {
                there.add(layer);
            }
        }
        available.set(set(there));
    }

    /** The layers of the scene that are to be drawn. */
    Set<Layer> drawn() {
        return shown.get().stream().flatMap(layer -> layer.drawn().stream()).collect(Collectors.toSet());
    }

    public ReadOnlyObjectProperty<Set<MapLayer>> shown() {
        return shown.getReadOnlyProperty();
    }

    public ReadOnlyObjectProperty<Set<MapLayer>> available() {
        return available.getReadOnlyProperty();
    }
}

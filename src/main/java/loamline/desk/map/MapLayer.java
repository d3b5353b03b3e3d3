package loamline.desk.map;

import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import loamline.sampling.CorePlan;
import loamline.scene.Layer;
import loamline.yard.Core;
import loamline.yard.Feature;
import loamline.yard.Gate;
import loamline.yard.Head;
import loamline.yard.KeepAway;
import loamline.yard.Trouble;
import loamline.yard.Yard;

/** What the list of layers offers; each entry is one layer of the scene or several that belong together. */
public enum MapLayer {
    IMAGE("Image"),
    OUTLINES("Outlines"),
    LABELS("Labels"),
    HEADS("Heads"),
    THROWS("Throw of heads"),
    AMOUNTS("Water, sun"),
    SPOTS("Spots"),
    STRATA("Strata"),
    CORES("Cores, walk");

    private final String title;

    MapLayer(String title) {
        this.title = title;
    }

    /** Its name on screen. */
    public String title() {
        return title;
    }

    /** The layers of the scene that it stands for; none for the image. */
    public Set<Layer> drawn() {
        return switch (this) {
            case IMAGE -> Set.of();
            case OUTLINES ->
                Set.of(Layer.BOUNDARY, Layer.TURF, Layer.COVERS, Layer.BUILDINGS, Layer.BARRIERS, Layer.TREES);
            case LABELS -> Set.of(Layer.LABELS);
            case HEADS -> Set.of(Layer.HEADS);
            case THROWS -> Set.of(Layer.THROWS);
            case AMOUNTS -> Set.of(Layer.RASTER, Layer.GLARE, Layer.HOLES, Layer.CUPS);
            case SPOTS -> Set.of(Layer.SPOTS);
            case STRATA -> Set.of(Layer.STRATA);
            case CORES -> Set.of(Layer.WALK, Layer.SPARES, Layer.CORES, Layer.START);
        };
    }

    /** Whether there is anything to show. */
    public boolean isIn(Yard yard, Optional<CorePlan> plan, Found found) {
        return switch (this) {
            case IMAGE -> yard.backdrop().isPresent();
            case OUTLINES, LABELS -> !yard.features().isEmpty();
            case HEADS -> any(yard, Head.class::isInstance);
            case THROWS ->
                any(yard, f -> f instanceof Head head && head.radiusM().isPresent());
            case AMOUNTS -> !found.isNothing();
            case SPOTS -> any(yard, f -> f instanceof KeepAway || f instanceof Trouble);
            case STRATA ->
                plan.stream()
                        .flatMap(p -> p.composites().stream())
                        .anyMatch(bag -> !bag.strata().isEmpty());
            case CORES ->
                plan.filter(p -> !p.cores().isEmpty()).isPresent()
                        || any(yard, f -> f instanceof Core || f instanceof Gate);
        };
    }

    private static boolean any(Yard yard, Predicate<Feature> sort) {
        return yard.features().stream().anyMatch(sort);
    }
}

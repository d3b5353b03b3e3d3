package loamline.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import loamline.geometry.Point;
import loamline.yard.Kind;
import loamline.yard.Yard;

/** What the signs on the map of a cup test mean. */
public final class CupLegend {
    /** Radius of the ring round a head, to fit the sample. */
    private static final double RING_MM = 1.9;

    private CupLegend() {}

    /** Rates first, then cups and heads, then trouble spots. */
    public static List<Legend.Entry> of(Yard yard, CupMap cups, Optional<Shading> measured, SceneOptions options) {
        SceneOptions small = new SceneOptions(
                Legend.view(), options.layers(), options.palette(), options.units(), options.text(), Map.of(), 1);
        List<Legend.Entry> entries = new ArrayList<>();
        measured.ifPresent(shading -> entries.addAll(shading.legend(small)));
        Point middle = Legend.view().ground().centre();
        entries.add(drawn("cup", small, s -> CupSigns.cups(s, List.of(new CupMap.Cup("7", "", middle, false)))));
        if (cups.cups().stream().anyMatch(CupMap.Cup::telling)) {
            CupMap.Cup telling = new CupMap.Cup("7", "", middle, true);
            entries.add(drawn("cup that says so", small, s -> CupSigns.cups(s, List.of(telling))));
        }
        if (!cups.heads().isEmpty()) {
            CupMap.Suspect suspect = new CupMap.Suspect(middle, "");
            entries.add(drawn("head to look at", small, s -> CupSigns.rings(s, List.of(suspect), RING_MM)));
        }
        Yard explained = yard.withFeatures(yard.features().stream()
                .filter(feature -> feature.kind().equals(Optional.of(Kind.HEAD))
                        || feature.kind().equals(Optional.of(Kind.TROUBLE)))
                .toList());
        entries.addAll(Legend.of(explained, Optional.empty(), options));
        return List.copyOf(entries);
    }

    private static Legend.Entry drawn(String words, SceneOptions options, Consumer<Sketch> drawing) {
        Sketch sketch = new Sketch(options);
        drawing.accept(sketch);
        return new Legend.Entry(words, sketch.scene());
    }
}

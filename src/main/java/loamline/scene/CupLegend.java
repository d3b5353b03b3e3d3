package loamline.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Region;
import loamline.yard.Kind;
import loamline.yard.Yard;

/** What the signs on the map of a cup test mean. */
public final class CupLegend {
    private static final Region SWATCH = Region.of(Outline.of(0.4, 0.3, 6.6, 0.3, 6.6, 4.1, 0.4, 4.1));

    private CupLegend() {}

    /**
     * A class of what was measured.
     *
     * @param words its range, with the unit
     */
    public record Range(String words, Ink ink) {}

    /** The ranges first, then cups and heads, then what else there is in the yard. */
    public static List<Legend.Entry> of(Yard yard, CupMap cups, List<Range> ranges, SceneOptions options) {
        SceneOptions small = new SceneOptions(
                Legend.view(), options.layers(), options.palette(), options.units(), options.text(), Map.of(), 1);
        List<Legend.Entry> entries = new ArrayList<>();
        ranges.forEach(range -> entries.add(drawn(
                range.words(),
                small,
                s -> CupSigns.washes(s, map(List.of(new CupMap.Wash(SWATCH, range.ink())), List.of(), List.of())))));
        Point middle = Legend.view().ground().centre();
        entries.add(drawn("cup", small, cup(new CupMap.Cup("7", "", middle, false))));
        if (cups.cups().stream().anyMatch(CupMap.Cup::telling)) {
            entries.add(drawn("cup that says so", small, cup(new CupMap.Cup("7", "", middle, true))));
        }
        if (!cups.heads().isEmpty()) {
            CupMap.Suspect suspect = new CupMap.Suspect(middle, "");
            entries.add(drawn(
                    "head to look at",
                    small,
                    s -> CupSigns.rings(s, map(List.of(), List.of(), List.of(suspect)), 1.9)));
        }
        List<String> shown = List.of(Kind.HEAD.word(), Kind.TROUBLE.word());
        entries.addAll(Legend.of(
                yard.withFeatures(yard.features().stream()
                        .filter(f ->
                                f.kind().map(Kind::word).filter(shown::contains).isPresent())
                        .toList()),
                Optional.empty(),
                options));
        return List.copyOf(entries);
    }

    private static CupMap map(List<CupMap.Wash> washes, List<CupMap.Cup> cups, List<CupMap.Suspect> heads) {
        return new CupMap("", washes, cups, heads);
    }

    private static Consumer<Sketch> cup(CupMap.Cup cup) {
        return sketch -> CupSigns.cups(sketch, map(List.of(), List.of(cup), List.of()));
    }

    private static Legend.Entry drawn(String words, SceneOptions options, Consumer<Sketch> drawing) {
        Sketch sketch = new Sketch(options);
        drawing.accept(sketch);
        return new Legend.Entry(words, sketch.scene());
    }
}

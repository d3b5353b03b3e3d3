package loamline.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import loamline.geometry.Box;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Polyline;
import loamline.geometry.Region;
import loamline.place.Frame;
import loamline.sampling.CorePlan;
import loamline.sampling.CorePlan.Walk;
import loamline.scene.CoreSigns.Sort;
import loamline.yard.Barrier;
import loamline.yard.Cover;
import loamline.yard.Extras;
import loamline.yard.Feature;
import loamline.yard.Head;
import loamline.yard.KeepAway;
import loamline.yard.Kind;
import loamline.yard.Panel;
import loamline.yard.Probe;
import loamline.yard.Profile;
import loamline.yard.Tree;
import loamline.yard.Trouble;
import loamline.yard.Yard;

/** What the signs on a map mean: each sample is a tiny yard, drawn by the same hand as the map. */
public final class Legend {
    /** Size of a sample on paper, mm. */
    public static final PaperRect SAMPLE = new PaperRect(0, 0, 7, 4.4);

    /** Weight of a core's sign: smaller than on the map, to fit the sample. */
    private static final double SIGN_MM = 1.4;

    private static final View VIEW = new View(new Box(0, 0, SAMPLE.widthMm(), SAMPLE.heightMm()), 1);
    private static final Point MIDDLE = VIEW.ground().centre();
    private static final Polyline ACROSS = new Polyline(List.of(new Point(0, 2.2), new Point(7, 2.2)));
    private static final Outline SWATCH = Outline.of(0.4, 0.3, 6.6, 0.3, 6.6, 4.1, 0.4, 4.1);

    private Legend() {}

    /** The view of a sample; its scale is a metre to a millimetre. */
    public static View view() {
        return VIEW;
    }

    /**
     * One sign.
     *
     * @param sample a drawing of {@link #SAMPLE} size
     */
    public record Entry(String words, Scene sample) {}

    /** The signs that occur on a map and do not speak for themselves: bags first, then the walk, then the ground. */
    public static List<Entry> of(Yard yard, Optional<CorePlan> plan, SceneOptions options) {
        SceneOptions small = new SceneOptions(
                VIEW, options.layers(), options.palette(), options.units(), options.text(), Map.of(), 1);
        List<Entry> entries = new ArrayList<>(bags(yard, plan, small));
        plan.ifPresent(p -> entries.addAll(ofPlan(p, small)));
        Set<Kind> kinds =
                yard.features().stream().flatMap(f -> f.kind().stream()).collect(Collectors.toSet());
        for (Kind kind : Kind.values()) {
            if (kinds.contains(kind)) {
                sample(kind).ifPresent(feature -> entries.add(entry(words(kind), small, feature)));
            }
        }
        return entries.stream()
                .filter(entry -> entry.sample().marks().findAny().isPresent())
                .toList();
    }

    /** A colour and what it means. */
    static Entry swatch(String words, Ink ink) {
        Mark mark = new Mark.Drawn(Path.of(SWATCH), Paint.fill(ink));
        return new Entry(words, new Scene(VIEW, Map.of(Layer.RASTER, List.of(mark))));
    }

    /** The signs of a map of amounts: what the colours mean, then holes and glare, then the ground. */
    public static List<Entry> ofAmounts(Yard yard, Shown shown, SceneOptions options) {
        SceneOptions small = new SceneOptions(
                VIEW, options.layers(), options.palette(), options.units(), options.text(), Map.of(), 1);
        List<Entry> entries = new ArrayList<>();
        shown.shading().ifPresent(shading -> entries.addAll(shading.legend(small)));
        if (!shown.holes().isEmpty()) {
            entries.add(drawn("no water", small, Layer.HOLES, s -> HoleSigns.outline(s, Region.of(SWATCH))));
        }
        if (!shown.glare().isEmpty()) {
            entries.add(glare(small));
        }
        entries.addAll(of(yard, Optional.empty(), options));
        return entries;
    }

    /** Ground on which a panel throws the sun. */
    public static Entry glare(SceneOptions options) {
        return drawn("glare", options, Layer.GLARE, s -> PanelSigns.lit(s, Region.of(SWATCH)));
    }

    private static List<Entry> bags(Yard yard, Optional<CorePlan> plan, SceneOptions options) {
        List<String> bags = CoreSigns.bags(yard, plan);
        List<CoreSigns.Dot> dots = CoreSigns.dots(yard, plan);
        Set<String> shown = dots.stream().map(CoreSigns.Dot::bag).collect(Collectors.toSet());
        List<Entry> entries = new ArrayList<>();
        for (int i = 0; i < bags.size(); i++) {
            CoreSigns.Dot dot = new CoreSigns.Dot("", bags.get(i), CoreShape.ofBag(i), "", MIDDLE, Sort.CORE);
            if (shown.contains(dot.bag())) {
                entries.add(drawn(
                        "bag " + dot.bag(), options, Layer.CORES, s -> CoreSigns.cores(s, List.of(dot), SIGN_MM)));
            }
        }
        locked(dots, options).ifPresent(entries::add);
        return entries;
    }

    private static Optional<Entry> locked(List<CoreSigns.Dot> dots, SceneOptions options) {
        CoreSigns.Dot dot = new CoreSigns.Dot("", "", CoreShape.DISC, "", MIDDLE, Sort.LOCKED);
        return dots.stream().anyMatch(d -> d.sort() == Sort.LOCKED)
                ? Optional.of(drawn(
                        "locked",
                        options,
                        Layer.CORES,
                        s -> CoreSigns.cores(s, List.of(dot), SIGN_MM / CoreSigns.LOCK_RING)))
                : Optional.empty();
    }

    private static List<Entry> ofPlan(CorePlan plan, SceneOptions options) {
        List<Entry> entries = new ArrayList<>();
        if (plan.cores().stream().anyMatch(core -> core.spareOf().isPresent())) {
            CoreSigns.Dot dot = new CoreSigns.Dot("", "", CoreShape.DISC, "", MIDDLE, Sort.SPARE);
            entries.add(drawn("spare", options, Layer.SPARES, s -> CoreSigns.spares(s, List.of(dot), 0.8 * SIGN_MM)));
        }
        if (!plan.walks().isEmpty()) {
            CorePlan walk = planOf(List.of(), List.of(new Walk("", 0, 0, false, ACROSS)));
            entries.add(drawn("walk", options, Layer.WALK, s -> WalkSigns.walks(s, walk, List.of())));
        }
        if (plan.composites().stream().anyMatch(bag -> !bag.strata().isEmpty())) {
            CorePlan strata = planOf(List.of(new CorePlan.Stratum(1, "", Region.of(SWATCH))), List.of());
            entries.add(drawn("one core’s ground", options, Layer.STRATA, s -> CoreSigns.strata(s, strata, List.of())));
        }
        return entries;
    }

    private static CorePlan planOf(List<CorePlan.Stratum> strata, List<Walk> walks) {
        CorePlan.Composite bag = new CorePlan.Composite(
                "", List.of(), 0, 0, 0, OptionalDouble.empty(), OptionalDouble.empty(), strata, Probe.USUAL, 0);
        return new CorePlan(0, List.of(bag), List.of(), walks, List.of(), List.of(), Map.of());
    }

    private static Entry drawn(String words, SceneOptions options, Layer layer, Consumer<Sketch> drawing) {
        Sketch sketch = new Sketch(options);
        sketch.on(layer, drawing);
        return new Entry(words, sketch.scene());
    }

    private static Entry entry(String words, SceneOptions options, Feature feature) {
        Yard yard = Yard.empty("", Frame.local()).withFeatures(List.of(feature));
        return new Entry(words, YardScene.of(yard, List.of(), Optional.empty(), options));
    }

    private static String words(Kind kind) {
        return switch (kind) {
            case HEAD -> "head, valve";
            case KEEPAWAY -> "keep away";
            case TROUBLE -> "trouble spot";
            case BOUNDARY -> "property line";
            case PANEL -> "panel, its face";
            default -> kind.word();
        };
    }

    private static Optional<Feature> sample(Kind kind) {
        Extras none = Extras.NONE;
        return switch (kind) {
            case BED, PAVING, GRAVEL, WATER, DECK -> Optional.of(new Cover("", kind, "", SWATCH, none));
            case FENCE, WALL -> Optional.of(new Barrier("", kind, 1, List.of(), true, ACROSS, none));
            case PANEL -> Optional.of(new Panel("", Panel.DEFAULT_HEIGHT_M, 0, 0, ACROSS, none));
            case HEAD -> Optional.of(head());
            case TREE -> Optional.of(tree());
            case KEEPAWAY -> Optional.of(new KeepAway("", 1.7, "", MIDDLE, none));
            case TROUBLE -> {
                Outline round = Region.around(MIDDLE, 1.6).outline();
                yield Optional.of(new Trouble("", "", OptionalInt.empty(), round, none));
            }
            default -> Optional.empty();
        };
    }

    private static Head head() {
        Profile profile = Profile.Named.CONE;
        Point at = new Point(2.2, 0.9);
        OptionalDouble unknown = OptionalDouble.empty();
        return new Head("", "", "2", Optional.empty(), unknown, 0, 90, unknown, profile, 0, at, Extras.NONE);
    }

    private static Tree tree() {
        OptionalDouble unknown = OptionalDouble.empty();
        return new Tree("", OptionalDouble.of(1.9), unknown, 0.3, false, 0, unknown, false, MIDDLE, Extras.NONE);
    }
}

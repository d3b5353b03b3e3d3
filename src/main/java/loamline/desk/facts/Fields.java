package loamline.desk.facts;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import loamline.units.Measure;
import loamline.yard.Barrier;
import loamline.yard.Boundary;
import loamline.yard.Bounds;
import loamline.yard.Building;
import loamline.yard.Core;
import loamline.yard.Cover;
import loamline.yard.Feature;
import loamline.yard.Head;
import loamline.yard.HeadClass;
import loamline.yard.KeepAway;
import loamline.yard.Kind;
import loamline.yard.Naming;
import loamline.yard.Panel;
import loamline.yard.Profile;
import loamline.yard.Tree;
import loamline.yard.Trouble;
import loamline.yard.Turf;

/** The fields of every sort of feature, in the order in which they are shown. */
final class Fields {
    private static final Bounds ANY =
            new Bounds(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);
    private static final double PER_CENT = 0.01;

    private static final List<Object> COVERS = List.copyOf(
            Arrays.stream(Kind.values()).filter(Cover.KINDS::contains).toList());

    private static final Map<Class<? extends Feature>, List<FieldSpec>> ALL = all();

    private final Class<? extends Feature> type;

    private Fields(Class<? extends Feature> type) {
        this.type = type;
    }

    /** The fields of a feature; none for a gate or a feature of another program. */
    static List<FieldSpec> of(Feature feature) {
        return ALL.getOrDefault(feature.getClass(), List.of());
    }

    /** The fields that all of some features have. */
    static List<FieldSpec> common(List<Feature> features) {
        return features.isEmpty()
                ? List.of()
                : of(features.get(0)).stream()
                        .filter(spec -> features.stream()
                                .allMatch(feature -> of(feature).contains(spec)))
                        .toList();
    }

    private static Map<Class<? extends Feature>, List<FieldSpec>> all() {
        Map<Class<? extends Feature>, List<FieldSpec>> all = new LinkedHashMap<>();
        put(all, Boundary.class, f -> List.of(f.text("Name", "name")));
        put(all, Turf.class, Fields::turf);
        put(all, Cover.class, f -> List.of(f.text("Name", "name"), f.choice("Kind", "cover", COVERS, Fields::kind)));
        put(
                all,
                Building.class,
                f -> List.of(
                        f.text("Name", "name"),
                        f.length("Height", "heightM", "From the ground to the eaves"),
                        f.length("Eaves", "eaveM", "How far the roof reaches beyond the walls")));
        put(
                all,
                Barrier.class,
                f -> List.of(
                        f.choice("Kind", "barrier", List.of(Kind.FENCE, Kind.WALL), Fields::kind),
                        f.length("Height", "heightM", ""),
                        f.choice("Build", "solid", List.of(true, false), v -> (boolean) v ? "solid" : "open")));
        put(all, Tree.class, Fields::tree);
        put(all, Head.class, Fields::head);
        put(
                all,
                KeepAway.class,
                f -> List.of(f.text("Reason", "reason"), f.length("Radius", "radiusM", "No core within it")));
        put(all, Trouble.class, f -> List.of(f.text("Note", "note"), f.count("Quality", "quality", "1 dead, 9 best")));
        put(all, Core.class, f -> List.of(f.text("Name", "id"), f.text("Bag", "composite"), f.text("Zone", "zone")));
        put(
                all,
                Panel.class,
                f -> List.of(
                        f.length("Height", "heightM", "Of the face itself, edge to edge"),
                        f.length("Bottom", "bottomM", "Of its lower edge above the ground"),
                        f.quantity("Tilt", "tiltDeg", Measure.ANGLE, 1, "From upright")));
        return all;
    }

    private static List<FieldSpec> turf(Fields f) {
        return List.of(
                new FieldSpec("Zone", "zone", new Entry.Text(), true, "Outlines of one zone are treated alike"),
                f.text("Grass", "grass"),
                f.text("Bag", "bag"),
                f.quantity("Slope", "slopePct", Measure.PERCENT, PER_CENT, "Rise over run"),
                f.quantity("Trouble", "trouble", Measure.PERCENT, 1, "How much of it looks poor"));
    }

    private static List<FieldSpec> tree(Fields f) {
        return List.of(
                f.length("Height", "heightM", ""),
                f.length("Crown radius", "crownRadiusM", ""),
                f.length("Crown from", "baseM", "Height at which the crown begins; blank: a quarter of the height"),
                f.choice("Crown", "cylinder", List.of(false, true), v -> (boolean) v ? "cylinder" : "ellipsoid"),
                f.length("Trunk radius", "trunkRadiusM", ""),
                f.choice("Foliage", "evergreen", List.of(false, true), v -> (boolean) v ? "evergreen" : "deciduous"),
                f.quantity("Light through", "transmission", Measure.PERCENT, 1, "Share of light that passes in leaf"));
    }

    private static List<FieldSpec> head(Fields f) {
        return List.of(
                f.text("Name", "id"),
                f.text("Valve", "valve"),
                f.choice("Class", "headClass", List.of(HeadClass.values()), v -> ((HeadClass) v).word()),
                f.length("Radius", "radiusM", "How far it throws"),
                f.quantity("Arc from", "arcStartDeg", Measure.ANGLE, 1, "Clockwise from north"),
                f.quantity("Arc", "arcSweepDeg", Measure.ANGLE, 1, "Clockwise from its first edge"),
                f.quantity("Flow", "flowLpm", Measure.FLOW, 1, ""),
                f.choice("Profile", "profile", List.of(Profile.Named.values()), Fields::profile),
                f.length("Mounted at", "mountM", "Above the ground"));
    }

    private static String profile(Object profile) {
        return profile instanceof Profile.Measured measured
                ? "measured, " + measured.depths().size() + " depths"
                : profile.toString().toLowerCase(Locale.ROOT);
    }

    private static String kind(Object kind) {
        return Naming.kind((Kind) kind);
    }

    private static void put(
            Map<Class<? extends Feature>, List<FieldSpec>> all,
            Class<? extends Feature> type,
            Function<Fields, List<FieldSpec>> fields) {
        all.put(type, fields.apply(new Fields(type)));
    }

    private Bounds bounds(String component) {
        return Bounds.of(type, component).orElse(ANY);
    }

    private FieldSpec text(String label, String component) {
        return new FieldSpec(label, component, new Entry.Text(), false, "");
    }

    private FieldSpec length(String label, String component, String help) {
        return quantity(label, component, Measure.LENGTH, 1, help);
    }

    private FieldSpec quantity(String label, String component, Measure measure, double size, String help) {
        return new FieldSpec(label, component, new Entry.Quantity(measure, size, bounds(component)), false, help);
    }

    private FieldSpec count(String label, String component, String help) {
        return new FieldSpec(label, component, new Entry.Count(bounds(component)), false, help);
    }

    private FieldSpec choice(String label, String component, List<?> values, Function<Object, String> word) {
        return new FieldSpec(label, component, new Entry.Choice(List.copyOf(values), word), false, "");
    }
}

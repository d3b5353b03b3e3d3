package loamline.files;

import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Polyline;
import loamline.geometry.Shape;
import loamline.yard.Barrier;
import loamline.yard.Boundary;
import loamline.yard.Building;
import loamline.yard.Core;
import loamline.yard.Cover;
import loamline.yard.Gate;
import loamline.yard.Head;
import loamline.yard.HeadClass;
import loamline.yard.KeepAway;
import loamline.yard.Kind;
import loamline.yard.Panel;
import loamline.yard.Tree;
import loamline.yard.Trouble;
import loamline.yard.Turf;

/** The properties of every kind of feature: their names, their defaults, and both directions side by side. */
final class FeatureCodecs {
    private static final FeatureCodec<Boundary, Outline> BOUNDARY = new FeatureCodec<>(
            Boundary.class,
            Outline.class,
            names("name"),
            (base, p) -> new Boundary(base.key(), p.text("name", ""), base.shape(), base.extras()),
            (boundary, out) -> out.text("name", boundary.name()));

    private static final FeatureCodec<Turf, Outline> TURF = new FeatureCodec<>(
            Turf.class,
            Outline.class,
            names("zone", "grass", "trouble", "slopePct", "bag"),
            (base, p) -> new Turf(
                    base.key(),
                    p.text("zone", Turf.DEFAULT_ZONE),
                    p.text("grass", ""),
                    p.number("trouble"),
                    p.number("slopePct"),
                    p.text("bag"),
                    base.shape(),
                    base.extras()),
            (turf, out) -> {
                out.put("zone", turf.zone()).text("grass", turf.grass());
                out.number("trouble", turf.trouble()).number("slopePct", turf.slopePct());
                turf.bag().ifPresent(bag -> out.put("bag", bag));
            });

    private static final FeatureCodec<Cover, Outline> COVER = new FeatureCodec<>(
            Cover.class,
            Outline.class,
            names("name"),
            (base, p) -> new Cover(base.key(), base.kind(), p.text("name", ""), base.shape(), base.extras()),
            (cover, out) -> out.text("name", cover.name()));

    private static final FeatureCodec<Building, Outline> BUILDING = new FeatureCodec<>(
            Building.class,
            Outline.class,
            names("name", "heightM", "eaveM"),
            (base, p) -> new Building(
                    base.key(),
                    p.text("name", ""),
                    p.lengthM("height", Building.DEFAULT_HEIGHT_M),
                    p.lengthM("eave", 0),
                    base.shape(),
                    base.extras()),
            (building, out) -> out.text("name", building.name())
                    .put("heightM", building.heightM())
                    .put("eaveM", building.eaveM()));

    private static final FeatureCodec<Barrier, Polyline> BARRIER = new FeatureCodec<>(
            Barrier.class,
            Polyline.class,
            names("heightM", "gates", "solid"),
            (base, p) -> new Barrier(
                    base.key(),
                    base.kind(),
                    p.lengthM("height", Barrier.DEFAULT_HEIGHT_M),
                    PropertyValues.openings(p),
                    p.flag("solid", true),
                    base.shape(),
                    base.extras()),
            (barrier, out) -> {
                out.put("heightM", barrier.heightM());
                if (!barrier.gates().isEmpty()) {
                    out.put(
                            "gates",
                            barrier.gates().stream()
                                    .map(PropertyValues::written)
                                    .toList());
                }
                out.put("solid", barrier.solid());
            });

    private static final FeatureCodec<Tree, Point> TREE = new FeatureCodec<>(
            Tree.class,
            Point.class,
            names("crownRadiusM", "heightM", "trunkRadiusM", "foliage", "transmission", "baseM", "shape"),
            (base, p) -> new Tree(
                    base.key(),
                    p.lengthM("crownRadius"),
                    p.lengthM("height"),
                    p.lengthM("trunkRadius", Tree.DEFAULT_TRUNK_RADIUS_M),
                    PropertyValues.either(p, "foliage", "deciduous", "evergreen"),
                    p.number("transmission", Tree.DEFAULT_TRANSMISSION),
                    p.lengthM("base"),
                    PropertyValues.either(p, "shape", "ellipsoid", "cylinder"),
                    base.shape(),
                    base.extras()),
            (tree, out) -> out.number("crownRadiusM", tree.crownRadiusM())
                    .number("heightM", tree.heightM())
                    .put("trunkRadiusM", tree.trunkRadiusM())
                    .put("foliage", tree.evergreen() ? "evergreen" : "deciduous")
                    .put("transmission", tree.transmission())
                    .number("baseM", tree.baseM())
                    .put("shape", tree.cylinder() ? "cylinder" : "ellipsoid"));

    private static final FeatureCodec<Head, Point> HEAD = new FeatureCodec<>(
            Head.class,
            Point.class,
            names("id", "valve", "class", "radiusM", "arcStartDeg", "arcSweepDeg", "flowLpm", "profile", "mountM"),
            (base, p) -> new Head(
                    base.key(),
                    p.text("id", ""),
                    p.text("valve", ""),
                    p.word("class", HeadClass::of, "spray, rotary or rotor"),
                    p.lengthM("radius"),
                    p.number("arcStartDeg", 0),
                    p.number("arcSweepDeg", Head.FULL_CIRCLE_DEG),
                    p.number("flowLpm"),
                    PropertyValues.profile(p),
                    p.lengthM("mount", 0),
                    base.shape(),
                    base.extras()),
            (head, out) -> {
                out.put("id", head.id()).text("valve", head.valve());
                head.headClass().ifPresent(c -> out.put("class", c.word()));
                out.number("radiusM", head.radiusM())
                        .put("arcStartDeg", head.arcStartDeg())
                        .put("arcSweepDeg", head.arcSweepDeg())
                        .number("flowLpm", head.flowLpm())
                        .put("profile", PropertyValues.written(head.profile()))
                        .put("mountM", head.mountM());
            });

    private static final FeatureCodec<Gate, Point> GATE = new FeatureCodec<>(
            Gate.class,
            Point.class,
            names(),
            (base, p) -> new Gate(base.key(), base.shape(), base.extras()),
            (gate, out) -> {});

    private static final FeatureCodec<KeepAway, Shape> KEEPAWAY = new FeatureCodec<>(
            KeepAway.class,
            Shape.class,
            names("radiusM", "reason"),
            (base, p) -> new KeepAway(
                    base.key(),
                    p.lengthM("radius", KeepAway.DEFAULT_RADIUS_M),
                    p.text("reason", ""),
                    base.shape(),
                    base.extras()),
            (spot, out) -> out.put("radiusM", spot.radiusM()).text("reason", spot.reason()));

    private static final FeatureCodec<Trouble, Outline> TROUBLE = new FeatureCodec<>(
            Trouble.class,
            Outline.class,
            names("note", "quality"),
            (base, p) -> new Trouble(base.key(), p.text("note", ""), p.whole("quality"), base.shape(), base.extras()),
            (trouble, out) -> {
                out.text("note", trouble.note());
                trouble.quality().ifPresent(quality -> out.put("quality", quality));
            });

    private static final FeatureCodec<Core, Point> CORE = new FeatureCodec<>(
            Core.class,
            Point.class,
            names("id", "composite", "zone", "locked"),
            (base, p) -> new Core(
                    base.key(),
                    p.text("id", ""),
                    p.text("composite", ""),
                    p.text("zone", ""),
                    base.shape(),
                    p.flag("locked", false),
                    base.extras()),
            (core, out) -> {
                out.text("id", core.id()).text("composite", core.composite()).text("zone", core.zone());
                if (core.locked()) {
                    out.put("locked", true);
                }
            });

    private static final FeatureCodec<Panel, Polyline> PANEL = new FeatureCodec<>(
            Panel.class,
            Polyline.class,
            names("heightM", "bottomM", "tiltDeg"),
            (base, p) -> new Panel(
                    base.key(),
                    PropertyValues.panelHeightM(p),
                    p.lengthM("bottom", 0),
                    p.number("tiltDeg", 0),
                    base.shape(),
                    base.extras()),
            (panel, out) -> out.put("heightM", panel.heightM())
                    .put("bottomM", panel.bottomM())
                    .put("tiltDeg", panel.tiltDeg()));

    private static final Map<Kind, FeatureCodec<?, ?>> BY_KIND = byKind();

    private FeatureCodecs() {}

    /** The codec for a kind. */
    static FeatureCodec<?, ?> of(Kind kind) {
        return Objects.requireNonNull(BY_KIND.get(kind));
    }

    /** Property names in use; a length in metres may also be given in feet. */
    private static JsonNames names(String... properties) {
        Set<String> names = new HashSet<>(List.of(properties));
        names.add("kind");
        for (String name : properties) {
            if (name.endsWith("M")) {
                names.add(name.substring(0, name.length() - 1) + "Ft");
            }
        }
        return new JsonNames(Set.copyOf(names));
    }

    private static Map<Kind, FeatureCodec<?, ?>> byKind() {
        Map<Kind, FeatureCodec<?, ?>> map = new EnumMap<>(Kind.class);
        Cover.KINDS.forEach(kind -> map.put(kind, COVER));
        map.put(Kind.BOUNDARY, BOUNDARY);
        map.put(Kind.TURF, TURF);
        map.put(Kind.BUILDING, BUILDING);
        map.put(Kind.FENCE, BARRIER);
        map.put(Kind.WALL, BARRIER);
        map.put(Kind.TREE, TREE);
        map.put(Kind.HEAD, HEAD);
        map.put(Kind.GATE, GATE);
        map.put(Kind.KEEPAWAY, KEEPAWAY);
        map.put(Kind.TROUBLE, TROUBLE);
        map.put(Kind.CORE, CORE);
        map.put(Kind.PANEL, PANEL);
        return map;
    }
}

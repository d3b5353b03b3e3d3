package loamline.files;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Polyline;
import loamline.geometry.Shape;
import loamline.place.Frame;
import loamline.place.LonLat;
import loamline.yard.Attachment;
import loamline.yard.Backdrop;
import loamline.yard.Barrier;
import loamline.yard.Boundary;
import loamline.yard.Building;
import loamline.yard.Core;
import loamline.yard.Cover;
import loamline.yard.Extras;
import loamline.yard.Feature;
import loamline.yard.Gate;
import loamline.yard.Head;
import loamline.yard.HeadClass;
import loamline.yard.KeepAway;
import loamline.yard.Kind;
import loamline.yard.KnownDistance;
import loamline.yard.Panel;
import loamline.yard.PlanOptions;
import loamline.yard.Probe;
import loamline.yard.Profile;
import loamline.yard.Tree;
import loamline.yard.Trouble;
import loamline.yard.Turf;
import loamline.yard.Unknown;
import loamline.yard.Yard;

/** Yards with every kind of feature and every sort of oddity that a file must carry. */
final class RandomYards {
    private static final double SPAN_M = 2000;

    /** Plain names, names that a file layout uses itself, and names that look escaped. */
    private static final List<String> NAMES = List.of(
            "colour",
            "ночь",
            "a/b~c",
            "",
            " ",
            "type",
            "id",
            "key",
            "kind",
            "bbox",
            "crs",
            "name",
            "format",
            "schema",
            "needs",
            "origin",
            "backdrop",
            "features",
            "coordinates",
            "point",
            "line",
            "outline",
            "asRead",
            "loamlineAsRead",
            "loamlineOrigin",
            "loamlineReversed",
            "heightM",
            "heightFt",
            "zone",
            "~kind",
            "~~type",
            "file",
            "opacity",
            "atM",
            "\uD83C\uDF33");

    private static final List<String> TEXTS = List.of(
            "",
            "front",
            "Gräser",
            "\"quoted\" \\ and \n broken",
            "\u0000\u001f\u007f\u2028",
            "\uD83C\uDF33 tree",
            "half \uD83C pair",
            "\uDF33",
            "12",
            "null");

    private final Random random;
    private final boolean isOnEarth;

    private RandomYards(Random random) {
        this.random = random;
        this.isOnEarth = random.nextInt(3) > 0;
    }

    static Yard yard(long seed) {
        return new RandomYards(new Random(seed)).yard();
    }

    private Yard yard() {
        List<Feature> features = new ArrayList<>();
        for (Kind kind : Kind.values()) {
            features.add(feature(kind, "k" + features.size() + text()));
        }
        for (int i = random.nextInt(4); i > 0; i--) {
            features.add(new Unknown("f" + i, unknown()));
        }
        Collections.shuffle(features, random);
        Frame frame = isOnEarth
                ? Frame.at(new LonLat(random.nextDouble() * 360 - 180, random.nextDouble() * 139.8 - 59.9))
                : Frame.local();
        return new Yard(text(), frame, features, maybe(this::backdrop), maybe(this::planning), attachments(), extras());
    }

    private List<Attachment> attachments() {
        List<Attachment> tables = new ArrayList<>();
        for (int i = random.nextInt(3); i > 0; i--) {
            tables.add(new Attachment(text(), text(), text(), text(), extras()));
        }
        return tables;
    }

    private Feature feature(Kind kind, String key) {
        return switch (kind) {
            case BOUNDARY -> new Boundary(key, text(), outline(), featureExtras());
            case TURF ->
                new Turf(key, text(), text(), number(), number(), maybe(this::text), outline(), featureExtras());
            case BED, PAVING, GRAVEL, WATER, DECK -> new Cover(key, kind, text(), outline(), featureExtras());
            case BUILDING -> new Building(key, text(), odd(), odd(), outline(), featureExtras());
            case FENCE, WALL ->
                new Barrier(key, kind, odd(), openings(), random.nextBoolean(), line(), featureExtras());
            case TREE ->
                new Tree(
                        key,
                        number(),
                        number(),
                        odd(),
                        random.nextBoolean(),
                        odd(),
                        number(),
                        random.nextBoolean(),
                        point(),
                        featureExtras());
            case HEAD ->
                new Head(
                        key,
                        text(),
                        text(),
                        maybe(() -> one(List.of(HeadClass.values()))),
                        number(),
                        odd(),
                        odd(),
                        number(),
                        profile(),
                        odd(),
                        point(),
                        featureExtras());
            case GATE -> new Gate(key, point(), featureExtras());
            case KEEPAWAY ->
                new KeepAway(key, odd(), text(), one(List.<Shape>of(point(), line(), outline())), featureExtras());
            case TROUBLE ->
                new Trouble(
                        key,
                        text(),
                        random.nextBoolean() ? OptionalInt.empty() : OptionalInt.of(random.nextInt()),
                        outline(),
                        featureExtras());
            case CORE -> new Core(key, text(), text(), text(), point(), random.nextBoolean(), featureExtras());
            case PANEL -> new Panel(key, odd(), odd(), odd(), line(), featureExtras());
        };
    }

    private List<Barrier.Opening> openings() {
        return IntStream.range(0, random.nextInt(3))
                .mapToObj(i -> new Barrier.Opening(odd(), odd(), extras()))
                .toList();
    }

    private Profile profile() {
        return random.nextBoolean()
                ? one(List.of(Profile.Named.values()))
                : new Profile.Measured(List.of(1.0, random.nextDouble(), 0.0));
    }

    private Backdrop backdrop() {
        return new Backdrop(
                text(),
                random.nextInt(),
                random.nextInt(),
                new Backdrop.Placement(odd(), odd(), odd(), odd(), odd(), odd()),
                odd(),
                odd(),
                IntStream.range(0, random.nextInt(3))
                        .mapToObj(i -> new KnownDistance(new Point(i, odd()), new Point(9, odd()), 1 + i))
                        .toList(),
                extras());
    }

    private PlanOptions planning() {
        return new PlanOptions(
                random.nextBoolean() ? OptionalInt.empty() : OptionalInt.of(1 + random.nextInt(9)),
                1 + random.nextInt(PlanOptions.MOST_CORES),
                random.nextDouble(),
                random.nextDouble(),
                random.nextDouble(),
                one(List.of(PlanOptions.Place.values())),
                random.nextInt(PlanOptions.MOST_SPARES + 1),
                random.nextLong(),
                one(List.of(PlanOptions.Rounds.values())),
                new Probe(random.nextDouble() + 0.001, random.nextDouble() + 0.001),
                extras());
    }

    private Extras unknown() {
        Map<String, Object> raw = new LinkedHashMap<>(members(2));
        List.of("type", "id", "key", "asRead", "loamlineAsRead").forEach(raw::remove);
        if (random.nextBoolean()) {
            raw.put("type", "Feature");
            raw.put("properties", Map.of("kind", "pond", "depthM", 1.5));
            raw.put("geometry", Map.of("type", "Point", "coordinates", List.of(1L, 2L, 3L)));
        } else {
            raw.put("kind", "pond");
            raw.put("outline", List.of(List.of(1L, 2L)));
        }
        return new Extras(raw);
    }

    private Extras featureExtras() {
        Map<String, Object> members = new LinkedHashMap<>(members(2));
        for (String inner : List.of("properties", "geometry")) {
            Map<String, Object> more = members(2);
            if (!more.isEmpty()) {
                members.put(inner, more);
            }
        }
        return new Extras(members);
    }

    private Extras extras() {
        return new Extras(members(3));
    }

    private Map<String, Object> members(int depth) {
        Map<String, Object> members = new LinkedHashMap<>();
        for (int i = random.nextInt(5) - 2; i > 0; i--) {
            members.put(one(NAMES), value(depth));
        }
        return members;
    }

    private Object value(int depth) {
        return switch (random.nextInt(depth > 0 ? 9 : 7)) {
            case 0 -> text();
            case 1 -> random.nextLong();
            case 2 -> new BigInteger(200, random).setBit(70);
            case 3 -> odd();
            case 4 -> new BigDecimal("1.00000000000000000000000000000000" + (1 + random.nextInt(9)));
            case 5 -> new BigDecimal("-7E+400");
            case 6 -> random.nextBoolean();
            case 7 -> members(depth - 1);
            default -> Collections.singletonList(random.nextBoolean() ? null : value(depth - 1));
        };
    }

    private Outline outline() {
        return new Outline(IntStream.range(0, random.nextInt(4))
                .mapToObj(i -> new Outline.Part(
                        ring(),
                        IntStream.range(0, random.nextInt(3))
                                .mapToObj(h -> ring())
                                .toList()))
                .toList());
    }

    /** Any points in any order; sometimes the first comes again at the end. */
    private List<Point> ring() {
        List<Point> ring = new ArrayList<>(points(random.nextInt(7)));
        if (!ring.isEmpty() && random.nextInt(4) == 0) {
            ring.add(ring.get(0));
        }
        return ring;
    }

    private Polyline line() {
        return new Polyline(points(1 + random.nextInt(5)));
    }

    private List<Point> points(int count) {
        return IntStream.range(0, count).mapToObj(i -> point()).toList();
    }

    private Point point() {
        Point p = new Point((random.nextDouble() - 0.5) * SPAN_M, (random.nextDouble() - 0.5) * SPAN_M);
        return isOnEarth ? Frame.onStep(p) : random.nextInt(5) == 0 ? new Point(p.x() * 1e-12, -p.y() * 1e4) : p;
    }

    private OptionalDouble number() {
        return random.nextBoolean() ? OptionalDouble.empty() : OptionalDouble.of(odd());
    }

    /** Any finite double, with a liking for the ordinary ones. */
    private double odd() {
        double any = Double.longBitsToDouble(random.nextLong());
        return switch (random.nextInt(4)) {
            case 0 -> Double.isFinite(any) ? any : Double.MIN_VALUE;
            case 1 -> -0.0;
            case 2 -> random.nextInt(100);
            default -> random.nextGaussian();
        };
    }

    private String text() {
        return one(TEXTS);
    }

    private <T> Optional<T> maybe(Supplier<T> value) {
        return random.nextBoolean() ? Optional.empty() : Optional.of(value.get());
    }

    private <T> T one(List<T> choices) {
        return choices.get(random.nextInt(choices.size()));
    }
}

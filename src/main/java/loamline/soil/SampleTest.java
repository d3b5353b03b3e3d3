package loamline.soil;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import loamline.reference.SoilTables;

/**
 * What is known of one sample: its newest test, and the tests before. Immutable.
 *
 * <p>Tests are told apart by date. Values without a date belong to the newest test. A value given twice in a test counts
 * as first given. What changes slowly (sand, silt, clay, exchange capacity) is taken from an earlier test where the
 * newest has none. Only sound values are found by the methods that look for one.
 */
final class SampleTest {
    /** Why a pH in salt is not put in the place of one in water. */
    static final String SALT_PH = "this pH is in a salt solution and reads about 0.5 below pH in water (University of"
            + " Missouri Extension, 2020), for which the methods here are made: fill in pH in water";

    private static final double ORGANIC_PCT = 19;

    private static final String NO_PH = "the test has no sound pH in water: fill in pH with its method";

    private final SoilTables tables;
    private final String id;
    private final List<String> zones;
    private final Optional<LocalDate> date;
    private final List<LabValue> values;
    private final List<LabValue> repeated;
    private final Map<Element, List<LabValue>> sound;
    private final Map<Element, List<LabValue>> soundBefore;
    private final Optional<Texture> texture;

    private SampleTest(String id, List<LabValue> all, SoilTables tables) {
        this.tables = tables;
        this.id = id;
        this.zones = all.stream()
                .map(LabValue::zones)
                .flatMap(Collection::stream)
                .distinct()
                .toList();
        this.date = all.stream().flatMap(v -> v.date().stream()).max(LocalDate::compareTo);
        Map<List<Object>, LabValue> first = new LinkedHashMap<>();
        List<LabValue> again = new ArrayList<>();
        List<LabValue> before = new ArrayList<>();
        for (LabValue value : all) {
            if (value.date().isPresent() && !value.date().equals(date)) {
                before.add(value);
            } else if (first.putIfAbsent(identity(value), value) != null) {
                again.add(value);
            }
        }
        before.sort((a, b) -> b.date().orElseThrow().compareTo(a.date().orElseThrow()));
        this.values = List.copyOf(first.values());
        this.repeated = List.copyOf(again);
        this.sound = soundOf(values, tables);
        this.soundBefore = soundOf(before, tables);
        this.texture = textureOf();
    }

    /** What makes two values of a test the same measurement. */
    private static List<Object> identity(LabValue value) {
        return List.of(
                value.element(),
                value.test().orElse(value.made().extractantText()),
                value.method().map(LabMethod::label).orElse(value.made().methodText()),
                value.made().depthM());
    }

    private static Map<Element, List<LabValue>> soundOf(List<LabValue> values, SoilTables tables) {
        Questions questions = new Questions(tables);
        Map<Element, List<LabValue>> byElement = new EnumMap<>(Element.class);
        values.stream()
                .filter(v -> questions.whyNot(v).isEmpty())
                .forEach(v -> byElement
                        .computeIfAbsent(v.element(), k -> new ArrayList<>())
                        .add(v));
        return byElement;
    }

    /** The samples of a file, in the order of their first lines. */
    static List<SampleTest> of(List<LabValue> all, SoilTables tables) {
        Map<String, List<LabValue>> bySample = new LinkedHashMap<>();
        all.forEach(v ->
                bySample.computeIfAbsent(v.sample(), k -> new ArrayList<>()).add(v));
        return bySample.entrySet().stream()
                .map(e -> new SampleTest(e.getKey(), e.getValue(), tables))
                .toList();
    }

    SoilTables tables() {
        return tables;
    }

    String id() {
        return id;
    }

    List<String> zones() {
        return zones;
    }

    Optional<LocalDate> date() {
        return date;
    }

    /** The newest test's values, each once, in the order of the file. */
    List<LabValue> values() {
        return values;
    }

    /** Values of the newest test that were given before. */
    List<LabValue> repeated() {
        return repeated;
    }

    /** Sound values of an element in the newest test. */
    List<LabValue> all(Element element) {
        return sound.getOrDefault(element, List.of());
    }

    /** Sound values of an element in earlier tests, newest first. */
    List<LabValue> before(Element element) {
        return soundBefore.getOrDefault(element, List.of());
    }

    /** The first sound value of an element in the newest test. */
    Optional<LabValue> one(Element element) {
        return all(element).stream().findFirst();
    }

    /** The first sound value of an element in the newest test that is of some sort. */
    Optional<LabValue> one(Element element, Predicate<LabValue> sort) {
        return all(element).stream().filter(sort).findFirst();
    }

    /** The same, of the newest test that has it. */
    Optional<LabValue> lasting(Element element) {
        return one(element).or(() -> before(element).stream().findFirst());
    }

    /** The texture class, where sand, silt and clay are all known and make a whole. */
    Optional<Texture> texture() {
        return texture;
    }

    private Optional<Texture> textureOf() {
        Optional<Double> sand = lasting(Element.SAND).flatMap(this::share);
        Optional<Double> silt = lasting(Element.SILT).flatMap(this::share);
        Optional<Double> clay = lasting(Element.CLAY).flatMap(this::share);
        return sand.isEmpty() || silt.isEmpty() || clay.isEmpty()
                ? Optional.empty()
                : Texture.of(sand.get(), silt.get(), clay.get());
    }

    private Optional<Double> share(LabValue value) {
        return new Concentrations(tables).share(value).value();
    }

    /** pH in water, or the reason why there is none. */
    Advice<Double> waterPh() {
        Optional<LabValue> water = one(Element.PH, v -> v.isBy(LabMethod.WATER));
        if (water.isPresent()) {
            return new Concentrations(tables).ph(water.get());
        }
        return Advice.refused(one(Element.PH).isPresent() ? SALT_PH : NO_PH);
    }

    /** Whether the soil counts as organic: loss on ignition above 19 %. University of Minnesota, texture and organic matter. */
    boolean isOrganic() {
        return lasting(Element.OM)
                .flatMap(this::share)
                .filter(pct -> pct > ORGANIC_PCT)
                .isPresent();
    }

    /** Free carbonate, per cent, where the report has it. */
    Optional<Double> carbonatePct() {
        return one(Element.CARBONATE).flatMap(this::share);
    }
}

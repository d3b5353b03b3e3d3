package loamline.water;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import loamline.account.Account;
import loamline.account.Problem;
import loamline.account.Where;
import loamline.raster.Grid;
import loamline.yard.Feature;
import loamline.yard.Head;
import loamline.yard.Yard;

/**
 * The water of a yard, ideal and without wind: rates, uniformity, holes, overspray. Immutable.
 *
 * <p>Case by case: a head that makes no sense is a problem and is left out; a yard without turf or without a usable
 * head has no rates, and all its turf is reached by none. Valves come in the order in which heads name them first, heads
 * in the yard's order, holes largest first. Every number is finite or an empty optional.
 */
public final class Water {
    private final Yard yard;
    private final WaterOptions options;
    private final Lawn lawn;
    private final List<SprinklerHead> heads;
    private final List<Valve> valves;
    private final Coverage coverage;
    private final List<Gap> gaps;
    private final List<HeadToHead> headToHead;
    private final List<Problem> problems;

    private Water(
            Yard yard,
            WaterOptions options,
            Lawn lawn,
            List<SprinklerHead> heads,
            List<Valve> valves,
            List<Problem> problems) {
        this.yard = yard;
        this.options = options;
        this.lawn = lawn;
        this.heads = heads;
        this.valves = valves;
        this.coverage = Covering.of(lawn, valves, options.yearMm());
        this.gaps = Covering.gaps(coverage, lawn);
        this.headToHead = new Neighbours(heads, lawn.nearTurf()).check();
        this.problems = List.copyOf(problems);
    }

    /**
     * Computes the water of a yard.
     *
     * @throws java.util.concurrent.CancellationException if the thread is interrupted meanwhile
     */
    public static Water of(Yard yard, WaterOptions options) {
        return of(yard, options, Optional.empty());
    }

    /**
     * The water of the yard after an edit, the same as {@link #of} gives. While only heads change, the lawn is kept, and
     * of a valve with one changed head only the cells that this head wet or wets are computed anew.
     *
     * @throws java.util.concurrent.CancellationException if the thread is interrupted meanwhile
     */
    public Water after(Yard edited) {
        return of(
                edited,
                options,
                Optional.of(this).filter(before -> ground(edited).equals(ground(yard))));
    }

    private static List<Feature> ground(Yard yard) {
        return yard.features().stream().filter(f -> !(f instanceof Head)).toList();
    }

    private static Water of(Yard yard, WaterOptions options, Optional<Water> before) {
        Lawn lawn = before.map(b -> b.lawn).orElseGet(() -> Lawn.of(yard, options.cellM()));
        Optional<Shadows> shadows = options.obstacles() ? Optional.of(Shadows.of(yard)) : Optional.empty();
        List<Problem> problems = new ArrayList<>();
        List<SprinklerHead> heads = Shared.of(
                read(yard, problems).entrySet(),
                entry -> before.flatMap(b -> b.placed(entry.getKey()))
                        .orElseGet(() -> SprinklerHead.of(entry.getKey(), entry.getValue(), lawn, shadows, options)));
        List<Valve> valves = Shared.of(
                byValve(heads),
                own -> before.flatMap(b -> b.valve(own.get(0).head().valve()))
                        .map(known -> known.with(own, lawn))
                        .orElseGet(() -> Valve.of(own, lawn)));
        problems.addAll(Doubts.of(yard, lawn, valves, options));
        return new Water(yard, options, lawn, heads, valves, problems);
    }

    private Optional<SprinklerHead> placed(Head head) {
        return heads.stream().filter(placed -> placed.head().equals(head)).findFirst();
    }

    private Optional<Valve> valve(String name) {
        return valves.stream()
                .filter(valve -> valve.figures().name().equals(name))
                .findFirst();
    }

    /** What every head throws that makes sense, in the yard's order; the others become problems. */
    private static Map<Head, HeadPattern> read(Yard yard, List<Problem> problems) {
        Map<Head, HeadPattern> patterns = new LinkedHashMap<>();
        for (int i = 0; i < yard.features().size(); i++) {
            if (yard.features().get(i) instanceof Head head) {
                HeadPattern.Read read = HeadPattern.of(head, Where.feature(i));
                problems.addAll(read.problems());
                read.pattern().ifPresent(pattern -> patterns.put(head, pattern));
            }
        }
        return patterns;
    }

    private static Collection<List<SprinklerHead>> byValve(List<SprinklerHead> heads) {
        return heads.stream()
                .collect(Collectors.groupingBy(h -> h.head().valve(), LinkedHashMap::new, Collectors.toList()))
                .values();
    }

    /** The figures of every valve. */
    public List<ValveWater> valves() {
        return valves.stream().map(Valve::figures).toList();
    }

    public Coverage coverage() {
        return coverage;
    }

    /** The holes. */
    public List<Gap> gaps() {
        return gaps;
    }

    public List<HeadToHead> headToHead() {
        return headToHead;
    }

    /** What is wrong with the heads, and what the results leave out. */
    public List<Problem> problems() {
        return problems;
    }

    /** How the numbers came about, by JSON pointer into {@code water.json}. */
    public Map<String, Account> accounts() {
        return WaterAccounts.of(this, options);
    }

    /** What every usable head throws, by the key of its feature. */
    public Map<String, HeadPattern> patterns() {
        Map<String, HeadPattern> patterns = new LinkedHashMap<>();
        heads.forEach(head -> patterns.put(head.head().key(), head.pattern()));
        return patterns;
    }

    /**
     * The rate on turf, mm/h, NaN off it: what falls in an hour if every valve runs for one.
     *
     * @return empty for a yard without turf
     */
    public Optional<Grid> rateMmH() {
        return rates(valves);
    }

    /**
     * The rate of one valve on turf, mm/h, NaN off it.
     *
     * @return empty for a yard without turf or a valve that is not there
     */
    public Optional<Grid> rateMmH(String valve) {
        return valve(valve).flatMap(found -> rates(List.of(found)));
    }

    private Optional<Grid> rates(Collection<Valve> some) {
        return lawn.mask()
                .map(turf -> Grid.of(turf.grid(), values -> {
                    some.forEach(valve -> valve.field().ifPresent(field -> field.addTo(values)));
                    for (int i = 0; i < values.length; i++) {
                        values[i] = turf.has(i) ? values[i] : Double.NaN;
                    }
                }));
    }
}

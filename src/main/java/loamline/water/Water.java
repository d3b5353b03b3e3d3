package loamline.water;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import loamline.account.Account;
import loamline.account.Problem;
import loamline.account.Where;
import loamline.raster.Grid;
import loamline.raster.GridSpec;
import loamline.raster.Mask;
import loamline.yard.Feature;
import loamline.yard.Head;
import loamline.yard.Yard;
import org.jspecify.annotations.Nullable;

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
    private final Map<Head, SprinklerHead> heads;
    private final Map<String, Valve> valves;
    private final Coverage coverage;
    private final List<Gap> gaps;
    private final List<HeadToHead> headToHead;
    private final List<Problem> problems;

    private Water(
            Yard yard,
            WaterOptions options,
            Lawn lawn,
            Map<Head, SprinklerHead> heads,
            Map<String, Valve> valves,
            List<Problem> problems) {
        this.yard = yard;
        this.options = options;
        this.lawn = lawn;
        this.heads = heads;
        this.valves = valves;
        this.coverage = Covering.of(lawn, valves.values(), options.yearMm());
        this.gaps = Covering.gaps(coverage, lawn);
        this.headToHead = new Neighbours(List.copyOf(heads.values()), lawn.nearTurf()).check();
        this.problems = problems;
    }

    /**
     * Computes the water of a yard.
     *
     * @throws java.util.concurrent.CancellationException if the thread is interrupted meanwhile
     */
    public static Water of(Yard yard, WaterOptions options) {
        return of(yard, options, null);
    }

    /**
     * The water of the yard after an edit, the same as {@link #of} gives. While only heads change, the lawn is kept, and
     * of a valve with one changed head only the cells that this head wet or wets are computed anew.
     *
     * @throws java.util.concurrent.CancellationException if the thread is interrupted meanwhile
     */
    public Water after(Yard edited) {
        return of(edited, options, ground(edited).equals(ground(yard)) ? this : null);
    }

    private static List<Feature> ground(Yard yard) {
        return yard.features().stream().filter(f -> !(f instanceof Head)).toList();
    }

    private static Water of(Yard yard, WaterOptions options, @Nullable Water before) {
        Lawn lawn = before == null ? Lawn.of(yard, options.cellM()) : before.lawn;
        Optional<Shadows> shadows = options.obstacles() ? Optional.of(Shadows.of(yard)) : Optional.empty();
        List<Problem> problems = new ArrayList<>();
        Map<Head, SprinklerHead> heads = new LinkedHashMap<>();
        Map<Head, HeadPattern> patterns = patterns(yard, problems);
        List<SprinklerHead> placed = Shared.of(patterns.keySet(), head -> {
            SprinklerHead known = before == null ? null : before.heads.get(head);
            return known == null
                    ? SprinklerHead.of(head, patterns.get(head), lawn, shadows, options)
                    : known;
        });
        placed.forEach(head -> heads.put(head.head(), head));
        List<Valve> made = Shared.of(byValve(placed), own -> {
            Valve known = before == null ? null : before.valves.get(own.get(0).head().valve());
            return known == null ? Valve.of(own, lawn) : known.with(own, lawn);
        });
        Map<String, Valve> valves = new LinkedHashMap<>();
        made.forEach(valve -> valves.put(valve.figures().name(), valve));
        problems.addAll(Doubts.of(yard, lawn, valves.values(), options));
        return new Water(yard, options, lawn, heads, valves, List.copyOf(problems));
    }

    /** What every head throws that makes sense, in the yard's order; the others become problems. */
    private static Map<Head, HeadPattern> patterns(Yard yard, List<Problem> problems) {
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
        return valves.values().stream().map(Valve::figures).toList();
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

    /** What every usable head throws, by the id of the head. */
    public Map<String, HeadPattern> patterns() {
        Map<String, HeadPattern> patterns = new LinkedHashMap<>();
        heads.values().forEach(head -> patterns.put(head.head().id(), head.pattern()));
        return patterns;
    }

    /**
     * The rate on turf, mm/h, NaN off it: what falls in an hour if every valve runs for one.
     *
     * @return empty for a yard without turf
     */
    public Optional<Grid> rateMmH() {
        return rates(valves.values());
    }

    /**
     * The rate of one valve on turf, mm/h, NaN off it.
     *
     * @return empty for a yard without turf or a valve that is not there
     */
    public Optional<Grid> rateMmH(String valve) {
        return Optional.ofNullable(valves.get(valve)).flatMap(found -> rates(List.of(found)));
    }

    private Optional<Grid> rates(Collection<Valve> some) {
        return lawn.mask().map(turf -> Grid.of(turf.grid(), values -> {
            some.forEach(valve -> valve.field().ifPresent(field -> field.addTo(values)));
            for (int i = 0; i < values.length; i++) {
                values[i] = turf.has(i) ? values[i] : Double.NaN;
            }
        }));
    }
}

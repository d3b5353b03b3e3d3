package loamline.findings;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import loamline.account.Account;
import loamline.geometry.Region;
import loamline.reference.Cause;
import loamline.yard.Yard;
import loamline.yard.Zone;
import loamline.yard.Zones;

/**
 * What a log says, set beside modelled water and sun and the laboratory's report.
 *
 * @param log the newest visit, with bags and earlier visits
 * @param cores those of the newest visit in the plan's order, modelled values included
 * @param zones readings by zone
 * @param areas parts that struggle: drawn spots first, then what only the cores show
 * @param surfaces readings between the cores, those that are not drawn too
 * @param changes against the visit before; empty without one
 * @param known what stood beside the log
 */
public record Findings(
        CoreLog log,
        List<LoggedCore> cores,
        List<ZoneSummary> zones,
        List<AreaFinding> areas,
        List<Surface> surfaces,
        List<Change> changes,
        Surroundings known) {
    public Findings {
        cores = List.copyOf(cores);
        zones = List.copyOf(zones);
        areas = List.copyOf(areas);
        surfaces = List.copyOf(surfaces);
        changes = List.copyOf(changes);
    }

    /**
     * Reads a log.
     *
     * @throws java.util.concurrent.CancellationException if the thread is interrupted meanwhile
     */
    public static Findings of(Yard yard, CoreLog log, Surroundings known) {
        return of(yard, log, known, Cause.published());
    }

    static Findings of(Yard yard, CoreLog log, Surroundings known, List<Cause> causes) {
        List<LoggedCore> cores = known.beside(log.cores());
        Region turf = Region.union(Zones.of(yard).stream().map(Zone::net).toList());
        return new Findings(
                log,
                cores,
                ZoneSummary.of(cores),
                areas(yard, cores, known, causes),
                Arrays.stream(Quantity.values())
                        .filter(quantity -> !quantity.isModelled())
                        .flatMap(quantity -> Surface.of(quantity, cores, turf).stream())
                        .toList(),
                log.earlier().isEmpty()
                        ? List.of()
                        : Change.of(log.earlier().get(log.earlier().size() - 1).cores(), log.cores()),
                known);
    }

    /** The parts that struggle, and why; what a map need not wait for. */
    static List<AreaFinding> areas(Yard yard, List<LoggedCore> cores, Surroundings known, List<Cause> causes) {
        List<PoorArea> poor = PoorArea.of(yard, cores);
        List<LoggedCore> rest = cores.stream()
                .filter(core -> poor.stream().noneMatch(area -> area.cores().contains(core)))
                .toList();
        WaterShares shares = known.waterShares();
        Subject subject = new Subject(cores, known.phosphorus(), known.ph());
        return poor.stream()
                .map(area -> new AreaFinding(
                        area.name(),
                        area.spot(),
                        area.cores().stream().map(LoggedCore::id).toList(),
                        Comparison.of(area.cores(), rest),
                        new CauseRanking(
                                        subject,
                                        area.cores(),
                                        rest,
                                        area.spot()
                                                .map(spot -> known.over(spot, shares))
                                                .orElse(Surroundings.Over.NOTHING))
                                .of(causes)))
                .toList();
    }

    /** The surface of a reading, if one can be drawn. */
    public Optional<Surface> surface(Quantity quantity) {
        return surfaces.stream().filter(s -> s.quantity() == quantity).findFirst();
    }

    /** The drawn surface that gains most over the mean of the cores. */
    public Optional<Surface> clearestSurface() {
        Stream<Surface> drawn = surfaces.stream().filter(s -> s.values().isPresent());
        return drawn.min(java.util.Comparator.comparingDouble(s -> s.rmse() / s.meanRmse()));
    }

    /** How the numbers came about, by JSON pointer into {@code findings.json}. */
    public Map<String, Account> accounts() {
        return FindingAccounts.of(this);
    }
}

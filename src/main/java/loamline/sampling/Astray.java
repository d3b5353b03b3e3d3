package loamline.sampling;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loamline.account.Problem;
import loamline.account.Where;
import loamline.geometry.Region;
import loamline.sampling.CorePlan.Stratum;
import loamline.yard.Core;
import loamline.yard.OwnCore;
import loamline.yard.Yard;
import loamline.yard.Zone;

/** Says which cores set by hand do not lie where their stratum is, one line a core: the first that holds. */
final class Astray {
    /** Hands place no finer: a core this near to ground lies on it, m. */
    private static final double ON_GROUND_M = 0.01;

    private final Yard yard;
    private final List<Zone> zones;
    private final EligibleGround eligible;

    Astray(Yard yard, List<Zone> zones, EligibleGround eligible) {
        this.yard = yard;
        this.zones = zones;
        this.eligible = eligible;
    }

    /** @param homes number of each core's stratum, 0 for none */
    List<Problem> of(String bag, List<OwnCore> cores, int[] homes, List<Stratum> strata) {
        List<Problem> problems = new ArrayList<>();
        for (int i = 0; i < homes.length; i++) {
            int which = i;
            offGround(cores.get(i).core())
                    .or(() -> inAnothersStratum(which, cores, homes, strata))
                    .ifPresent(problems::add);
        }
        if (strata.size() > cores.size()) {
            problems.add(Problem.warning(
                    "STRATA_WITHOUT_CORE",
                    Where.WHOLE,
                    "Bag " + bag + " has " + cores.size() + " cores for " + strata.size()
                            + " strata of equal area, so some turf is not sampled. Plan the rest again."));
        }
        return problems;
    }

    private Optional<Problem> offGround(Core core) {
        Optional<Zone> at =
                zones.stream().filter(zone -> isOn(zone.net(), core)).findFirst();
        if (at.isEmpty()) {
            return Optional.of(problem("CORE_OFF_TURF", core, " does not lie on turf. Move it onto its zone."));
        }
        String zone = at.get().name();
        if (!core.zone().isBlank() && !core.zone().equals(zone)) {
            return Optional.of(problem(
                    "CORE_IN_OTHER_ZONE",
                    core,
                    " lies in zone \"" + zone + "\" but counts for zone \"" + core.zone() + "\". Move it back."));
        }
        return isOn(eligible.in(at.get()), core)
                ? Optional.empty()
                : Optional.of(problem(
                        "CORE_IN_BUFFER",
                        core,
                        " lies nearer to an edge, a head, a trunk or a keep-away spot than the buffers allow."
                                + " Move it away, or make the buffer smaller."));
    }

    private Optional<Problem> inAnothersStratum(int which, List<OwnCore> cores, int[] homes, List<Stratum> strata) {
        Core core = cores.get(which).core();
        if (isIn(homes[which], strata, core)) {
            return Optional.empty();
        }
        for (int i = 0; i < homes.length; i++) {
            if (i != which && isIn(homes[i], strata, core)) {
                return Optional.of(problem(
                        "CORE_IN_OTHER_STRATUM",
                        core,
                        " lies in the stratum of " + cores.get(i).core().id() + ", which now counts double; its own has"
                                + " no core. Move it back, or plan the rest again."));
            }
        }
        return Optional.empty();
    }

    private static boolean isIn(int home, List<Stratum> strata, Core core) {
        return home > 0 && strata.get(home - 1).ground().covers(core.at());
    }

    private static boolean isOn(Region ground, Core core) {
        return !ground.isEmpty() && (ground.covers(core.at()) || ground.distanceToEdge(core.at()) <= ON_GROUND_M);
    }

    private Problem problem(String code, Core core, String words) {
        String name = core.id().isBlank() ? "A core" : core.id();
        return Problem.warning(code, Where.feature(yard.indexOf(core)), name + words);
    }
}

package loamline.sampling;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import loamline.geometry.Point;
import loamline.sampling.CorePlan.Stratum;

/**
 * Which stratum each core of a bag stands for, where cores were set by hand.
 *
 * <p>A core stands for the stratum it lies in; of several in one, the one nearest to where the planner would put a core.
 * Those left over stand for the strata left over, the nearest first. With more cores than strata, some stand for none.
 */
final class Homes {
    private record Claim(int core, int stratum, boolean within, double distanceM) {}

    private Homes() {}

    /**
     * @param strata numbered from 1 in order
     * @param centres where the planner would put the core of each stratum
     * @return numbers of strata, by core; 0 for none
     */
    static int[] of(List<Stratum> strata, List<Point> centres, List<Point> cores) {
        List<Claim> claims = new ArrayList<>();
        for (int c = 0; c < cores.size(); c++) {
            Point at = cores.get(c);
            for (int s = 0; s < strata.size(); s++) {
                boolean within = strata.get(s).ground().covers(at);
                claims.add(new Claim(c, s, within, centres.get(s).distanceTo(at)));
            }
        }
        claims.sort(Comparator.comparing((Claim claim) -> !claim.within()).thenComparingDouble(Claim::distanceM));
        int[] homes = new int[cores.size()];
        boolean[] taken = new boolean[strata.size()];
        for (Claim claim : claims) {
            if (homes[claim.core()] == 0 && !taken[claim.stratum()]) {
                homes[claim.core()] = strata.get(claim.stratum()).number();
                taken[claim.stratum()] = true;
            }
        }
        return homes;
    }
}

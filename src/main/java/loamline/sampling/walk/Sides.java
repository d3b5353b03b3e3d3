package loamline.sampling.walk;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Chooses on which side of a wall one stands to reach a stop that lies on it. */
final class Sides {
    private final Network network;

    /** The open sectors of each stop. */
    private final List<int[]> choices;

    Sides(WallMap map, Network network, List<Foothold> footholds) {
        this.network = network;
        this.choices = footholds.stream()
                .map(f -> f.isOpen() ? map.openSectors(map.cornerAt(f.at())) : new int[0])
                .toList();
    }

    /**
     * One sector a stop: the one from which most other stops can be reached, by the least sum of ways if there are as
     * many, else the first; -1 for a stop without any.
     */
    int[] chosen() {
        return choices.stream().mapToInt(this::best).toArray();
    }

    private int best(int[] choice) {
        return choice.length < 2
                ? IntStream.of(choice).findFirst().orElse(-1)
                : Arrays.stream(choice)
                        .mapToObj(this::view)
                        .min(Comparator.comparingLong(View::unreached).thenComparingDouble(View::sumM))
                        .map(View::sector)
                        .orElse(-1);
    }

    /** What a sector offers: stops that cannot be reached from it, and the sum of the ways to the others. */
    private record View(int sector, long unreached, double sumM) {}

    private View view(int sector) {
        Network.Reach reach = network.from(sector);
        double[] nearestM = choices.stream()
                .mapToDouble(
                        c -> IntStream.of(c).mapToDouble(reach::distanceM).min().orElse(Double.POSITIVE_INFINITY))
                .toArray();
        double[] reachedM = Arrays.stream(nearestM).filter(Double::isFinite).toArray();
        return new View(
                sector,
                nearestM.length - reachedM.length,
                Arrays.stream(reachedM).sum());
    }
}

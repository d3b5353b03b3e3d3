package loamline.water.cups;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * How much each cup speaks for a fault.
 *
 * @param gains by cup: by how much its reading makes the fault likelier, as a logarithm; below 0 it speaks against, and 0
 *     is a cup that the head does not water either way
 * @param isLone whether all other cups together speak against the fault, clearly: a cup that was knocked over or stood
 *     under a drip must name nobody
 */
record Witnesses(List<Double> gains, boolean isLone) {
    /** Cups speak clearly against a fault if they make it less likely by a factor of e. */
    private static final double AGAINST = 1;

    /**
     * Hears the cups.
     *
     * @param faulty rates by head and cup with every fault that was found, mm/h
     */
    static Witnesses of(int head, Thrown thrown, double[][] faulty, double[] y, double[] quiet) {
        double[][] sound = faulty.clone();
        sound[head] = thrown.mapped()[head];
        double share = new OutputFit(faulty, y, quiet, new boolean[faulty.length]).noiseShare();
        double[] gains = logs(faulty, y, quiet, share);
        double[] without = logs(sound, y, quiet, share);
        double[] before = sound[head];
        double[] after = faulty[head];
        Arrays.setAll(gains, i -> before[i] == 0 && after[i] == 0 ? 0 : gains[i] - without[i]);
        return new Witnesses(Arrays.stream(gains).boxed().toList(), lone(gains, sound, faulty, y, quiet));
    }

    /** The log-likelihood of each reading by itself. */
    private static double[] logs(double[][] rates, double[] y, double[] quiet, double share) {
        OutputFit fit = new OutputFit(rates, y, quiet, new boolean[rates.length]);
        return IntStream.range(0, y.length)
                .mapToDouble(i -> {
                    double z = (y[i] - fit.fitted(i)) / (share * fit.size(i));
                    return -Math.log(fit.size(i)) - z * z / 2;
                })
                .toArray();
    }

    private static boolean lone(double[] gains, double[][] sound, double[][] faulty, double[] y, double[] quiet) {
        int most = IntStream.range(0, gains.length)
                .boxed()
                .max(Comparator.comparingDouble(i -> gains[i]))
                .orElseThrow();
        FaultLikelihood rest = new FaultLikelihood(Noise.without(y, most), Noise.without(quiet, most), sound.length);
        return rest.log(without(faulty, most)) < rest.log(without(sound, most)) - AGAINST;
    }

    private static double[][] without(double[][] rates, int cup) {
        return Arrays.stream(rates).map(head -> Noise.without(head, cup)).toArray(double[][]::new);
    }

    /** The cups that gain at least so much, the most telling first. */
    List<Integer> cups(double least) {
        return IntStream.range(0, gains.size())
                .boxed()
                .filter(i -> gains.get(i) >= least)
                .sorted(Comparator.comparingDouble((Integer i) -> gains.get(i)).reversed())
                .toList();
    }
}

package loamline.yard;

import java.util.List;
import java.util.stream.IntStream;
import loamline.account.Account;
import loamline.account.Source;

/**
 * The scale of an image from known distances.
 *
 * <p>Least squares of relative errors: with lengths L on the ground and d on the image as placed, the factor f that
 * makes Σ ln²(f · d / L) least is the geometric mean of L / d. Ratios count alike whichever way they are off, so a
 * length typed in the wrong unit stands out rather than drags the others along. The distances themselves are taken as
 * exact and the clicks as off by {@link Digitizing#POINTING_PX} in x and in y.
 *
 * @param factor what the image's present scale is to be multiplied by, above 0
 * @param residualsRel what is left of each distance: 0.02 where it is 2 % longer on the fitted image than measured
 * @param errorRel standard error of the scale as a share of it, above 0: the greater of what the clicks allow and what
 *     the distances show
 */
public record ScaleFit(double factor, List<Double> residualsRel, double errorRel) {
    /** Residuals beyond this are worth a warning: common practice, no source. */
    public static final double WARN_REL = 0.02;

    private static final Source LEAST_SQUARES = new Source(
            "scale-log-ratios", "Least squares of log ratios, derived; warning at 2 %: common practice, no source");

    public ScaleFit {
        residualsRel = List.copyOf(residualsRel);
    }

    /**
     * The scale that fits an image's distances best.
     *
     * @throws IllegalArgumentException if it has none
     */
    public static ScaleFit of(Backdrop image) {
        List<KnownDistance> known = image.knownDistances();
        if (known.isEmpty()) {
            throw new IllegalArgumentException("a scale needs a known distance");
        }
        double[] logs = known.stream()
                .mapToDouble(distance -> Math.log(distance.lengthM() / image.placedM(distance)))
                .toArray();
        double mean = IntStream.range(0, logs.length)
                .mapToDouble(i -> logs[i])
                .average()
                .orElseThrow();
        List<Double> residuals = IntStream.range(0, logs.length)
                .mapToObj(i -> Math.expm1(mean - logs[i]))
                .toList();
        return new ScaleFit(Math.exp(mean), residuals, Math.max(pointingRel(known), spreadRel(logs, mean)));
    }

    /** An image as it is placed, set against its distances and not changed. */
    public static ScaleFit check(Backdrop image) {
        List<Double> residuals = image.knownDistances().stream()
                .map(distance -> image.placedM(distance) / distance.lengthM() - 1)
                .toList();
        return new ScaleFit(1, residuals, image.scaleErrorRel());
    }

    /** √2 · p / d for one distance; independent distances average it out. */
    private static double pointingRel(List<KnownDistance> known) {
        double sum = known.stream()
                .mapToDouble(distance -> 2 * Math.pow(Digitizing.POINTING_PX / distance.lengthPx(), 2))
                .sum();
        return Math.sqrt(sum) / known.size();
    }

    /** Standard error of the mean of the logs; 0 for one distance, which shows no spread. */
    private static double spreadRel(double[] logs, double mean) {
        int n = logs.length;
        double squares = IntStream.range(0, n)
                .mapToDouble(i -> (logs[i] - mean) * (logs[i] - mean))
                .sum();
        return n < 2 ? 0 : Math.sqrt(squares / (n - 1) / n);
    }

    /** The position of the distance that is off most, by ratio; of equals, the first. */
    public int worst() {
        return IntStream.range(0, residualsRel.size())
                .boxed()
                .max((a, b) -> Double.compare(offBy(a), offBy(b)) != 0 ? Double.compare(offBy(a), offBy(b)) : b - a)
                .orElseThrow();
    }

    private double offBy(int index) {
        return Math.abs(Math.log1p(residualsRel.get(index)));
    }

    /** Whether a distance is off by more than {@link #WARN_REL}. */
    public boolean isOff() {
        return residualsRel.stream().anyMatch(residual -> Math.abs(residual) > WARN_REL);
    }

    /** How the scale of an image came about. */
    public static Account account(Backdrop image) {
        Account account = Account.of(
                "s = exp(Σ ln(L / d) / n), r = s · d / L − 1, se = max(√(Σ 2 p² / d²) / n, sd(ln(L / d)) / √n)",
                "Longer distances, and more of them, make it smaller. Lengths on the ground are taken as exact.",
                LEAST_SQUARES);
        account = account.with("n", image.knownDistances().size()).with("p_px", Digitizing.POINTING_PX);
        int number = 1;
        for (KnownDistance distance : image.knownDistances()) {
            account = account.with("L" + number + "_m", distance.lengthM())
                    .with("d" + number + "_px", distance.lengthPx());
            number++;
        }
        return account.with("s_m_per_px", image.placement().pixelM()).with("se", image.scaleErrorRel());
    }
}

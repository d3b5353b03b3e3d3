package loamline.water.cups;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import loamline.geometry.Point;
import loamline.water.HeadPattern;

/**
 * What the cups say of all heads of a valve.
 *
 * <p>Where no water was caught, or none of it can come from these heads, nothing is said of any head and the heads
 * stand as mapped.
 *
 * @param heads the most suspected first
 * @param found the heads as the cups have them, in the order in which they were given: turned, short, with the output
 *     that fits
 * @param scale readings over what the mapped flows promise: the valve's pressure, and the water that wind and air take
 * @param noiseShare how far readings scatter about that, as a share of the rate
 * @param misfits by cup, (reading − fit) / noise
 */
public record HeadFindings(
        List<HeadFinding> heads, List<HeadPattern> found, double scale, double noiseShare, List<Double> misfits) {
    /** A head with fewer cups in its throw is not judged. */
    public static final int LEAST_CUPS_A_HEAD = 3;

    /** Readings farther from the fit than so many standard deviations are flagged as odd. */
    static final double ODD = 4;

    /** A head that is not named but at least so likely at fault is called unsure. */
    private static final double DOUBTFUL = 0.25;

    /** A cup says so if its reading alone makes the fault e times likelier. */
    private static final double SAYS_SO = 1;

    public HeadFindings {
        heads = List.copyOf(heads);
        found = List.copyOf(found);
        misfits = List.copyOf(misfits);
    }

    /**
     * Judges the heads of a valve.
     *
     * @param heads by id, as mapped
     * @param cups readings of that valve alone
     */
    public static HeadFindings of(Map<String, HeadPattern> heads, List<Cup> cups) {
        boolean caught = cups.stream().anyMatch(cup -> cup.ml() > 0);
        List<Point> at = cups.stream().map(Cup::at).toList();
        List<HeadPattern> mapped = List.copyOf(heads.values());
        Thrown thrown = new Thrown(mapped, at);
        boolean reached = IntStream.range(0, mapped.size())
                .anyMatch(head -> !thrown.reachedBy(head).isEmpty());
        if (!caught || !reached) {
            return new HeadFindings(List.of(), mapped, 1, Noise.USUAL, List.of());
        }
        return new Judge(List.copyOf(heads.keySet()), thrown, cups).findings();
    }

    /** One judgement in the making. */
    private static final class Judge {
        private final List<String> ids;
        private final Thrown thrown;
        private final List<Cup> cups;
        private final double[] y;
        private final double[] quiet;

        /** Rates with arcs as found, outputs as mapped. */
        private final double[][] rates;

        /** Rates with everything that was found. */
        private final double[][] faulty;

        private final boolean[] freed;

        Judge(List<String> ids, Thrown thrown, List<Cup> cups) {
            this.ids = ids;
            this.thrown = thrown;
            this.cups = cups;
            this.y = cups.stream().mapToDouble(Cup::rateMmH).toArray();
            this.quiet = Noise.quietMmH(cups);
            this.rates = thrown.mapped();
            this.faulty = thrown.mapped();
            this.freed = new boolean[ids.size()];
        }

        HeadFindings findings() {
            List<Suspicion> suspicions = FaultFinder.of(thrown, y, quiet);
            List<HeadPattern> standing = new ArrayList<>(thrown.heads());
            for (Suspicion suspicion : suspicions) {
                if (suspicion.named()) {
                    HeadPattern now = standing(suspicion);
                    standing.set(suspicion.head(), now);
                    rates[suspicion.head()] = thrown.of(now);
                    faulty[suspicion.head()] = thrown.with(suspicion);
                    freed[suspicion.head()] = true;
                }
            }
            OutputFit fit = new OutputFit(rates, y, quiet, freed);
            List<HeadPattern> found = IntStream.range(0, standing.size())
                    .mapToObj(h -> standing.get(h).withOutput(fit.output(h)))
                    .toList();
            List<HeadFinding> heads = suspicions.stream().map(this::finding).toList();
            return new HeadFindings(heads, found, fit.scale(), fit.noiseShare(), misfits(fit));
        }

        /** The head with its arc as found; its output stays as mapped, for the fit to tell. */
        private HeadPattern standing(Suspicion suspicion) {
            HeadPattern mapped = thrown.heads().get(suspicion.head());
            return suspicion
                    .fault()
                    .filter(fault -> !(fault instanceof Fault.Output))
                    .map(fault -> fault.of(mapped))
                    .orElse(mapped);
        }

        private List<Double> misfits(OutputFit fit) {
            return IntStream.range(0, y.length)
                    .mapToObj(i -> (y[i] - fit.fitted(i)) / (fit.noiseShare() * fit.size(i)))
                    .toList();
        }

        private HeadFinding finding(Suspicion suspicion) {
            int head = suspicion.head();
            boolean[] doubted = freed.clone();
            doubted[head] = true;
            OutputFit.Factor factor = new OutputFit(rates, y, quiet, doubted).factor(head);
            List<Integer> reached = thrown.reachedBy(head);
            Optional<Witnesses> witnesses = Optional.of(suspicion)
                    .filter(Suspicion::named)
                    .map(against -> Witnesses.of(against.head(), thrown, faulty, y, quiet));
            boolean lone = witnesses.filter(Witnesses::isLone).isPresent();
            Verdict verdict = verdict(suspicion, reached.size(), lone);
            List<Integer> telling = witnesses.map(w -> w.cups(SAYS_SO)).orElse(reached);
            return new HeadFinding(
                    ids.get(head),
                    factor.factor(),
                    factor.low(),
                    factor.high(),
                    verdict,
                    suspicion.sure(),
                    turned(suspicion, verdict),
                    reached.size(),
                    telling.stream().map(i -> cups.get(i).name()).toList(),
                    FindingWords.of(suspicion, verdict, factor, reached.size()));
        }

        private static Verdict verdict(Suspicion suspicion, int reached, boolean lone) {
            if (reached < LEAST_CUPS_A_HEAD || lone) {
                return Verdict.UNSURE;
            }
            if (!suspicion.named()) {
                return suspicion.sure() > DOUBTFUL ? Verdict.UNSURE : Verdict.OK;
            }
            return suspicion.fault().map(HeadFindings::verdict).orElse(Verdict.UNSURE);
        }

        private static OptionalDouble turned(Suspicion suspicion, Verdict verdict) {
            return verdict == Verdict.TURNED && suspicion.fault().orElseThrow() instanceof Fault.Turned turned
                    ? OptionalDouble.of(turned.deg())
                    : OptionalDouble.empty();
        }
    }

    private static Verdict verdict(Fault fault) {
        return switch (fault.kind()) {
            case LESS -> Verdict.WEAK;
            case MORE -> Verdict.STRONG;
            case TURNED, SHORT_ARC -> Verdict.TURNED;
        };
    }

    /** The heads somebody should look at. */
    public List<HeadFinding> faults() {
        return heads.stream().filter(head -> head.verdict().isFault()).toList();
    }
}

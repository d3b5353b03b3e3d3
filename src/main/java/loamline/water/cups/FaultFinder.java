package loamline.water.cups;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loamline.water.cups.Thrown.Candidate;

/**
 * Finds the heads at fault: each fault of each head is weighed against "nothing is wrong" by how likely it makes the
 * readings, averaged over its amounts.
 *
 * <p>Before any cup is read, something is wrong with probability {@link #FAULTY}, with every head alike. Where it is more
 * likely than not that something is wrong, the likeliest fault is taken as given and the search goes on for another, up
 * to {@link #MOST_FAULTS}. Then each head that was taken is weighed again beside the others: two faults at once share
 * the suspicion between them until one of them is known, and a head taken too early is let go.
 */
final class FaultFinder {
    /** Probability that a valve somebody tests has a head at fault: common practice, no source. */
    static final double FAULTY = 0.5;

    /** A head is named when it is more likely at fault than not. */
    static final double NAMED = 0.5;

    /** A head that only stands out beside another at fault must do so with this probability. */
    static final double CLEAR = 0.95;

    /** Faults that are looked for one after the other; a valve with more is mended first and tested again. */
    static final int MOST_FAULTS = 3;

    private final Thrown thrown;
    private final FaultLikelihood likelihood;
    private final double[][] rates;
    private final List<Suspicion> taken = new ArrayList<>();

    private FaultFinder(Thrown thrown, double[] y, double[] quiet) {
        this.thrown = thrown;
        this.likelihood = new FaultLikelihood(y, quiet, thrown.heads().size());
        this.rates = thrown.mapped();
    }

    /**
     * All heads, the most suspected first.
     *
     * @param y readings, mm/h, in the order of the cups
     * @param quiet as {@link Noise#quietMmH} gives it
     */
    static List<Suspicion> of(Thrown thrown, double[] y, double[] quiet) {
        FaultFinder finder = new FaultFinder(thrown, y, quiet);
        finder.take();
        finder.lookBack();
        List<Suspicion> all = new ArrayList<>(finder.taken);
        all.addAll(finder.round());
        all.sort(Comparator.comparingDouble(Suspicion::sure).reversed());
        return all;
    }

    private void take() {
        boolean isWrong = true;
        while (isWrong && taken.size() < Math.min(MOST_FAULTS, rates.length)) {
            List<Suspicion> round = round();
            isWrong = round.stream().mapToDouble(Suspicion::sure).sum() > NAMED;
            if (isWrong) {
                take(round.get(0));
            }
        }
    }

    /**
     * Weighs each head that was taken once more, given the others, and keeps those that are named: one that was less
     * likely than not when it was taken alone must be so clearly, since two faults are rarer than one.
     */
    private void lookBack() {
        if (taken.size() == 1 && taken.get(0).named()) {
            return; // there is no other beside which it could look different
        }
        for (Suspicion before : List.copyOf(taken)) {
            taken.remove(before);
            rates[before.head()] = thrown.mapped()[before.head()];
            round().stream()
                    .filter(again -> again.head() == before.head() && again.sure() > (before.named() ? NAMED : CLEAR))
                    .forEach(this::take);
        }
    }

    private void take(Suspicion suspicion) {
        taken.add(suspicion);
        rates[suspicion.head()] = thrown.with(suspicion);
    }

    private boolean isTaken(int head) {
        return taken.stream().anyMatch(suspicion -> suspicion.head() == head);
    }

    /** Weighs the heads that are not taken yet, the most suspected first. */
    private List<Suspicion> round() {
        double sound = likelihood.log(rates);
        List<Weighed> heads = new ArrayList<>();
        for (int head = 0; head < rates.length; head++) {
            if (!isTaken(head)) {
                heads.add(weigh(head, sound));
            }
        }
        double most =
                Math.max(0, heads.stream().mapToDouble(Weighed::most).max().orElse(0));
        double all = (1 - FAULTY) * Math.exp(-most);
        for (Weighed head : heads) {
            all += FAULTY / heads.size() * head.weight(most);
        }
        double whole = all;
        return heads.stream()
                .map(head -> head.suspicion(FAULTY / heads.size() * head.weight(most) / whole))
                .sorted(Comparator.comparingDouble(Suspicion::sure).reversed())
                .toList();
    }

    private Weighed weigh(int head, double sound) {
        double[] asTaken = rates[head];
        Map<Fault.Kind, List<Gain>> gains = new EnumMap<>(Fault.Kind.class);
        for (Candidate candidate : thrown.candidates(head)) {
            rates[head] = candidate.rates();
            Gain gain = new Gain(candidate.fault(), likelihood.log(rates) - sound);
            gains.computeIfAbsent(candidate.fault().kind(), kind -> new ArrayList<>())
                    .add(gain);
        }
        rates[head] = asTaken;
        return new Weighed(head, gains);
    }

    /** A fault and by how much it makes the readings likelier than without it, as a logarithm. */
    private record Gain(Fault fault, double log) {}

    /** The faults of one head, weighed. */
    private record Weighed(int head, Map<Fault.Kind, List<Gain>> gains) {
        double most() {
            return gains.values().stream()
                    .flatMap(List::stream)
                    .mapToDouble(Gain::log)
                    .max()
                    .orElse(0);
        }

        /** Mean likelihood over kinds by how usual they are, and over amounts, each divided by exp(most). */
        double weight(double most) {
            double usual =
                    gains.keySet().stream().mapToDouble(Fault.Kind::usual).sum();
            return gains.keySet().stream()
                    .mapToDouble(kind -> kind.usual() / usual * mean(kind, most))
                    .sum();
        }

        private double mean(Fault.Kind kind, double most) {
            return of(kind).stream()
                    .mapToDouble(gain -> Math.exp(gain.log() - most))
                    .average()
                    .orElse(0);
        }

        private List<Gain> of(Fault.Kind kind) {
            return gains.getOrDefault(kind, List.of());
        }

        /** The likeliest amount of the likeliest kind. */
        Suspicion suspicion(double sure) {
            double most = most();
            Optional<Fault> fault = gains.keySet().stream()
                    .max(Comparator.comparingDouble(kind -> kind.usual() * mean(kind, most)))
                    .flatMap(kind -> of(kind).stream().max(Comparator.comparingDouble(Gain::log)))
                    .map(Gain::fault);
            return new Suspicion(head, sure, fault, sure > NAMED);
        }
    }
}

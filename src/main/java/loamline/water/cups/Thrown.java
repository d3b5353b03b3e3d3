package loamline.water.cups;

import java.util.List;
import java.util.stream.IntStream;
import loamline.geometry.Point;
import loamline.water.HeadPattern;

/** What the heads of a valve throw into the cups, as mapped and with every fault that is looked for. */
final class Thrown {
    private final List<HeadPattern> heads;
    private final List<Point> at;
    private final double[][] mapped;
    private final List<List<Candidate>> candidates;

    /**
     * Works it out.
     *
     * @param heads as mapped
     * @param at where the cups stand
     */
    Thrown(List<HeadPattern> heads, List<Point> at) {
        this.heads = heads;
        this.at = at;
        this.mapped = heads.stream().map(head -> rates(head, at)).toArray(double[][]::new);
        this.candidates = heads.stream()
                .map(head -> Fault.of(head.arc().isFull()).stream()
                        .map(fault -> new Candidate(fault, rates(fault.of(head), at)))
                        .toList())
                .toList();
    }

    private static double[] rates(HeadPattern head, List<Point> at) {
        return at.stream().mapToDouble(p -> head.rateMmH(p.x(), p.y())).toArray();
    }

    /** A fault and the rates of the head that has it. */
    static final class Candidate {
        private final Fault fault;
        private final double[] rates;

        private Candidate(Fault fault, double[] rates) {
            this.fault = fault;
            this.rates = rates;
        }

        Fault fault() {
            return fault;
        }

        /** By cup, mm/h; not to be changed. */
        double[] rates() {
            return rates;
        }
    }

    /** The heads as mapped. */
    List<HeadPattern> heads() {
        return heads;
    }

    /** Rates as mapped, by head and cup, mm/h: rows may be replaced, not changed. */
    double[][] mapped() {
        return mapped.clone();
    }

    /** Rates of a head that throws something else, by cup, mm/h. */
    double[] of(HeadPattern head) {
        return rates(head, at);
    }

    /** Rates of a head with what it is suspected of, by cup, mm/h. */
    double[] with(Suspicion suspicion) {
        HeadPattern head = heads.get(suspicion.head());
        return of(suspicion.fault().map(fault -> fault.of(head)).orElse(head));
    }

    /** The faults of a head. */
    List<Candidate> candidates(int head) {
        return candidates.get(head);
    }

    /** The cups on which water of a head falls, as mapped. */
    List<Integer> reachedBy(int head) {
        return IntStream.range(0, at.size())
                .filter(cup -> mapped[head][cup] > 0)
                .boxed()
                .toList();
    }
}

package loamline.water.cups;

import java.util.List;
import java.util.stream.IntStream;
import loamline.geometry.Point;
import loamline.water.HeadPattern;

/**
 * What the heads of a valve throw into the cups, as mapped and with every fault that is looked for.
 *
 * @param heads as mapped
 * @param at where the cups stand
 * @param mapped rates, mm/h, by head and cup
 * @param candidates the faults of each head
 */
record Thrown(List<HeadPattern> heads, List<Point> at, double[][] mapped, List<List<Candidate>> candidates) {
    /** A fault and the rates of the head that has it, mm/h by cup. */
    record Candidate(Fault fault, double[] rates) {}

    static Thrown of(List<HeadPattern> heads, List<Point> at) {
        double[][] mapped = heads.stream().map(head -> rates(head, at)).toArray(double[][]::new);
        List<List<Candidate>> candidates = heads.stream()
                .map(head -> Fault.of(head.arc().isFull()).stream()
                        .map(fault -> new Candidate(fault, rates(fault.of(head), at)))
                        .toList())
                .toList();
        return new Thrown(heads, at, mapped, candidates);
    }

    static double[] rates(HeadPattern head, List<Point> at) {
        return at.stream().mapToDouble(p -> head.rateMmH(p.x(), p.y())).toArray();
    }

    int cups() {
        return at.size();
    }

    /** The cups on which water of a head falls, as mapped. */
    List<Integer> reachedBy(int head) {
        return IntStream.range(0, cups())
                .filter(cup -> mapped[head][cup] > 0)
                .boxed()
                .toList();
    }
}

package loamline.water.cups;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import loamline.water.HeadPattern;

/**
 * Something that may be wrong with a head, and by how much.
 *
 * <p>Only what is worth a visit is looked for: a head that gives at most 0.8 or at least 1.25 of its share, one that is
 * turned by 10° or more, one whose arc ends a quarter short or more. A smaller difference counts as natural.
 */
sealed interface Fault {
    /** What the head then throws. */
    HeadPattern of(HeadPattern head);

    Kind kind();

    /** The kinds of fault. */
    enum Kind {
        LESS(0.4),
        MORE(0.1),
        TURNED(0.4),
        SHORT_ARC(0.1);

        private final double usual;

        Kind(double usual) {
            this.usual = usual;
        }

        /** Its share among faults before any cup is read: common practice, no source. */
        double usual() {
            return usual;
        }
    }

    /** The head gives a factor of its share, 0 or more. */
    record Output(double factor) implements Fault {
        @Override
        public HeadPattern of(HeadPattern head) {
            return head.withOutput(factor);
        }

        @Override
        public Kind kind() {
            return factor < 1 ? Kind.LESS : Kind.MORE;
        }
    }

    /** The head is turned clockwise. */
    record Turned(double deg) implements Fault {
        @Override
        public HeadPattern of(HeadPattern head) {
            return head.turnedBy(deg);
        }

        @Override
        public Kind kind() {
            return Kind.TURNED;
        }
    }

    /**
     * The head sweeps a part of its arc, and as thick as before: with less water where its flow follows the arc.
     *
     * @param share of the arc that is left, above 0 to 1
     * @param atFirstEdge whether the part begins at the first edge; else it ends at the second
     */
    record ShortArc(double share, boolean atFirstEdge) implements Fault {
        @Override
        public HeadPattern of(HeadPattern head) {
            double sweepDeg = head.arc().sweepDeg();
            HeadPattern from = atFirstEdge ? head : head.turnedBy(sweepDeg * (1 - share));
            return from.narrowedTo(sweepDeg * share).withOutput(share);
        }

        @Override
        public Kind kind() {
            return Kind.SHORT_ARC;
        }
    }

    /** Everything that is looked for in a head. */
    static List<Fault> of(boolean fullCircle) {
        Stream<Fault> outputs = DoubleStream.of(0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 1.25, 1.5, 1.75, 2)
                .mapToObj(Output::new);
        Stream<Fault> turns = IntStream.rangeClosed(2, 12)
                .boxed()
                .flatMap(i -> Stream.of(5.0 * i, -5.0 * i))
                .map(Turned::new);
        Stream<Fault> parts = DoubleStream.of(0.25, 0.5, 0.75)
                .boxed()
                .flatMap(share -> Stream.of(new ShortArc(share, true), new ShortArc(share, false)));
        return Stream.concat(outputs, fullCircle ? Stream.empty() : Stream.concat(turns, parts))
                .toList();
    }
}

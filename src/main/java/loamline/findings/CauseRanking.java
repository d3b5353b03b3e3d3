package loamline.findings;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import loamline.reference.Cause;
import loamline.reference.CauseSign;

/**
 * Weighs causes by their signs.
 *
 * <p>A sign against a level counts by how far the share of the area's cores beyond the level departs from a third; a
 * sign against the rest by how far Cliff's delta departs from a medium effect. Both count less with few cores: n / (n + 1) of their weight. The weights are
 * judgement, kept in a table; simulated yards with a planted cause test them.
 */
final class CauseRanking {
    /** Points of “something else”, which no sign speaks for. */
    private static final double SOMETHING_ELSE = 0.7;

    /** Named only with so much of the weight of all causes. */
    private static final double LIKELY_SHARE = 0.52;

    /** Below this, a cause is told as unlikely. */
    private static final double POSSIBLE_SHARE = 0.03;

    /** A third of the cores beyond a level speaks neither way. */
    private static final double TURNING_SHARE = 1.0 / 3;

    /** Cliff's delta that speaks neither way: a cause shows a medium effect or more (Romano et al. 2006, from memory). */
    private static final double TURNING_DELTA = 0.33;

    /** Less than this tells neither way, in points. */
    private static final double TELLS = 0.1;

    private final Subject subject;
    private final List<LoggedCore> area;
    private final List<LoggedCore> rest;
    private final Surroundings.Over overSpot;

    /** @param overSpot what is known over the area as drawn; counts like one more core */
    CauseRanking(Subject subject, List<LoggedCore> area, List<LoggedCore> rest, Surroundings.Over overSpot) {
        this.subject = subject;
        this.overSpot = overSpot;
        this.area = area;
        this.rest = rest;
    }

    /** All causes, the weightiest first; at most the first is likely. */
    List<RankedCause> of(List<Cause> causes) {
        List<RankedCause> raw = causes.stream()
                .map(this::weighed)
                .sorted(Comparator.comparingDouble(RankedCause::points).reversed())
                .toList();
        double all = raw.stream().mapToDouble(cause -> Math.exp(cause.points())).sum() + Math.exp(SOMETHING_ELSE);
        return raw.stream()
                .map(cause ->
                        cause.with(standing(cause, Math.exp(cause.points()) / all), Math.exp(cause.points()) / all))
                .toList();
    }

    private static RankedCause.Standing standing(RankedCause cause, double share) {
        return switch (cause.telling()) {
            case FOR -> share >= LIKELY_SHARE ? RankedCause.Standing.LIKELY : possible(share);
            case MISSING -> RankedCause.Standing.UNTESTED;
            default -> possible(share);
        };
    }

    private static RankedCause.Standing possible(double share) {
        return share >= POSSIBLE_SHARE ? RankedCause.Standing.POSSIBLE : RankedCause.Standing.UNLIKELY;
    }

    private RankedCause weighed(Cause cause) {
        List<Evidence> evidence = cause.signs().stream().map(this::evidence).toList();
        double points =
                cause.prior() + evidence.stream().mapToDouble(Evidence::points).sum();
        return new RankedCause(cause, RankedCause.Standing.POSSIBLE, points, 0, evidence);
    }

    private Evidence evidence(CauseSign sign) {
        double[] here = DoubleStream.concat(DoubleStream.of(values(area, sign)), overSpot(sign))
                .toArray();
        double[] there = values(rest, sign);
        if (here.length == 0 || (sign.test().isContrast() && there.length == 0)) {
            return new Evidence(sign, Evidence.Stand.MISSING, 0, 0, 0, OptionalDouble.empty(), OptionalDouble.empty());
        }
        double strength = strength(sign, here, there) * here.length / (here.length + 1);
        double points = strength * (strength > 0 ? sign.weightFor() : sign.weightAgainst());
        Evidence.Stand stand = Math.abs(points) < TELLS
                ? Evidence.Stand.OPEN
                : points > 0 ? Evidence.Stand.FOR : Evidence.Stand.AGAINST;
        return new Evidence(sign, stand, points, here.length, measured(sign), median(here), median(there));
    }

    /** From −1, the opposite is clear, to 1, it is clearly so. */
    private static double strength(CauseSign sign, double[] here, double[] there) {
        double level = sign.level().orElse(0);
        return switch (sign.test()) {
            case ABOVE -> beyond(share(here, v -> v > level), 0, TURNING_SHARE);
            case NOT_ABOVE -> -beyond(share(here, v -> v > level), 0, TURNING_SHARE);
            case BELOW -> beyond(share(here, v -> v < level), 0, TURNING_SHARE);
            case HIGHER -> beyond(Comparison.cliff(here, there), -1, TURNING_DELTA);
            case LOWER -> beyond(Comparison.cliff(there, here), -1, TURNING_DELTA);
            case NOT_LOWER -> -beyond(Comparison.cliff(there, here), -1, TURNING_DELTA);
        };
    }

    /** A value from {@code least} to 1 as −1 to 1, straight to either side of its turning point. */
    private static double beyond(double value, double least, double turning) {
        return value >= turning ? (value - turning) / (1 - turning) : (value - turning) / (turning - least);
    }

    private static double share(double[] values, java.util.function.DoublePredicate holds) {
        return (double) Arrays.stream(values).filter(holds).count() / values.length;
    }

    private double[] values(List<LoggedCore> cores, CauseSign sign) {
        return cores.stream()
                .map(core -> subject.of(core, sign))
                .filter(OptionalDouble::isPresent)
                .mapToDouble(OptionalDouble::getAsDouble)
                .toArray();
    }

    private DoubleStream overSpot(CauseSign sign) {
        return Quantity.of(sign.subject())
                .flatMap(quantity -> Optional.ofNullable(overSpot.means().get(quantity)))
                .stream()
                .mapToDouble(value -> value);
    }

    /** For how many places of the area cups say what a sign asks of the water. */
    private int measured(CauseSign sign) {
        if (!sign.subject().equals(Quantity.WATER.key())) {
            return 0;
        }
        return (int) area.stream().filter(LoggedCore::waterMeasured).count() + (overSpot.waterMeasured() ? 1 : 0);
    }

    private static OptionalDouble median(double[] values) {
        double[] sorted = DoubleStream.of(values).sorted().toArray();
        int n = sorted.length;
        return n == 0 ? OptionalDouble.empty() : OptionalDouble.of((sorted[(n - 1) / 2] + sorted[n / 2]) / 2);
    }
}

package loamline.findings;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import loamline.reference.Cause;
import loamline.reference.CauseSign;

/**
 * Weighs causes by their signs.
 *
 * <p>A sign against a level counts by how far the share of the area's cores beyond the level departs from a half; a sign
 * against the rest by Cliff's delta. Both count less with few cores: n / (n + 1) of their weight. The weights are
 * judgement, kept in a table; simulated yards with a planted cause test them.
 */
final class CauseRanking {
    /** Points of “something else”, which no sign speaks for. */
    private static final double SOMETHING_ELSE = 1.8;

    /** Named only with so much of the weight of all causes. */
    private static final double LIKELY_SHARE = 0.6;

    /** Below this, a cause is told as unlikely. */
    private static final double POSSIBLE_SHARE = 0.03;

    /** Less than this tells neither way, in points. */
    private static final double TELLS = 0.1;

    private final Subject subject;
    private final List<LoggedCore> area;
    private final List<LoggedCore> rest;

    CauseRanking(Subject subject, List<LoggedCore> area, List<LoggedCore> rest) {
        this.subject = subject;
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
                .map(cause -> cause.with(standing(cause, Math.exp(cause.points()) / all), Math.exp(cause.points()) / all))
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
        double points = cause.prior() + evidence.stream().mapToDouble(Evidence::points).sum();
        return new RankedCause(cause, RankedCause.Standing.POSSIBLE, points, 0, evidence);
    }

    private Evidence evidence(CauseSign sign) {
        double[] here = values(area, sign);
        double[] there = values(rest, sign);
        boolean contrast = sign.test() == CauseSign.Test.HIGHER || sign.test() == CauseSign.Test.LOWER;
        if (here.length == 0 || (contrast && there.length == 0)) {
            return new Evidence(
                    sign, Evidence.Stand.MISSING, 0, 0, OptionalDouble.empty(), OptionalDouble.empty());
        }
        double strength = strength(sign, here, there) * here.length / (here.length + 1);
        double points = strength * (strength > 0 ? sign.weightFor() : sign.weightAgainst());
        Evidence.Stand stand = Math.abs(points) < TELLS
                ? Evidence.Stand.OPEN
                : points > 0 ? Evidence.Stand.FOR : Evidence.Stand.AGAINST;
        return new Evidence(sign, stand, points, here.length, median(here), median(there));
    }

    /** From −1, the opposite is clear, to 1, it is clearly so. */
    private static double strength(CauseSign sign, double[] here, double[] there) {
        double level = sign.level().orElse(0);
        return switch (sign.test()) {
            case ABOVE -> 2 * share(here, v -> v > level) - 1;
            case BELOW -> 2 * share(here, v -> v < level) - 1;
            case HIGHER -> Comparison.cliff(here, there);
            case LOWER -> -Comparison.cliff(here, there);
        };
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

    private static OptionalDouble median(double[] values) {
        double[] sorted = DoubleStream.of(values).sorted().toArray();
        int n = sorted.length;
        return n == 0 ? OptionalDouble.empty() : OptionalDouble.of((sorted[(n - 1) / 2] + sorted[n / 2]) / 2);
    }
}

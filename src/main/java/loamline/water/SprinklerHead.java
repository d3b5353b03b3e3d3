package loamline.water;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import loamline.geometry.Point;
import loamline.geometry.Region;
import loamline.water.Coverage.Destination;
import loamline.yard.Head;
import loamline.yard.Kind;

/**
 * A head whose water can be told, with what does not change when others move.
 *
 * @param head as drawn
 * @param pattern what it throws, moved by wind if there is any
 * @param reach the ground where its water falls
 * @param dark what stands in its way and the ground behind, which it does not reach; empty if nothing does
 * @param shares where its water falls: shares of its flow by {@link Destination#ground}; together 1
 */
record SprinklerHead(Head head, HeadPattern pattern, Region reach, Region dark, Map<String, Double> shares) {
    SprinklerHead {
        shares = Collections.unmodifiableMap(new LinkedHashMap<>(shares));
    }

    /** Less than this behind obstacles is the rounding of outlines, m². */
    private static final double STOPPED_M2 = 0.01;

    static SprinklerHead of(Head head, HeadPattern still, Lawn lawn, Optional<Shadows> shadows, WaterOptions options) {
        Point moved = still.at()
                .plus(
                        options.driftM() * Arc.sinDeg(options.driftToDeg()),
                        options.driftM() * Arc.sinDeg(options.driftToDeg() + 90));
        HeadPattern pattern = still.movedTo(moved);
        Region dark = shadows.map(s -> s.behindAll(pattern)).orElse(Region.EMPTY);
        Region arc = Reach.of(pattern);
        Region reach = dark.isEmpty() ? arc : arc.minus(dark);
        return new SprinklerHead(head, pattern, reach, dark, shares(pattern, reach, lawn));
    }

    /** Share of its water on turf. */
    double onTurf() {
        return shares.getOrDefault(Destination.TURF, 0.0);
    }

    private static Map<String, Double> shares(HeadPattern pattern, Region reach, Lawn lawn) {
        Map<String, Double> shares = new LinkedHashMap<>();
        if (lawn.turf().covers(reach) && isWhole(pattern, reach)) {
            shares.put(Destination.TURF, 1.0);
            return shares;
        }
        Region left = take(shares, Destination.TURF, lawn.turf(), reach, pattern);
        if (lawn.lot().isPresent() && !left.isEmpty()) {
            Region inside = left.intersection(lawn.lot().get());
            put(shares, Destination.OUTSIDE, left.minus(inside), pattern);
            left = inside;
        }
        for (Map.Entry<Kind, Region> cover : lawn.covers().entrySet()) {
            left = take(shares, cover.getKey().word(), cover.getValue(), left, pattern);
        }
        put(shares, Destination.OTHER, left, pattern);
        double stopped = isWhole(pattern, reach) ? 0 : 1 - sum(shares);
        double whole = sum(shares) + stopped;
        shares.replaceAll((ground, share) -> share / whole);
        if (stopped > 0) {
            shares.put(Destination.OBSTACLES, stopped / whole);
        }
        return shares;
    }

    /** Whether nothing stands in the way. */
    private static boolean isWhole(HeadPattern pattern, Region reach) {
        return pattern.throwAreaM2() - reach.areaM2() <= STOPPED_M2;
    }

    /** Notes what falls on a sort of ground and gives the rest of the reach. */
    private static Region take(
            Map<String, Double> shares, String name, Region ground, Region left, HeadPattern pattern) {
        Region part = left.isEmpty() ? Region.EMPTY : left.intersection(ground);
        put(shares, name, part, pattern);
        return part.isEmpty() ? left : left.minus(part);
    }

    private static void put(Map<String, Double> shares, String name, Region part, HeadPattern pattern) {
        if (!part.isEmpty()) {
            double share = ThrownWater.share(pattern, part);
            if (share > LEAST_SHARE) {
                shares.put(name, share);
            }
        }
    }

    /** A smaller share is the rounding of outlines. */
    private static final double LEAST_SHARE = 1e-9;

    private static double sum(Map<String, Double> shares) {
        return shares.values().stream().mapToDouble(share -> share).sum();
    }
}

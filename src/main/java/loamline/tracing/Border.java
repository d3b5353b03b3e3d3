package loamline.tracing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the border of a proposal lies on.
 *
 * <p>The border is read in short stretches. For each, colour and texture are averaged over cells a little inside
 * and over cells a little outside, so that noise cancels, and compared.
 *
 * <p>A change is put down to shadow where both sides have the same hue and saturation at different lightness:
 * shade dims red, green and blue by about the same share, which scales all coordinates of OKLab alike. Only
 * coloured ground is judged so; grey has no hue to compare.
 */
final class Border {
    private enum Lies {
        CLEAR,
        SHADOW,
        FAINT,
        LIMIT,
        PICTURE_EDGE
    }

    /** Cell sides read together. */
    private static final int STRETCH = 16;

    /** Cells between the border's own and those compared: past the blur. */
    private static final int REACH = 2;

    /** Contrast, in units of {@link Features}, below which an edge is hardly seen. */
    private static final double FAINT_CONTRAST = 0.035;

    /** Lightness in shade as a share of that in sun, from a tenth of the light ... */
    private static final double DEEPEST_SHADE = 0.45;

    /** ... to two thirds of it. */
    private static final double LIGHTEST_SHADE = 0.88;

    /** Hue and saturation, as a / L and b / L, that differ by less are the same. */
    private static final double SAME_HUE = 0.05;

    /** Ground of less saturation is grey. */
    private static final double GREY = 0.06;

    /** Share of the border that is worth a word. */
    private static final double WORTH_A_WORD = 0.05;

    private final Features features;

    /** Cell sides by what they lie on and which way they look. */
    private final Map<Lies, Map<Doubt.Side, Integer>> lengths = new EnumMap<>(Lies.class);

    private int whole;

    private Border(Features features) {
        this.features = features;
    }

    static Border of(Features features, List<Ring> rings) {
        Border border = new Border(features);
        for (Ring ring : rings) {
            for (int from = 0; from < ring.length(); from += STRETCH) {
                int to = Math.min(ring.length(), from + STRETCH);
                Stretch stretch = border.new Stretch(ring, from, to);
                border.lengths
                        .computeIfAbsent(stretch.lies(), lies -> new EnumMap<>(Doubt.Side.class))
                        .merge(stretch.side(), to - from, Integer::sum);
                border.whole += to - from;
            }
        }
        return border;
    }

    /** State of a cell; outside the window there is no data. */
    private byte state(int x, int y) {
        boolean in = x >= 0 && x < features.width && y >= 0 && y < features.height;
        return in ? features.state[y * features.width + x] : Features.NO_DATA;
    }

    /** A few sides of cells in a row. */
    private final class Stretch {
        private final double[] inside = new double[Features.CHANNELS];
        private final double[] outside = new double[Features.CHANNELS];
        private int sides;
        private int compared;
        private int limits;
        private int ends;
        private int outX;
        private int outY;

        Stretch(Ring ring, int from, int to) {
            for (int i = from; i < to; i++) {
                add(ring.cellX(i), ring.cellY(i), ring.outX(i), ring.outY(i));
            }
        }

        private void add(int x, int y, int dx, int dy) {
            sides++;
            outX += dx;
            outY += dy;
            byte beyond = state(x + dx, y + dy);
            limits += beyond == Features.CLOSED ? 1 : 0;
            ends += beyond == Features.NO_DATA ? 1 : 0;
            int inX = x - REACH * dx;
            int inY = y - REACH * dy;
            int farX = x + (1 + REACH) * dx;
            int farY = y + (1 + REACH) * dy;
            if (state(inX, inY) == Features.OPEN && state(farX, farY) == Features.OPEN) {
                compared++;
                for (int channel = 0; channel < Features.CHANNELS; channel++) {
                    inside[channel] += features.planes[channel][inY * features.width + inX];
                    outside[channel] += features.planes[channel][farY * features.width + farX];
                }
            }
        }

        Doubt.Side side() {
            if (Math.abs(outX) > Math.abs(outY)) {
                return outX > 0 ? Doubt.Side.RIGHT : Doubt.Side.LEFT;
            }
            return outY > 0 ? Doubt.Side.BOTTOM : Doubt.Side.TOP;
        }

        Lies lies() {
            if (2 * limits >= sides) {
                return Lies.LIMIT;
            }
            if (2 * ends >= sides) {
                return Lies.PICTURE_EDGE;
            }
            if (contrast() < FAINT_CONTRAST) {
                return Lies.FAINT;
            }
            return isShadow() ? Lies.SHADOW : Lies.CLEAR;
        }

        private double contrast() {
            double sum = 0;
            for (int channel = 0; channel < Features.CHANNELS; channel++) {
                sum += Math.pow(outside[channel] - inside[channel], 2);
            }
            return compared == 0 ? 0 : Math.sqrt(sum) / compared;
        }

        private boolean isShadow() {
            double ratio = inside[0] / outside[0];
            double shade = Math.min(ratio, 1 / ratio);
            double hue =
                    Math.hypot(perLight(inside, 1) - perLight(outside, 1), perLight(inside, 2) - perLight(outside, 2));
            double saturation = Math.hypot(perLight(inside, 1), perLight(inside, 2));
            return shade >= DEEPEST_SHADE && shade <= LIGHTEST_SHADE && hue <= SAME_HUE && saturation >= GREY;
        }

        private double perLight(double[] sums, int channel) {
            return sums[channel] / (sums[0] / Features.LIGHTNESS_WEIGHT);
        }
    }

    BorderShares shares() {
        return new BorderShares(
                share(Lies.CLEAR), share(Lies.SHADOW), share(Lies.FAINT), share(Lies.LIMIT), share(Lies.PICTURE_EDGE));
    }

    private double share(Lies lies) {
        return along(lies).values().stream().mapToInt(Integer::intValue).sum() / (double) whole;
    }

    private Map<Doubt.Side, Integer> along(Lies lies) {
        return lengths.getOrDefault(lies, Map.of());
    }

    /** What is worth a word, the longest first. */
    List<Doubt> doubts() {
        List<Doubt> doubts = new ArrayList<>();
        for (Doubt.Side side : Doubt.Side.values()) {
            add(doubts, Doubt.Kind.FAINT, Lies.FAINT, side);
            add(doubts, Doubt.Kind.SHADOW, Lies.SHADOW, side);
            add(doubts, Doubt.Kind.CUT_OFF, Lies.PICTURE_EDGE, side);
        }
        doubts.sort(Comparator.comparingDouble(Doubt::share).reversed());
        return doubts;
    }

    private void add(List<Doubt> doubts, Doubt.Kind kind, Lies lies, Doubt.Side side) {
        double share = along(lies).getOrDefault(side, 0) / (double) whole;
        if (share >= WORTH_A_WORD) {
            doubts.add(new Doubt(kind, Optional.of(side), share));
        }
    }
}

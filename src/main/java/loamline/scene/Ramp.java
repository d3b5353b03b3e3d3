package loamline.scene;

import java.util.List;

/**
 * Colours for amounts: equal steps of the amount look equally far apart, also to the colour-blind and in grey.
 *
 * @param stops colours as 0xRRGGBB at equal steps from the least to the most, two or more
 */
public record Ramp(List<Integer> stops) {
    /**
     * From dark blue over grey to yellow, lightness rising evenly (Nuñez, Anderton & Renslow 2018, PLoS ONE
     * 13(7):e0199239, "cividis"; ten colours from memory of its tables).
     */
    public static final Ramp CIVIDIS = new Ramp(List.of(
            0x00204D, 0x00336F, 0x39486B, 0x575C6D, 0x707173, 0x8A8779, 0xA69D75, 0xC4B56C, 0xE4CF5B, 0xFFEA46));

    /** @throws IllegalArgumentException if there are fewer than two colours */
    public Ramp {
        stops = List.copyOf(stops);
        if (stops.size() < 2) {
            throw new IllegalArgumentException("a ramp needs two colours, not " + stops);
        }
    }

    /**
     * The colour of an amount.
     *
     * @param share 0 for the least to 1 for the most; beyond, the colour of the nearer end
     */
    public Ink at(double share) {
        double along = Math.max(0, Math.min(1, share)) * (stops.size() - 1);
        int piece = Math.min((int) along, stops.size() - 2);
        Ink from = Ink.of(stops.get(piece));
        Ink to = Ink.of(stops.get(piece + 1));
        double part = along - piece;
        return Ink.of(mixed(from.red(), to.red(), part) << 16
                | mixed(from.green(), to.green(), part) << 8
                | mixed(from.blue(), to.blue(), part));
    }

    /** The same colours with white in them: under signs and words, and to save ink. */
    public Ramp lighter(double share) {
        return new Ramp(stops.stream()
                .map(Ink::of)
                .map(stop -> mixed(stop.red(), WHITE, share) << 16
                        | mixed(stop.green(), WHITE, share) << 8
                        | mixed(stop.blue(), WHITE, share))
                .toList());
    }

    private static final int WHITE = 255;

    private static int mixed(int from, int to, double part) {
        return (int) Math.rint(from + part * (to - from));
    }
}

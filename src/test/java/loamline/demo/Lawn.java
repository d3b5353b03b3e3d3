package loamline.demo;

import loamline.yard.Turf;

/** Grass: mottled at every size, mown in stripes, thinner and paler the more trouble it has. */
final class Lawn {
    private static final double STRIPE_M = 0.6;
    private static final int BLUISH = 0x5A7544;
    private static final int YELLOWISH = 0x7F8A50;
    private static final int STRAW = 0xA8986A;
    private static final int SOIL = 0x7A6C48;
    private static final int CLOVER = 0x45632F;

    private final Noise noise;

    Lawn(Noise noise) {
        this.noise = noise;
    }

    /**
     * The grass of a zone; its name decides tint and direction of mowing.
     *
     * @param mown faint stripes or none
     */
    Texture of(Turf turf, boolean mown) {
        double trouble = turf.trouble().orElse(0);
        double warmth = 0.25 + 0.45 * noise.of(turf.zone().hashCode(), 1);
        double mowing = Math.PI / 4 * Math.floor(4 * noise.of(turf.zone().hashCode(), 2));
        double cos = StrictMath.cos(mowing);
        double sin = StrictMath.sin(mowing);
        return (x, y, rgb) -> {
            grass(x, y, warmth, rgb);
            thin(x, y, trouble, rgb);
            if (mown) {
                double wobble = 0.12 * noise.at(x / 3, y / 3);
                double stripe = StrictMath.sin(Math.PI * (x * cos + y * sin + wobble) / STRIPE_M);
                Texture.scale(rgb, 1 + 0.022 * StrictMath.tanh(3 * stripe));
            }
        };
    }

    private void grass(double x, double y, double warmth, float[] rgb) {
        double broad = noise.octaves(x / 9, y / 9, 3);
        double clumps = noise.octaves(x / 0.9 + 31, y / 0.9, 3);
        double blades = noise.at(x * 6.5, y * 6.5) + 0.9 * noise.at(x * 17, y * 17);
        Texture.set(rgb, BLUISH, 1 + 0.09 * broad + 0.16 * clumps + 0.19 * blades);
        Texture.towards(rgb, YELLOWISH, Math.max(0, Math.min(1, warmth + 0.55 * broad + 0.3 * clumps)));
    }

    private void thin(double x, double y, double trouble, float[] rgb) {
        double patches = noise.octaves(x / 3.4 - 20, y / 3.4, 5);
        double share = trouble * 0.45 + trouble * 1.1 * patches;
        Texture.towards(rgb, STRAW, Math.max(0, Math.min(0.75, share)));
        double weeds = noise.octaves(x / 1.1 + 77, y / 1.1, 3) - 0.62 + 0.3 * trouble;
        Texture.towards(rgb, CLOVER, Math.max(0, Math.min(0.55, 4 * weeds)));
    }

    /** Grass gone bad, by the word said of it. */
    Texture bad(String word) {
        return (x, y, rgb) -> {
            double blades = 0.12 * noise.at(x * 6.5, y * 6.5) + 0.12 * noise.at(x * 17, y * 17);
            double patches = noise.octaves(x / 0.8, y / 0.8, 4);
            if (word.contains("moss")) {
                Texture.set(rgb, CLOVER, 1 + blades + 0.2 * patches);
                Texture.towards(rgb, SOIL, Math.max(0, Math.min(0.6, patches)));
            } else {
                Texture.set(rgb, STRAW, 1 + blades + 0.1 * patches);
                double bare = word.contains("dry") ? patches - 0.25 : patches + 0.4;
                Texture.towards(rgb, SOIL, Math.max(0, Math.min(0.9, 1.6 * bare)));
                Texture.towards(rgb, BLUISH, Math.max(0, Math.min(0.5, -1.2 * patches - 0.1)));
            }
        };
    }
}

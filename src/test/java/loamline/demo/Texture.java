package loamline.demo;

/** The colour of a surface in full sun, place by place. */
@FunctionalInterface
interface Texture {
    /**
     * Writes the colour at a place.
     *
     * @param x metres east
     * @param y metres north
     * @param rgb red, green, blue, 0 to 1, written
     */
    void at(double x, double y, float[] rgb);

    /** One colour, 0 to 255, times a brightness. */
    static void set(float[] rgb, int hex, double brightness) {
        rgb[0] = (float) ((hex >> 16) / 255.0 * brightness);
        rgb[1] = (float) ((hex >> 8 & 255) / 255.0 * brightness);
        rgb[2] = (float) ((hex & 255) / 255.0 * brightness);
    }

    /** Moves a colour a share of the way to another. */
    static void towards(float[] rgb, int hex, double share) {
        rgb[0] += (float) (share * ((hex >> 16) / 255.0 - rgb[0]));
        rgb[1] += (float) (share * ((hex >> 8 & 255) / 255.0 - rgb[1]));
        rgb[2] += (float) (share * ((hex & 255) / 255.0 - rgb[2]));
    }

    /** Makes a colour brighter or darker. */
    static void scale(float[] rgb, double brightness) {
        rgb[0] *= (float) brightness;
        rgb[1] *= (float) brightness;
        rgb[2] *= (float) brightness;
    }
}

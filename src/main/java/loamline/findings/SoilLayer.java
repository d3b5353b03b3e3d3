package loamline.findings;

import java.util.Locale;

/**
 * Soil of one kind in a core.
 *
 * @param fromM depth at which it begins, m
 * @param toM depth at which it ends, m, below {@code fromM}
 * @param texture as it was written, such as {@code clay loam}
 */
public record SoilLayer(double fromM, double toM, String texture) {
    /** @throws IllegalArgumentException if it does not end below its beginning */
    public SoilLayer {
        if (!(fromM >= 0 && toM > fromM)) {
            throw new IllegalArgumentException("no layer from " + fromM + " to " + toM + " m");
        }
    }

    /** Fineness by its words, from 0 for sand and gravel over 2 for loam to 4 for clay; 2 for words unknown here. */
    int fineness() {
        String words = texture.toLowerCase(Locale.ROOT);
        boolean loam = words.contains("loam") || words.contains("silt");
        if (words.contains("clay")) {
            return loam ? 3 : 4;
        }
        return words.contains("sand") || words.contains("gravel") ? (loam ? 1 : 0) : 2;
    }
}

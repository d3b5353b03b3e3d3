package loamline.scene;

import java.util.Optional;
import loamline.geometry.Point;

/**
 * Words on one line.
 *
 * @param at left end of the baseline, millimetres on paper
 * @param halo drawn round the letters so that they stand off the map
 */
public record Run(Point at, String words, Type type, Ink ink, Optional<Ink> halo) {
    /** How far a halo reaches beyond the letters, mm. */
    public static final double HALO_MM = 0.5;

    public static Run plain(Point at, String words, Type type, Ink ink) {
        return new Run(at, words, type, ink, Optional.empty());
    }

    public Run moved(double dxMm, double dyMm) {
        return new Run(at.plus(dxMm, dyMm), words, type, ink, halo);
    }
}

package loamline.sun;

import java.time.Duration;
import loamline.account.Source;

/**
 * The light of a clear day that grass can use, as photons on level ground.
 *
 * <p>Beam I₀ τ^m sin h and diffuse light 0.3 (1 − τ^m) I₀ sin h, with m = 1 / sin h: Liu & Jordan's clear sky as Campbell &
 * Norman have it. Of its energy 45 % is light for plants, 4.57 µmol a joule.
 */
final class ClearSky {
    static final Source SOURCE = new Source(
            "campbell-norman-1998",
            "From memory of Campbell & Norman 1998, An introduction to environmental biophysics, chapter 11: clear sky"
                    + " with transmittance 0.70; and of Thimijan & Heins 1983, HortScience 18:818-822: 4.57 µmol/J, 45 %");

    /** Of the atmosphere on a clear day. */
    private static final double TRANSMITTANCE = 0.70;

    /** Solar constant, W/m². */
    private static final double SOLAR_CONSTANT_W_M2 = 1361;

    /** Photons for plants in the energy of the sun, mol/J. */
    private static final double MOL_PER_J = 0.45 * 4.57e-6;

    private ClearSky() {}

    /** Direct light of a step, mol/m². */
    static double beamMol(double elevationDeg, Duration step) {
        double sine = Math.sin(Math.toRadians(elevationDeg));
        return outsideMol(sine, step) * Math.pow(TRANSMITTANCE, 1 / sine);
    }

    /** Light of the whole sky in a step, mol/m². */
    static double diffuseMol(double elevationDeg, Duration step) {
        double sine = Math.sin(Math.toRadians(elevationDeg));
        return outsideMol(sine, step) * 0.3 * (1 - Math.pow(TRANSMITTANCE, 1 / sine));
    }

    private static double outsideMol(double sine, Duration step) {
        return SOLAR_CONSTANT_W_M2 * sine * step.toSeconds() * MOL_PER_J;
    }
}

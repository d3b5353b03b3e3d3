package loamline.soil;

/**
 * Nutrients to spread in a season, as fertilizer names them, g/m²; each 0 or more, or refused.
 */
public record Needs(Advice<Double> p2o5GM2, Advice<Double> k2oGM2) {}

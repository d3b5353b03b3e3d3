package loamline.season.blend;

/** What a material brings to the ground; a share of its weight unless said otherwise. */
public enum Quantity {
    /** Nitrogen in all. */
    N,
    /** Nitrogen that is not slow to release. */
    QUICK_N,
    P2O5,
    K2O,
    /** Salt: weight of sodium nitrate with the same osmotic effect. */
    SALT,
    /** Lime as pure CaCO₃. */
    LIME,
    /** Weight of liming material as it is spread. */
    LIME_WEIGHT,
    /** Elemental sulfur. */
    SULFUR,
    /** Gypsum. */
    GYPSUM
}

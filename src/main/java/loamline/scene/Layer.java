package loamline.scene;

/** What a map consists of, in the order in which it is painted. */
public enum Layer {
    /** The lot and its line. */
    BOUNDARY,
    TURF,
    /** Beds, paving, gravel, water, decks. */
    COVERS,
    BUILDINGS,
    /** Amounts by colour: water, sun. */
    RASTER,
    /** Ground on which panels throw the sun. */
    GLARE,
    /** The ground that each core stands for. */
    STRATA,
    /** How far each head throws. */
    THROWS,
    HEADS,
    BARRIERS,
    TREES,
    /** Keep-away and trouble spots. */
    SPOTS,
    /** Turf that no head reaches. */
    HOLES,
    /** A cup test: cups, heads at fault, the throws of their valve. */
    CUPS,
    WALK,
    SPARES,
    CORES,
    /** Where the walk starts. */
    START,
    /** Names of zones, buildings and spots. */
    LABELS
}

package loamline.demo;

/** What ground and roofs are made of in the picture. */
enum Material {
    CONCRETE,
    PAVERS,
    ASPHALT,
    GRAVEL,
    MULCH,
    WATER,
    DECK,
    SHINGLE,
    METAL
}

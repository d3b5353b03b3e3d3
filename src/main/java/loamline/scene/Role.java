package loamline.scene;

/** What a colour is for, with its value on light and on dark ground. */
public enum Role {
    PAPER(0xFAF8F3, 0x161B18),
    PANEL(0xFFFFFF, 0x1E2521),
    INK(0x1F2A25, 0xE9EEEA),
    SOFT(0x55645C, 0xA6B4AB),
    LINE(0xDAD6CA, 0x36433C),
    ACCENT(0x2B6A4D, 0x7FC8A0),
    ON_ACCENT(0xFFFFFF, 0x10241A),
    WARN(0x9A4A12, 0xF0A66B),
    ERROR(0x9B1C31, 0xF28B95),
    INFO(0x24557F, 0x8FBCE6),
    SELECT(0xB7791F, 0xF2C14E),

    LOT(0xF3F0E7, 0x1B211D),
    LOT_LINE(0x6B6A5C, 0x8B9188),
    TURF(0xDCE9CE, 0x293A2B),
    TURF_EDGE(0x6F8F56, 0x6F8F63),
    /** Edge tints that tell neighbouring zones apart, used in turn. */
    TINT_1(0x7FA650, 0x8DB75C),
    TINT_2(0xCDB93F, 0xB8A743),
    TINT_3(0x5F9FA8, 0x5E9AA3),
    TINT_4(0xB98B57, 0xB48A5B),
    STRATA(0x5E7A4C, 0x8FAE7E),
    BED(0xEFE3CF, 0x3A3226),
    BED_MARK(0xB98A52, 0xA88558),
    PAVING(0xE7E5E0, 0x2E3230),
    PAVING_EDGE(0x9C988D, 0x646B66),
    GRAVEL(0xEDE9E0, 0x312E29),
    GRAVEL_MARK(0x857D6E, 0x948C7F),
    DECK(0xE9DDCA, 0x3A3229),
    DECK_MARK(0xA48B68, 0x8A7556),
    WATER(0xD3E5EE, 0x1F3440),
    WATER_MARK(0x3F7897, 0x7FB2CC),
    BUILDING(0xD6D2CA, 0x353A37),
    BUILDING_MARK(0xB3AEA3, 0x565D58),
    BUILDING_EDGE(0x5F5C55, 0x9AA29B),
    BARRIER(0x4A4438, 0xC4BFB2),
    HOLE(0x9B1C31, 0xF28B95),
    CROWN(0x8CB380, 0x55794F),
    CROWN_EDGE(0x47754A, 0x86B27E),
    TRUNK(0x5E4634, 0xB99A7E);

    private final int light;
    private final int dark;

    Role(int light, int dark) {
        this.light = light;
        this.dark = dark;
    }

    Ink light() {
        return Ink.of(light);
    }

    Ink dark() {
        return Ink.of(dark);
    }
}

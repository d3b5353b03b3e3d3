package loamline.sheets;

import loamline.scene.PaperRect;

/** Sizes of paper. */
public enum Paper {
    /** 8.5 by 11 in. */
    LETTER(215.9, 279.4),
    /** ISO 216. */
    A4(210, 297);

    /** Nothing is printed nearer to an edge, mm. */
    public static final double MARGIN_MM = 12;

    private final double shortMm;
    private final double longMm;

    Paper(double shortMm, double longMm) {
        this.shortMm = shortMm;
        this.longMm = longMm;
    }

    /** The sheet with its long side upright. */
    public PaperRect upright() {
        return new PaperRect(0, 0, shortMm, longMm);
    }

    /** The sheet on its side. */
    public PaperRect onItsSide() {
        return new PaperRect(0, 0, longMm, shortMm);
    }
}

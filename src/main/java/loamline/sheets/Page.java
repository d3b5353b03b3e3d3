package loamline.sheets;

import java.util.List;
import loamline.scene.PaperRect;

/**
 * One side of paper, its head and foot still to come.
 *
 * @param paper upright or on its side
 * @param title what the page is
 * @param caution what must not be forgotten with this page in hand
 * @param parts what stands where
 */
record Page(PaperRect paper, String title, String caution, List<Placed> parts) {
    /** Room for the head, from the margin to the first part. */
    static final double HEAD_MM = 8.4;
    /** Room for the foot, from the last part to the margin. */
    static final double FOOT_MM = 5;

    Page {
        parts = List.copyOf(parts);
    }

    /** A block in its place. */
    record Placed(Block block, PaperRect room) {}

    /** What is left of a sheet inside the margins. */
    static PaperRect printable(PaperRect paper) {
        return paper.grown(-Paper.MARGIN_MM);
    }

    /** What is left of a sheet between head and foot. */
    static PaperRect body(PaperRect paper) {
        PaperRect inside = printable(paper);
        return new PaperRect(
                inside.leftMm(), inside.topMm() + HEAD_MM, inside.widthMm(), inside.heightMm() - HEAD_MM - FOOT_MM);
    }
}

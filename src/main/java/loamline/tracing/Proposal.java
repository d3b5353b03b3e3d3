package loamline.tracing;

import java.util.List;
import loamline.geometry.Outline;

/**
 * An outline to accept or edit, and how far to trust it.
 *
 * @param outline in pixels of the picture, y down; no parts if no click lies on ground that can be traced. Each
 *     ring encloses the area of the pixels found to a thousandth of a pixel's, as long as it could be thinned
 * @param areaPx2 pixels found, in area
 * @param border what the border lies on
 * @param stability share of the area that stays when the slider moves a little, 0 to 1
 * @param doubts what to look at, the gravest first
 */
public record Proposal(Outline outline, double areaPx2, BorderShares border, double stability, List<Doubt> doubts) {
    public Proposal {
        doubts = List.copyOf(doubts);
    }

    /**
     * How sure the outline is, 0 to 1: the share of its border that lies on a clear edge or on a limit, times
     * the stability. Our own measure, no source; it says nothing about what the ground is.
     */
    public double confidence() {
        return (border.clear() + border.limit()) * stability;
    }
}

package loamline.sheets;

import java.util.List;
import java.util.function.UnaryOperator;
import loamline.geometry.Box;
import loamline.scene.PaperRect;
import loamline.scene.View;

/**
 * Ground on paper at a round scale.
 *
 * @param paper upright or on its side
 * @param window the part of it that shows the map
 * @param denominator of the scale
 * @param view what the window shows
 */
record MapFit(PaperRect paper, PaperRect window, int denominator, View view) {
    /** Free paper round the ground, mm: labels and signs reach beyond it. */
    private static final double CLEAR_MM = 5;

    private static final List<Integer> ROUND = List.of(100, 150, 200, 250, 300, 400, 500, 600, 750);
    /** 1:750,000,000 shows the earth; nothing needs less. */
    private static final int POWERS = 7;

    /**
     * The largest round scale at which the ground fits; upright unless the sheet on its side gives a larger one.
     *
     * @param windowOf the part of a sheet that shows the map
     */
    static MapFit largest(Box ground, Paper paper, UnaryOperator<PaperRect> windowOf) {
        MapFit upright = on(paper.upright(), windowOf, ground);
        MapFit onItsSide = on(paper.onItsSide(), windowOf, ground);
        return onItsSide.denominator < upright.denominator ? onItsSide : upright;
    }

    private static MapFit on(PaperRect paper, UnaryOperator<PaperRect> windowOf, Box ground) {
        PaperRect window = windowOf.apply(paper);
        double least = 1000
                * Math.max(
                        ground.widthM() / (window.widthMm() - 2 * CLEAR_MM),
                        ground.heightM() / (window.heightMm() - 2 * CLEAR_MM));
        int denominator = roundUp(least);
        return new MapFit(paper, window, denominator, View.round(ground.centre(), window, denominator));
    }

    /** The first round scale that is no larger; the smallest there is for ground beyond all of them. */
    static int roundUp(double least) {
        int power = 1;
        for (int i = 0; i < POWERS; i++) {
            for (int round : ROUND) {
                if (round * power >= least) {
                    return round * power;
                }
            }
            power *= 10;
        }
        return ROUND.get(ROUND.size() - 1) * power / 10;
    }
}

package loamline.sheets;

import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import loamline.geometry.Box;
import loamline.scene.Legend;
import loamline.scene.PaperRect;
import loamline.scene.SceneOptions;
import loamline.scene.View;

/**
 * Ground on paper at a round scale.
 *
 * @param place where it lies
 * @param denominator of the scale
 * @param view what the place's window shows
 */
record MapFit(Place place, int denominator, View view) {
    /** Free paper round the ground, mm: signs reach beyond it. */
    private static final double CLEAR_MM = 2.2;

    private static final List<Integer> ROUND = List.of(100, 150, 200, 250, 300, 400, 500, 600, 750);
    /** 1:750,000,000 shows the earth; nothing needs less. */
    private static final int POWERS = 7;

    /**
     * Where a map may lie.
     *
     * @param paper the sheet, upright or on its side
     * @param frame room for map and furniture
     */
    record Place(PaperRect paper, PaperRect frame, Furniture furniture) {}

    /** The place with the largest round scale at which the ground fits; of equals, the first. */
    static MapFit largest(Box ground, Stream<Place> places) {
        return places.map(place -> in(place, ground))
                .reduce((a, b) -> b.denominator < a.denominator ? b : a)
                .orElseThrow();
    }

    /** Upright before on its side, furniture below the map before beside it. */
    static MapFit onPaper(
            Box ground, Paper paper, UnaryOperator<PaperRect> roomOn, List<Legend.Entry> legend, SceneOptions any) {
        return largest(
                ground,
                Stream.of(paper.upright(), paper.onItsSide())
                        .flatMap(sheet -> Stream.of(false, true)
                                .map(beside ->
                                        new Place(sheet, roomOn.apply(sheet), new Furniture(legend, any, beside)))));
    }

    private static MapFit in(Place place, Box ground) {
        PaperRect window = place.furniture.window(place.frame);
        double least = 1000
                * Math.max(
                        ground.widthM() / (window.widthMm() - 2 * CLEAR_MM),
                        ground.heightM() / (window.heightMm() - 2 * CLEAR_MM));
        int denominator = roundUp(least);
        return new MapFit(place, denominator, View.round(ground.centre(), window, denominator));
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

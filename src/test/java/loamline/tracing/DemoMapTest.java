package loamline.tracing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import loamline.geometry.Region;
import org.junit.jupiter.api.Test;

/** The demo pictures against the outlines that they were painted from, at the slider's middle. */
class DemoMapTest {
    private static final double GOOD_IOU = 0.9;
    private static final double TREE_AND_SHADOW_PX2 = 12_000;

    /** What a few clicks give: intersection over union, vertices. */
    private record Result(double iou, int vertices) {}

    private static Result trace(Mosaic mosaic, Region truth, double hole, int... xy) {
        List<Pixel> clicks = new ArrayList<>();
        for (int i = 0; i < xy.length; i += 2) {
            clicks.add(new Pixel(xy[i], xy[i + 1]));
        }
        Proposal proposal = mosaic.trace(clicks).at(0.5, hole);
        return new Result(Canvas.iou(proposal.outline(), truth), Canvas.vertices(proposal.outline()));
    }

    private static void assertGood(Result result, double iou, int trueVertices) {
        assertThat(result.iou()).isGreaterThan(iou);
        assertThat(result.vertices()).isLessThanOrEqualTo(2 * trueVertices + 4);
    }

    @Test
    void theSuburbanLotIsTracedByAFewClicksAPart() throws IOException {
        DemoMap map = DemoMap.of("plover-court");
        Mosaic lot = Mosaic.of(map.picture(Region.EMPTY));
        assertGood(trace(lot, map.ground("Drive"), 200, 500, 800), 0.95, 4);
        assertGood(trace(lot, map.ground("Front east"), 200, 400, 800), 0.95, map.vertices("Front east"));
        assertGood(trace(lot, map.ground("Trailer pad"), 200, 590, 700), GOOD_IOU, map.vertices("Trailer pad"));
        int[] faces = {300, 570, 300, 650, 550, 670};
        assertGood(trace(lot, map.roof("House"), 200, faces), 0.95, map.roofVertices("House"));
    }

    @Test
    void aLawnUnderTreesTakesAClickAShadow() throws IOException {
        DemoMap map = DemoMap.of("plover-court");
        Region truth = map.ground("Back shade", "Back lawn");
        Mosaic rest = Mosaic.of(map.picture(map.allBut("Back shade", "Back lawn")));
        int[] clicks = {
            430, 350, 190, 180, 195, 380, 220, 600, 220, 280, 215, 430, 320, 180, 350, 205, 625, 300, 540, 570
        };
        double before = 0;
        for (int n = 2; n <= clicks.length; n += 2) {
            double iou =
                    trace(rest, truth, 200, java.util.Arrays.copyOf(clicks, n)).iou();
            assertThat(iou).isGreaterThanOrEqualTo(before - 0.005);
            before = iou;
        }
        assertGood(trace(rest, truth, 200, clicks), GOOD_IOU, map.vertices("Back shade", "Back lawn"));
    }

    @Test
    void theFarmIsTracedByAFewClicksAPart() throws IOException {
        DemoMap map = DemoMap.of("tansy-hill");
        Mosaic lot = Mosaic.of(map.picture(Region.EMPTY));
        assertGood(trace(lot, map.ground("Lane"), 200, 610, 700, 640, 580), GOOD_IOU, map.vertices("Lane"));
        assertGood(trace(lot, map.ground("Lilac island"), 200, 490, 748), GOOD_IOU, map.vertices("Lilac island"));
        assertGood(trace(lot, map.roof("Barn"), 200, 740, 590, 740, 520), 0.95, map.roofVertices("Barn"));
        int[] faces = {320, 350, 310, 290, 372, 390, 415, 390};
        assertGood(trace(lot, map.roof("House"), 200, faces), 0.95, map.roofVertices("House"));
    }

    @Test
    void aLawnRoundAPondFillsItsTreesAndSparesThePond() throws IOException {
        DemoMap map = DemoMap.of("tansy-hill");
        String[] zones = {"Pond bank", "Lane lawn"};
        Mosaic rest = Mosaic.of(map.picture(map.allBut(zones)));
        Region truth = map.ground(zones).minus(map.ground("Pond", "Lilac island"));
        int drawn = map.vertices(zones) + map.vertices("Pond", "Lilac island");
        Result one = trace(rest, truth, TREE_AND_SHADOW_PX2, 300, 560);
        Result three = trace(rest, truth, TREE_AND_SHADOW_PX2, 300, 560, 130, 570, 370, 750);
        assertThat(one.iou()).isGreaterThan(0.85);
        assertGood(three, 0.95, drawn);
    }
}

package loamline.tracing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Region;
import org.junit.jupiter.api.Test;

/** A painted yard whose outlines are known: what one or a few clicks find at the slider's middle. */
class SceneTest {
    private static final double GOOD_IOU = 0.9;
    private static final double HOLE_PX2 = 300;

    private static final Point HOUSE = new Point(330, 90);
    private static final Outline LAWN = Outline.of(30, 30, 230, 24, 236, 190, 150, 216, 34, 210);
    private static final Outline UPPER_FACE = Canvas.turned(Canvas.box(260, 40, 400, 90), 8, HOUSE);
    private static final Outline LOWER_FACE = Canvas.turned(Canvas.box(260, 90, 400, 140), 8, HOUSE);
    private static final Outline ROOF = Canvas.turned(Canvas.box(260, 40, 400, 140), 8, HOUSE);
    private static final Outline DRIVE = Outline.of(300, 150, 380, 150, 380, 300, 300, 300);
    private static final Outline BED = Canvas.oval(100, 100, 30, 18);
    private static final Outline SHADOW = Canvas.oval(200, 60, 22, 44);
    private static final Outline CROWN = Canvas.oval(206, 108, 22, 22);
    private static final Outline OLD_SLAB = Canvas.box(30, 230, 130, 300);
    private static final Outline NEW_SLAB = Canvas.box(130, 230, 260, 300);

    private static final Mosaic YARD = Mosaic.of(new Canvas(430, 310)
            .fill(Canvas.box(0, 0, 430, 310), 0x8F8576, Canvas.grain(0.3, 1))
            .fill(LAWN, 0x66813F, Canvas.mown(2))
            .fill(BED, 0x59402F, Canvas.grain(0.4, 3))
            .fill(DRIVE, 0xC3BFB6, Canvas.slabs(40, 4))
            .fill(UPPER_FACE, 0x6A5F58, Canvas.shingles(0.6, 5))
            .fill(LOWER_FACE, 0x6A5F58, Canvas.shingles(1.3, 6))
            .fill(OLD_SLAB, 0xC3BFB6, (x, y) -> 0.85 + 0.03 * Canvas.noise(x, y, 8))
            .fill(NEW_SLAB, 0xC3BFB6, Canvas.grain(0.03, 9))
            .shade(SHADOW, 0.3)
            .fill(CROWN, 0x4E6B2C, Canvas.leaves(7))
            .picture());

    private static Proposal found(Pixel... clicks) {
        return YARD.trace(List.of(clicks)).at(0.5, HOLE_PX2);
    }

    private static Region ground(Outline outline, Outline... without) {
        return Stream.of(without).map(Region::of).reduce(Region.of(outline), Region::minus);
    }

    @Test
    void aMownLawnWithABedInItIsFoundByOneClick() {
        Proposal lawn = found(new Pixel(60, 180));
        assertThat(Canvas.iou(lawn.outline(), ground(LAWN, BED, SHADOW, CROWN))).isGreaterThan(GOOD_IOU);
        assertThat(lawn.outline().parts().get(0).holes()).hasSize(1);
        assertThat(Canvas.vertices(lawn.outline())).isLessThanOrEqualTo(Canvas.few(LAWN, BED, SHADOW));
    }

    @Test
    void aLawnCutByAShadowIsCompletedByASecondClick() {
        Region truth = ground(LAWN, BED, CROWN);
        Proposal one = found(new Pixel(60, 180));
        Proposal two = found(new Pixel(60, 180), new Pixel(198, 45));
        assertThat(Canvas.iou(one.outline(), truth)).isLessThan(0.94);
        assertThat(Canvas.iou(two.outline(), truth)).isGreaterThan(0.94);
        assertThat(one.border().shadow()).isGreaterThan(0.1);
        assertThat(one.doubts())
                .extracting(Doubt::sentence)
                .anyMatch(s -> s.contains("looks like a shadow") && s.contains("add a click in the shade"));
        assertThat(two.confidence()).isGreaterThan(one.confidence());
    }

    @Test
    void aRoofTakesAClickAFace() {
        Proposal face = found(new Pixel(320, 110));
        Proposal roof = found(new Pixel(320, 110), new Pixel(320, 60));
        assertThat(Canvas.iou(face.outline(), Region.of(LOWER_FACE))).isGreaterThan(GOOD_IOU);
        assertThat(Canvas.iou(roof.outline(), Region.of(ROOF))).isGreaterThan(0.95);
        assertThat(Canvas.vertices(roof.outline())).isLessThanOrEqualTo(Canvas.few(ROOF));
        assertThat(roof.confidence()).isGreaterThan(0.9);
    }

    @Test
    void aDriveWithJointsIsFoundByOneClick() {
        Proposal drive = found(new Pixel(330, 230));
        assertThat(Canvas.iou(drive.outline(), ground(DRIVE, ROOF))).isGreaterThan(0.95);
        assertThat(Canvas.vertices(drive.outline())).isLessThanOrEqualTo(Canvas.few(DRIVE));
        assertThat(drive.confidence()).isGreaterThan(0.9);
    }

    @Test
    void aBedIsFoundByOneClick() {
        Proposal bed = found(new Pixel(95, 100));
        assertThat(Canvas.iou(bed.outline(), Region.of(BED))).isGreaterThan(GOOD_IOU);
        assertThat(Canvas.vertices(bed.outline())).isLessThanOrEqualTo(Canvas.few(BED));
    }

    @Test
    void aBorderThatIsHardlySeenIsOwnedUpTo() {
        Proposal slab = found(new Pixel(80, 265));
        assertThat(Canvas.iou(slab.outline(), Region.of(OLD_SLAB))).isGreaterThan(GOOD_IOU);
        assertThat(slab.border().faint()).isBetween(0.1, 0.3); // 70 of 340
        assertThat(slab.confidence()).isLessThan(0.9);
        assertThat(slab.doubts())
                .extracting(Doubt::sentence)
                .anyMatch(s -> s.startsWith("Along the right the edge is faint"));
    }
}

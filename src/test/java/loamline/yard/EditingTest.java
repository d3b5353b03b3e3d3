package loamline.yard;

import static loamline.yard.YardFixtures.box;
import static loamline.yard.YardFixtures.building;
import static loamline.yard.YardFixtures.cover;
import static loamline.yard.YardFixtures.turf;
import static loamline.yard.YardFixtures.yard;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import loamline.geometry.Corner;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Polyline;
import loamline.geometry.Region;
import org.junit.jupiter.api.Test;

class EditingTest {
    private static final Turf FRONT = turf("Front", box(0, 0, 10, 10));
    private static final Unknown ODD = new Unknown("odd", new Extras(Map.of("type", "Feature")));

    private static Polyline line(double... xy) {
        return new Polyline(Outline.of(xy).vertices().toList());
    }

    private static Barrier fence(List<Barrier.Opening> gates, double... xy) {
        return new Barrier("fence", Kind.FENCE, 1.8, gates, true, line(xy), Extras.NONE);
    }

    private static Head head(double startDeg, double sweepDeg, double x, double y) {
        return new Head(
                "head",
                "h1",
                "1",
                Optional.of(HeadClass.SPRAY),
                OptionalDouble.of(4),
                startDeg,
                sweepDeg,
                OptionalDouble.empty(),
                Head.DEFAULT_PROFILE,
                0,
                new Point(x, y),
                Extras.NONE);
    }

    private static double areaM2(Feature feature) {
        return Region.of((Outline) feature.shape().orElseThrow()).areaM2();
    }

    @Test
    void turfIsCutIntoZonesAndTheLargestKeepsItsKeyAndPlace() {
        Turf taken = turf("Front b", box(20, 0, 21, 1));
        Yard before = yard(FRONT, taken, ODD);
        Combine.Outcome cut = Combine.cut(before, Set.of(FRONT.key(), "odd"), line(-1, 3, 11, 3))
                .orElseThrow();
        assertThat(cut.yard().all(Turf.class).map(Turf::zone)).containsExactly("Front a", "Front c", "Front b");
        assertThat(cut.keys()).containsExactly(FRONT.key(), "f1");
        assertThat(areaM2(cut.yard().features().get(0))).isEqualTo(70);
        assertThat(cut.yard().features().get(3)).isEqualTo(ODD);
    }

    @Test
    void aLineThatDividesNothingIsNoCut() {
        assertThat(Combine.cut(yard(FRONT), Set.of(FRONT.key()), line(0, 0, 10, 0)))
                .isEmpty();
        assertThat(Combine.cut(yard(FRONT), Set.of(), line(-1, 3, 11, 3))).isEmpty();
    }

    @Test
    void piecesOfACutJoinAgainWithoutAGap() {
        Yard slanted = yard(turf("Front", 0, 0, 10.1, 0.3, 9.7, 10.3, 0.2, 9.9));
        Combine.Outcome cut = Combine.cut(
                        slanted, Set.of(slanted.features().get(0).key()), line(-1, 3.3, 5.55, 4.1, 11, 2.7))
                .orElseThrow();
        Combine.Outcome joined =
                Combine.join(cut.yard(), Set.copyOf(cut.keys())).orElseThrow();
        Feature whole = joined.yard().features().get(0);
        double stepErrorM2 = 0.5e-6 * 40; // half a step times the perimeter
        assertThat(joined.yard().features()).hasSize(1);
        assertThat(((Outline) whole.shape().orElseThrow()).parts()).hasSize(1);
        assertThat(areaM2(whole)).isEqualTo(areaM2(slanted.features().get(0)), offset(stepErrorM2));
    }

    @Test
    void aFenceIsCutWithItsGates() {
        Barrier fence = fence(List.of(new Barrier.Opening(2, 1), new Barrier.Opening(7, 1)), 0, 0, 10, 0);
        Combine.Outcome cut =
                Combine.cut(yard(fence), Set.of("fence"), line(5, -1, 5, 1)).orElseThrow();
        assertThat(cut.yard().all(Barrier.class).map(Barrier::line))
                .containsExactly(line(0, 0, 5, 0), line(5, 0, 10, 0));
        assertThat(cut.yard().all(Barrier.class).map(b -> b.gates().get(0).atM()))
                .containsExactly(2.0, 2.0);
    }

    @Test
    void joinsWhatTouchesAndKeepsWhatLiesApart() {
        Cover a = cover(Kind.BED, box(0, 0, 2, 2));
        Cover b = cover(Kind.BED, box(2, 0, 4, 2));
        Cover c = cover(Kind.BED, box(6, 0, 8, 2));
        Yard joined = Combine.join(yard(a, b, c), Set.of(a.key(), b.key(), c.key()))
                .orElseThrow()
                .yard();
        assertThat(joined.features()).hasSize(1);
        assertThat(((Cover) joined.features().get(0)).outline().parts()).hasSize(2);
        assertThat(areaM2(joined.features().get(0))).isEqualTo(12);
        assertThat(joined.features().get(0).key()).isEqualTo(a.key());
    }

    @Test
    void fencesAreJoinedEndToEndWithTheirGatesWhicheverWayTheyWereDrawn() {
        Barrier a = fence(List.of(new Barrier.Opening(2, 1)), 4, 0, 0, 0);
        Barrier b = (Barrier)
                fence(List.of(new Barrier.Opening(1, 1)), 9, 5, 4, 5, 4.2, 0).withKey("b");
        Barrier whole = (Barrier) Combine.join(yard(a, b), Set.of(a.key(), "b"))
                .orElseThrow()
                .yard()
                .features()
                .get(0);
        assertThat(whole.line()).isEqualTo(line(9, 5, 4, 5, 4, 0, 0, 0));
        assertThat(whole.gates().stream().map(Barrier.Opening::atM)).containsExactlyInAnyOrder(12.0, 1.0);
        assertThat(whole.key()).isEqualTo(a.key());
    }

    @Test
    void linesWhoseEndsLieApartAreNotJoined() {
        Barrier a = fence(List.of(), 0, 0, 4, 0);
        Barrier near = (Barrier) fence(List.of(), 4.3, 0, 9, 0).withKey("b");
        Barrier far = (Barrier) fence(List.of(), 4.31, 0, 9, 0).withKey("b");
        assertThat(Combine.join(yard(a, near), Set.of(a.key(), "b"))).isPresent();
        assertThat(Combine.join(yard(a, far), Set.of(a.key(), "b"))).isEmpty();
    }

    @Test
    void onlyOutlinesOfOneKindAreJoined() {
        Building house = building(box(0, 0, 4, 4));
        assertThat(Combine.join(yard(FRONT, house), Set.of(FRONT.key(), house.key())))
                .isEmpty();
        assertThat(Combine.join(yard(FRONT), Set.of(FRONT.key()))).isEmpty();
    }

    @Test
    void copiesGetNewKeysAndHeadsNewIds() {
        Yard before = yard(head(0, 90, 1, 1), FRONT, ODD);
        List<Feature> copied = Copies.of(before, Set.of("head", FRONT.key(), "odd"));
        Combine.Outcome pasted = Copies.paste(before, copied, 2, -1);
        assertThat(pasted.keys()).containsExactly("f1", "f2");
        Head copy = (Head) pasted.yard().feature("f1").orElseThrow();
        assertThat(copy.id()).isEqualTo("h2");
        assertThat(copy.at()).isEqualTo(new Point(3, 0));
    }

    @Test
    void aQuarterTurnIsExactAndTurnsArcs() {
        Yard turned = Reshape.turned(
                yard(head(300, 90, 3, 0), FRONT, ODD), Set.of("head", FRONT.key(), "odd"), new Point(0, 0), 90);
        Head head = (Head) turned.features().get(0);
        assertThat(head.at()).isEqualTo(new Point(0, -3));
        assertThat(head.arcStartDeg()).isEqualTo(30);
        assertThat(((Turf) turned.features().get(1)).outline()).isEqualTo(Outline.of(0, 0, 0, -10, 10, -10, 10, 0));
        assertThat(turned.features().get(2)).isEqualTo(ODD);
    }

    @Test
    void mirroringTurnsArcsOverAndPanelsRound() {
        Panel panel = new Panel("panel", 1, 0, 0, line(1, 0, 1, 5), Extras.NONE);
        Yard mirrored = Reshape.mirrored(
                yard(head(10, 80, 3, 2), panel), Set.of("head", "panel"), new Point(0, 0), new Point(0, 1));
        Head head = (Head) mirrored.features().get(0);
        assertThat(head.at()).isEqualTo(new Point(-3, 2));
        assertThat(head.arcStartDeg()).isEqualTo(270); // from 10…90 to -90…-10
        assertThat(head.arcSweepDeg()).isEqualTo(80);
        assertThat(((Panel) mirrored.features().get(1)).base()).isEqualTo(line(-1, 5, -1, 0));
    }

    @Test
    void mirroringTwiceOrAcrossNothingChangesNothing() {
        Yard before = yard(head(10, 80, 3, 2), FRONT);
        Set<String> keys = Set.of("head", FRONT.key());
        Point from = new Point(1, 1);
        Point to = new Point(1, 4);
        assertThat(Reshape.mirrored(Reshape.mirrored(before, keys, from, to), keys, from, to))
                .isEqualTo(before);
        assertThat(Reshape.mirrored(before, keys, from, from)).isEqualTo(before);
    }

    @Test
    void aGateStaysWhereItWasWhenAnotherSideOfItsFenceChanges() {
        Barrier fence = fence(List.of(new Barrier.Opening(12, 1)), 0, 0, 10, 0, 10, 10);
        Barrier moved = (Barrier) Reshape.cornerMoved(fence, new Corner(0, 0), new Point(4, 0));
        assertThat(moved.gates().get(0).atM()).isEqualTo(8);
        assertThat(moved.line().at(8)).isEqualTo(new Point(10, 2));
    }

    @Test
    void raisingPassesOneThatIsNotChosen() {
        Cover a = cover(Kind.BED, 0, 0, 1, 0, 1, 1);
        Cover b = cover(Kind.BED, 1, 0, 2, 0, 2, 1);
        Cover c = cover(Kind.BED, 2, 0, 3, 0, 3, 1);
        Cover d = cover(Kind.BED, 3, 0, 4, 0, 4, 1);
        Set<String> keys = Set.of(a.key(), b.key(), d.key());
        assertThat(Copies.raised(yard(a, b, c, d), keys).features()).containsExactly(c, a, b, d);
        assertThat(Copies.lowered(yard(a, b, c, d), keys).features()).containsExactly(a, b, d, c);
    }

    @Test
    void anotherKindKeepsKeyNameAndOutline() {
        Feature bed = AreaKinds.as(Kind.BED, FRONT);
        assertThat(bed).isEqualTo(new Cover(FRONT.key(), Kind.BED, "Front", FRONT.outline(), Extras.NONE));
        assertThat(AreaKinds.ALL)
                .allSatisfy(kind -> assertThat(AreaKinds.as(kind, FRONT).kind()).contains(kind));
        assertThat(AreaKinds.as(Kind.BED, ODD)).isEqualTo(ODD);
    }

    @Test
    void thingsAreCalledByNameOrElseByKind() {
        assertThat(Naming.called(FRONT)).isEqualTo("Front");
        assertThat(Naming.called(head(0, 90, 0, 0))).isEqualTo("head h1");
        assertThat(Naming.called(fence(List.of(), 0, 0, 1, 1))).isEqualTo("fence");
        assertThat(Naming.called(yard(FRONT), Set.of("a", "b"))).isEqualTo("2 things");
        assertThat(Naming.name(Naming.renamed(FRONT, "Side"))).contains("Side");
        assertThat(Naming.renamed(ODD, "Side")).isEqualTo(ODD);
    }
}

package loamline.desk.tool;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Polyline;
import loamline.place.Frame;
import loamline.yard.Barrier;
import loamline.yard.Building;
import loamline.yard.Cover;
import loamline.yard.Edits;
import loamline.yard.Feature;
import loamline.yard.Head;
import loamline.yard.KeepAway;
import loamline.yard.Kind;
import loamline.yard.Panel;
import loamline.yard.Profile;
import loamline.yard.Turf;
import loamline.yard.Yard;
import org.junit.jupiter.api.Test;

class NewFeaturesTest {
    private static final Yard EMPTY = Yard.empty("", Frame.local());
    private static final Outline SQUARE = Outline.of(0, 0, 1, 0, 1, 1, 0, 1);
    private static final Polyline LINE = new Polyline(List.of(new Point(0, 0), new Point(4, 0)));

    private static Yard with(Kind... kinds) {
        Yard yard = EMPTY;
        for (Kind kind : kinds) {
            yard = Edits.add(yard, NewFeatures.area(kind, SQUARE, yard));
        }
        return yard;
    }

    @Test
    void theFirstOfAKindHasItsNameAndLaterOnesANumber() {
        assertThat(with(Kind.TURF, Kind.TURF, Kind.TURF).all(Turf.class).map(Turf::zone))
                .containsExactly("Turf", "Turf 2", "Turf 3");
        assertThat(with(Kind.BED, Kind.PAVING, Kind.BED).all(Cover.class).map(Cover::name))
                .containsExactly("Bed", "Paving", "Bed 2");
        assertThat(with(Kind.BUILDING, Kind.BUILDING).all(Building.class).map(Building::name))
                .containsExactly("Building", "Building 2");
    }

    @Test
    void aNameThatBecameFreeIsGivenAgainAndLettersMayBeSmall() {
        Yard yard = Edits.remove(with(Kind.BED, Kind.BED, Kind.BED), Set.of("f2"));
        assertThat(Edits.add(yard, NewFeatures.area(Kind.BED, SQUARE, yard))
                        .all(Cover.class)
                        .map(Cover::name))
                .containsExactly("Bed", "Bed 3", "Bed 2");

        Turf turf = (Turf) NewFeatures.area(Kind.TURF, SQUARE, EMPTY);
        Yard named = EMPTY.withFeatures(
                List.of(new Turf("x", "turf", "", turf.trouble(), turf.slopePct(), turf.bag(), SQUARE, turf.extras())));
        assertThat(((Turf) NewFeatures.area(Kind.TURF, SQUARE, named)).zone()).isEqualTo("Turf 2");
    }

    @Test
    void headsAreNumbered() {
        Yard yard = EMPTY;
        for (int i = 0; i < 3; i++) {
            yard = Edits.add(yard, NewFeatures.head(new Point(i, 0), OptionalDouble.of(4), 90, 180, yard));
        }
        assertThat(yard.all(Head.class).map(Head::id)).containsExactly("h1", "h2", "h3");
        assertThat(yard.all(Head.class).map(Head::profile)).containsOnly(Profile.Named.CONE);
    }

    @Test
    void keysAreFree() {
        Feature added = NewFeatures.area(Kind.DECK, SQUARE, with(Kind.BED, Kind.BOUNDARY));
        assertThat(added.key()).isEqualTo("f3");
    }

    @Test
    void sizesAreTheUsualOnes() {
        assertThat(((Building) NewFeatures.area(Kind.BUILDING, SQUARE, EMPTY)).heightM())
                .isEqualTo(3.0);
        Barrier fence = (Barrier) NewFeatures.line(Kind.FENCE, LINE, EMPTY);
        assertThat(fence.heightM()).isEqualTo(1.8);
        assertThat(fence.solid()).isTrue();
        assertThat(((Panel) NewFeatures.line(Kind.PANEL, LINE, EMPTY)).heightM())
                .isEqualTo(Panel.DEFAULT_HEIGHT_M);
        assertThat(((KeepAway) NewFeatures.line(Kind.KEEPAWAY, LINE, EMPTY)).radiusM())
                .isEqualTo(1.0);
        assertThat(((KeepAway) NewFeatures.area(Kind.KEEPAWAY, SQUARE, EMPTY)).place())
                .isEqualTo(SQUARE);
    }

    @Test
    void aKindWithoutThatShapeIsRefused() {
        assertThatThrownBy(() -> NewFeatures.area(Kind.FENCE, SQUARE, EMPTY)).hasMessageContaining("FENCE");
        assertThatThrownBy(() -> NewFeatures.line(Kind.BED, LINE, EMPTY)).hasMessageContaining("BED");
    }
}

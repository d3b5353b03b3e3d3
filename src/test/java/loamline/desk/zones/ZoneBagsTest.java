package loamline.desk.zones;

import static loamline.yard.YardFixtures.box;
import static loamline.yard.YardFixtures.yard;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import loamline.desk.session.Results;
import loamline.desk.tool.Effect;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.yard.Core;
import loamline.yard.Extras;
import loamline.yard.Turf;
import loamline.yard.Yard;
import loamline.yard.Zone;
import org.junit.jupiter.api.Test;

class ZoneBagsTest {
    private static Turf zone(String name, double trouble, double... xy) {
        return new Turf(
                name,
                name,
                "",
                OptionalDouble.of(trouble),
                OptionalDouble.empty(),
                Optional.empty(),
                Outline.of(xy),
                Extras.NONE);
    }

    private static final Yard YARD = yard(
            zone("front", 0.1, box(0, 0, 30, 12)),
            zone("side", 0.2, box(40, 0, 50, 12)),
            zone("back", 0.9, box(0, 20, 30, 40)),
            new Core("c", "", "", "back", new Point(15, 30), false, Extras.NONE));
    private static final Yard FREE = yard(YARD.features().subList(0, 3).toArray(loamline.yard.Feature[]::new));

    private static ZoneBags bags(Yard yard) {
        return ZoneBags.of(Results.ground(yard).planned());
    }

    private static List<List<String>> names(ZoneBags bags) {
        return bags.bags().stream()
                .map(bag -> bag.zones().stream().map(Zone::name).toList())
                .toList();
    }

    @Test
    void zonesThatAreLeastUnlikeShareABagAndItSaysWhatThatLoses() {
        ZoneBags bags = bags(FREE);
        assertThat(names(bags)).containsExactly(List.of("front", "side"), List.of("back"));
        assertThat(bags.merges())
                .singleElement()
                .satisfies(sentence -> assertThat(sentence)
                        .startsWith("Putting front and side together gives up ")
                        .contains(
                                " % of the differences between zones. They differ most in trouble (0.1 against 0.2)."));
        assertThat(bags.why()).isEqualTo("Zones that are least unlike share a bag, so that 2 lab samples do for all.");
    }

    @Test
    void aZonePutIntoAnotherBagTakesNoOtherAlong() {
        Effect.Edit edit = bags(FREE).move("side", "B").orElseThrow();
        assertThat(edit.label()).isEqualTo("put zone side into bag B");
        ZoneBags after = bags(edit.after());
        assertThat(names(after)).containsExactly(List.of("front"), List.of("side", "back"));
        assertThat(after.why()).isEqualTo("You chose which zones share a bag.");
        assertThat(after.forget().map(Effect.Edit::after)).contains(FREE);
    }

    @Test
    void aZoneInItsBagAlreadyIsNoEdit() {
        assertThat(bags(FREE).move("side", "A")).isEmpty();
        assertThat(bags(FREE).forget()).isEmpty();
    }

    @Test
    void oneFreeBagMoreCanBeChosen() {
        assertThat(bags(FREE).choices()).containsExactly("A", "B", "C");
    }

    @Test
    void aProposalFreesTheZonesAndSetsTheBudget() {
        Yard bound = bags(FREE).move("side", "B").orElseThrow().after();
        Yard after = bags(bound).propose(" 3 ").edit().orElseThrow().after();
        assertThat(after.planning().orElseThrow().kits()).isEqualTo(OptionalInt.of(3));
        assertThat(names(bags(after))).containsExactly(List.of("front"), List.of("side"), List.of("back"));
        assertThat(bags(after).why()).isEqualTo("Every zone has a bag, and so a lab sample, of its own.");
    }

    @Test
    void aBudgetThatIsNoneIsRefused() {
        assertThat(bags(FREE).propose("0").edit()).isEmpty();
        assertThat(bags(FREE).propose("some").refusal())
                .isEqualTo("A number of lab samples is a whole number from 1 on.");
    }

    @Test
    void aRenamedZoneTakesItsCoresAlong() {
        Yard after = bags(YARD).rename("back", " rear ").edit().orElseThrow().after();
        assertThat(after.all(Turf.class)).extracting(Turf::zone).containsExactly("front", "side", "rear");
        assertThat(after.all(Core.class)).extracting(Core::zone).containsExactly("rear");
    }

    @Test
    void aNameThatIsBlankOrTakenIsRefused() {
        assertThat(bags(FREE).rename("back", " ").refusal()).isEqualTo("A zone needs a name.");
        assertThat(bags(FREE).rename("back", "side").edit()).isEmpty();
        assertThat(bags(FREE).rename("back", "back").edit().map(Effect.Edit::after))
                .contains(FREE);
    }

    @Test
    void grassIsSaidOfTheWholeZone() {
        assertThat(bags(FREE).grass("side", " fescue ").after().all(Turf.class))
                .extracting(Turf::grass)
                .containsExactly("", "fescue", "");
    }
}

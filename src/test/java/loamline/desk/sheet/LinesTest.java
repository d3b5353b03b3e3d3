package loamline.desk.sheet;

import static loamline.yard.YardFixtures.box;
import static loamline.yard.YardFixtures.building;
import static loamline.yard.YardFixtures.gate;
import static loamline.yard.YardFixtures.turf;
import static loamline.yard.YardFixtures.yard;
import static org.assertj.core.api.Assertions.assertThat;

import loamline.desk.session.Results;
import loamline.desk.sheet.Step.Line;
import loamline.units.UnitSystem;
import org.junit.jupiter.api.Test;

class LinesTest {
    private static final Results GROUND =
            Results.ground(yard(turf("front", box(0, 0, 20, 20)), building(box(5, 5, 10, 10)), gate(0, 0)));
    private static final Results PLANNED = GROUND.planned();
    private static final Results EMPTY = Results.ground(yard()).planned();

    @Test
    void everyStepSaysWhatWasFound() {
        Line trace = Lines.trace(PLANNED, UnitSystem.METRIC);
        assertThat(trace.result()).startsWith("375 ").endsWith(" m² turf in 1 part");
        assertThat(Lines.zones(PLANNED, UnitSystem.METRIC)).isEqualTo(new Line("1 zone, 1 bag", State.DONE));
        assertThat(Lines.cores(PLANNED, UnitSystem.METRIC).result())
                .startsWith("12 cores, ")
                .endsWith(" m walk, shortest possible");
        assertThat(Lines.print(PLANNED, UnitSystem.METRIC)).isEqualTo(new Line("Walk plan ready", State.DONE));
    }

    @Test
    void coresThatAreBeingPlannedAreUnderWay() {
        assertThat(Lines.cores(GROUND, UnitSystem.US)).isEqualTo(new Line("Being planned", State.UNDER_WAY));
        assertThat(Lines.print(GROUND, UnitSystem.US).state()).isEqualTo(State.NOT_STARTED);
    }

    @Test
    void anEmptyYardNeedsToBeTracedAndTheRestWaits() {
        assertThat(Lines.trace(EMPTY, UnitSystem.US)).isEqualTo(new Line("No turf yet", State.NEEDS_YOU));
        assertThat(Lines.zones(EMPTY, UnitSystem.US)).isEqualTo(new Line("Waits for turf", State.NOT_STARTED));
        assertThat(Lines.cores(EMPTY, UnitSystem.US)).isEqualTo(new Line("Waits for turf", State.NOT_STARTED));
        assertThat(Lines.print(EMPTY, UnitSystem.US)).isEqualTo(new Line("Waits for cores", State.NOT_STARTED));
    }
}

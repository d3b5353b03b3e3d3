package loamline.desk.foot;

import static loamline.yard.YardFixtures.box;
import static loamline.yard.YardFixtures.turf;
import static loamline.yard.YardFixtures.yard;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import loamline.account.Problem;
import loamline.account.Severity;
import loamline.account.Where;
import loamline.geometry.Point;
import loamline.place.Frame;
import loamline.yard.Yard;
import loamline.yard.YardCheck;
import org.junit.jupiter.api.Test;

class TroubleTest {
    private static final Yard YARD = yard(turf("front", box(0, 0, 10, 10)), turf("side", box(8, 0, 20, 10)));

    @Test
    void aProblemOfAFeatureLeadsThereAndBringsItsRepair() {
        Trouble overlap = Trouble.of(YardCheck.of(YARD), YARD).get(0);
        assertThat(overlap.severity()).isEqualTo(Severity.WARNING);
        assertThat(overlap.feature()).contains(YARD.features().get(1).key());
        assertThat(overlap.at()).contains(new Point(14, 5));
        assertThat(overlap.repair())
                .hasValueSatisfying(step -> assertThat(step.label()).isEqualTo("cut the overlap of side"));
    }

    @Test
    void coordinatesAreForFilesAndNotTold() {
        Problem crossing = Problem.warning(
                "CROSSES", Where.WHOLE, "bed crosses itself, in the north at [-89.0499058, 40.3502296]: move it");
        assertThat(Trouble.of(List.of(crossing), Yard.empty("", Frame.local())))
                .extracting(Trouble::words)
                .containsExactly("Bed crosses itself, in the north: move it.");
    }

    @Test
    void theGravestComeFirstAndAreToldByCountAndWord() {
        Problem note = Problem.info("A", Where.WHOLE, "note");
        Problem warning = Problem.warning("B", Where.feature(9), "warned");
        Problem error = Problem.error("C", Where.WHOLE, "wrong.");
        List<Trouble> all = Trouble.of(List.of(note, warning, error, warning), YARD);
        assertThat(all).extracting(Trouble::words).containsExactly("Wrong.", "Warned.", "Warned.", "Note.");
        assertThat(all)
                .allMatch(trouble -> trouble.feature().isEmpty() && trouble.at().isEmpty());
        assertThat(Trouble.counted(all)).isEqualTo("1 error, 2 warnings");
        assertThat(Trouble.worst(all)).contains(Severity.ERROR);
    }

    @Test
    void notesAreCountedOnlyWhereNothingIsWorse() {
        List<Trouble> notes = Trouble.of(List.of(Problem.info("A", Where.WHOLE, "note")), YARD);
        assertThat(Trouble.counted(notes)).isEqualTo("1 note");
        assertThat(Trouble.counted(List.of())).isEqualTo("No problems found");
        assertThat(Trouble.worst(List.of())).isEmpty();
    }
}

package loamline.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import org.junit.jupiter.api.Test;

class SunTablesTest {
    /** Hours by W. Reeves, University of Georgia Extension, as told by others. */
    @Test
    void lightClassesBeginAtZeroFourSixAndEightHours() {
        List<LightClass> classes = LightClass.published();
        assertThat(classes).extracting(LightClass::fromHours).containsExactly(0.0, 4.0, 6.0, 8.0);
        assertThat(classes.get(LightClass.of(0, classes)).name()).isEqualTo("deep shade");
        assertThat(classes.get(LightClass.of(3.999, classes)).name()).isEqualTo("deep shade");
        assertThat(classes.get(LightClass.of(4, classes)).name()).isEqualTo("partial shade");
        assertThat(classes.get(LightClass.of(14, classes)).name()).isEqualTo("full sun");
    }

    @Test
    void leavesComeAndGoOnTheDaysOfTheTable() {
        CrownSeason season = CrownSeason.usual();
        assertThat(season.inLeaf(LocalDate.of(2027, 4, 19), 40)).isFalse();
        assertThat(season.inLeaf(LocalDate.of(2027, 4, 20), 40)).isTrue();
        assertThat(season.inLeaf(LocalDate.of(2027, 10, 31), 40)).isTrue();
        assertThat(season.inLeaf(LocalDate.of(2027, 11, 1), 40)).isFalse();
        assertThat(season.inLeaf(LocalDate.of(2027, 12, 25), -35)).isTrue();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new CrownSeason(MonthDay.of(5, 1), MonthDay.of(4, 1), 0.5, season.source()));
    }
}

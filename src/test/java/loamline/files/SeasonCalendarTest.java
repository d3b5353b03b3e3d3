package loamline.files;

import static org.assertj.core.api.Assertions.assertThat;

import biweekly.Biweekly;
import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import biweekly.io.ParseWarning;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Date;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import loamline.season.Ground;
import loamline.season.Season;
import loamline.season.SeasonInputs;
import loamline.season.SeasonOptions;
import loamline.season.Task;
import org.junit.jupiter.api.Test;

/** A season's calendar as an independent library reads it (biweekly 0.6.8). */
class SeasonCalendarTest {
    private static final String ZONE = "Front; west, by the “größte” oak\\pond and the long hedge";
    private static final String YARD = "14, Plover; Court\\west";

    private static Season season(double areaM2) {
        return Season.of(new SeasonInputs(
                List.of(
                        new Ground(ZONE, "Kentucky bluegrass", areaM2, areaM2),
                        new Ground("Back", "tall fescue", 200, 200)),
                List.of(),
                ProductFile.read(Path.of("demo-data/plover-court/products.csv")).products(),
                List.of(),
                List.of(),
                SeasonOptions.from(LocalDate.of(2027, 3, 1)).inRegion("illinois")));
    }

    private static String text(Season season) {
        return SeasonFiles.of(YARD, season, "Loamline").get("season.ics");
    }

    private static ICalendar parsed(String text) {
        List<List<ParseWarning>> warnings = new ArrayList<>();
        List<ICalendar> all = Biweekly.parse(text).warnings(warnings).all();
        assertThat(warnings).allMatch(List::isEmpty);
        assertThat(all).hasSize(1);
        assertThat(all.get(0).validate(ICalVersion.V2_0).isEmpty()).isTrue();
        return all.get(0);
    }

    @Test
    void aLibraryReadsEveryTaskAsAnEventOfItsWholeDay() {
        Season season = season(300);
        List<VEvent> events = parsed(text(season)).getEvents();
        assertThat(events).hasSameSizeAs(season.tasks()).hasSizeGreaterThan(3);
        for (int i = 0; i < events.size(); i++) {
            Task task = season.tasks().get(i);
            VEvent event = events.get(i);
            assertThat(event.getDateStart().getValue().hasTime()).isFalse();
            assertThat(day(event.getDateStart().getValue())).isEqualTo(task.date());
            assertThat(day(event.getDateEnd().getValue())).isEqualTo(task.date().plusDays(1));
            assertThat(event.getSummary().getValue())
                    .isEqualTo(task.action().title() + ", " + task.zone() + ": " + task.product());
            assertThat(event.getLocation().getValue()).isEqualTo(YARD);
            assertThat(event.getDescription().getValue())
                    .contains(task.reason())
                    .endsWith(String.join(" ", task.cautions()));
        }
    }

    private static LocalDate day(Date date) {
        return date.toInstant().atZone(ZoneId.systemDefault()).toLocalDate();
    }

    @Test
    void calendarsOfTwoYardsShareNoIdAndTheSameYardKeepsIts() {
        Set<String> one = ids(season(300));
        assertThat(one).hasSize(season(300).tasks().size()).isEqualTo(ids(season(300)));
        assertThat(ids(season(301))).doesNotContainAnyElementsOf(one);
    }

    private static Set<String> ids(Season season) {
        Set<String> ids = new HashSet<>();
        parsed(text(season)).getEvents().forEach(event -> ids.add(event.getUid().getValue()));
        return ids;
    }

    @Test
    void noLineIsLongerThanSeventyFiveOctetsAndEachEndsAsItShould() {
        String text = text(season(300));
        assertThat(text.lines()).allMatch(line -> line.getBytes(StandardCharsets.UTF_8).length <= 75);
        assertThat(text).contains("\r\n ").endsWith("END:VCALENDAR\r\n");
        assertThat(text.replace("\r\n", "")).doesNotContain("\n").doesNotContain("\r");
    }
}

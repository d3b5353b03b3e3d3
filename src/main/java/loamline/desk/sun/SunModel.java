package loamline.desk.sun;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import javafx.beans.InvalidationListener;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.value.ObservableValue;
import loamline.desk.map.Found;
import loamline.desk.session.Derived;
import loamline.desk.session.Results;
import loamline.desk.session.Session;
import loamline.desk.sheet.State;
import loamline.desk.sheet.Step.Line;
import loamline.place.LonLat;
import loamline.raster.Grid;
import loamline.scene.Ramp;
import loamline.sheets.SunMap;
import loamline.sun.Glare;
import loamline.sun.Shade;
import loamline.sun.SunPath;
import loamline.sun.SunPosition;
import loamline.sun.SunRequest;
import loamline.sun.SunStudy;
import loamline.sun.ZoneSun;
import loamline.units.Formatting;
import loamline.units.Measure;
import loamline.units.UnitSystem;
import loamline.yard.Panel;
import loamline.yard.Yard;

/** The sun on the yard on show, and what of it is seen on the map. */
public final class SunModel {
    /** The day of shade at an hour, if the season has several: its first. */
    private static final int SECONDS_A_DEGREE = 240;

    private final Session session;
    private final int year;
    private final Derived<SunStudy.Answer> derived;
    private final ObjectProperty<Season> season = new SimpleObjectProperty<>(Season.MIDSUMMER);
    private final ObjectProperty<OptionalInt> minute = new SimpleObjectProperty<>(OptionalInt.empty());
    private final ReadOnlyObjectWrapper<Found> found = new ReadOnlyObjectWrapper<>(Found.NOTHING);
    private final SunZones zones;
    private volatile List<LocalDate> dates;
    private Optional<Ready> ready = Optional.empty();

    /** The shadow casters of a yard on a day, ready for any hour. */
    private record Ready(Yard yard, LocalDate date, Shade shade) {}

    /** @param year whose days are looked at */
    public SunModel(Session session, int year) {
        this.session = session;
        this.year = year;
        dates = Season.MIDSUMMER.in(year);
        derived = new Derived<>(
                session,
                "sun",
                "Following the sun",
                (yard, before) ->
                        SunStudy.of(yard, new SunRequest(dates, SunRequest.USUAL_STEP, SunRequest.USUAL_CELL_M)));
        zones = new SunZones(session, derived.value()::get);
        season.addListener((o, before, now) -> {
            dates = now.in(year);
            derived.again();
        });
        InvalidationListener changed = o -> found.set(study().map(this::seen).orElse(Found.NOTHING));
        derived.value().addListener(changed);
        minute.addListener(changed);
    }

    /** What came of the yard; empty while nothing has. */
    Optional<SunStudy.Answer> answer() {
        return derived.value().get().map(Derived.Of::value);
    }

    /** The hours of sun; empty while they are worked out, or without a place on the earth. */
    public Optional<SunStudy> study() {
        return answer().flatMap(SunStudy.Answer::study);
    }

    /**
     * Direct sun of each zone, hours a day, on days when grass grows; no zones while they are worked out or without a place
     * on the earth; empty while midwinter is looked at.
     */
    public Optional<Map<String, Double>> growingHours() {
        return season.get() == Season.MIDWINTER
                ? Optional.empty()
                : Optional.of(study().map(SunStudy::zones).orElse(List.of()).stream()
                        .collect(Collectors.toMap(ZoneSun::name, ZoneSun::meanHours)));
    }

    private Found seen(SunStudy study) {
        Grid shown = minute.get().isPresent() ? light(study, minute.get().getAsInt()) : study.hours();
        Measure measure = minute.get().isPresent() ? Measure.PERCENT : Measure.TIME_HOURS;
        return new Found(
                Optional.of(new Found.Amounts(shown, Ramp.CIVIDIS, measure)), List.of(), Optional.empty(), glare());
    }

    /** The share of the sun that reaches each cell of turf at a minute of the day by the sun. */
    private Grid light(SunStudy study, int minuteOfDay) {
        Yard yard = session.shown().get();
        Optional<LonLat> place = yard.frame().origin();
        if (place.isEmpty()) {
            return study.hours();
        }
        Shade shade = ready(yard, place.get(), study);
        SunPosition sun = SunPath.at(place.get(), utc(place.get(), minuteOfDay));
        float[] light = shade.light(sun);
        return Grid.of(study.hours().spec(), values -> {
            for (int i = 0; i < values.length; i++) {
                values[i] = Double.isNaN(study.hours().at(i)) ? Double.NaN : light[i];
            }
        });
    }

    /** The moment that is seen, for a page; empty while hours are. */
    public Optional<SunMap.Moment> moment() {
        return study().filter(study -> minute.get().isPresent()).map(study -> {
            int at = minute.get().getAsInt();
            String words = clock(at) + " by the sun, " + dates.get(0);
            return new SunMap.Moment(words, light(study, at), glare());
        });
    }

    /** A minute of the day as hours and minutes. */
    static String clock(int minuteOfDay) {
        return "%d:%02d".formatted(minuteOfDay / 60, minuteOfDay % 60);
    }

    /** Where the panels throw the sun at the minute that is seen; none while hours are. */
    List<Glare> glare() {
        Yard yard = session.shown().get();
        Optional<LonLat> place = yard.frame().origin();
        return minute.get().isPresent() && place.isPresent()
                ? Glare.of(
                        yard,
                        List.of(SunPath.at(
                                place.get(), utc(place.get(), minute.get().getAsInt()))))
                : List.of();
    }

    /** Where glare lies, or why none is seen. */
    String glareWords() {
        if (session.shown().get().all(Panel.class).findAny().isEmpty()) {
            return "Draw a window as a panel in Trace (Q) to see its glare.";
        }
        return glare().isEmpty()
                ? "No panel throws the sun on the ground now."
                : "Glare where a panel throws the sun, if nothing stands in its way.";
    }

    private Shade ready(Yard yard, LonLat place, SunStudy study) {
        LocalDate date = dates.get(0);
        Ready now = ready.filter(kept -> kept.yard().equals(yard) && kept.date().equals(date))
                .orElseGet(() -> new Ready(
                        yard,
                        date,
                        Shade.of(yard, date, place.latDeg(), study.hours().spec())));
        ready = Optional.of(now);
        return now.shade();
    }

    private Instant utc(LonLat place, int minuteOfDay) {
        return dates.get(0)
                .atTime(LocalTime.MIDNIGHT)
                .toInstant(ZoneOffset.UTC)
                .plus(Duration.ofMinutes(minuteOfDay))
                .minusSeconds(Math.round(place.lonDeg() * SECONDS_A_DEGREE));
    }

    /** What the step has come to: the part with the least sun. */
    public Line line(Results results, UnitSystem units) {
        if (results.zones().isEmpty()) {
            return new Line("Waits for turf", State.NOT_STARTED);
        }
        if (answer().isEmpty()) {
            return new Line("Being worked out", State.UNDER_WAY);
        }
        return study().flatMap(study -> study.zones().stream().min(Comparator.comparingDouble(ZoneSun::meanHours)))
                .map(least -> new Line(
                        least.name() + ": "
                                + Formatting.format(Measure.TIME_HOURS, least.meanHours(), units, 1)
                                        .text() + " of sun, the least",
                        State.DONE))
                .orElse(new Line("Needs a place on the earth", State.NEEDS_YOU));
    }

    /** The zones that the light makes. */
    public SunZones zones() {
        return zones;
    }

    ObjectProperty<Season> season() {
        return season;
    }

    /** The minute of the day whose shade is seen, by the sun's own time; empty for hours of sun. */
    ObjectProperty<OptionalInt> minute() {
        return minute;
    }

    /** Changes whenever something is worked out anew. */
    public ObservableValue<?> known() {
        return derived.value();
    }

    /** What is to be seen on the map. */
    public ReadOnlyObjectProperty<Found> found() {
        return found.getReadOnlyProperty();
    }

    int year() {
        return year;
    }
}

package loamline.desk.sun;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import loamline.desk.session.Derived;
import loamline.desk.session.Session;
import loamline.sun.SunClass;
import loamline.sun.SunStudy;
import loamline.yard.Turf;
import loamline.yard.Yard;
import loamline.yard.ZoneDivision;
import loamline.yard.Zones;

/** Zones by the hours of sun that the turf gets, on the days that are looked at. */
public final class SunZones {
    private static final String STILL_FOLLOWING = "The sun is still being followed; ask again in a moment.";

    private final Session session;
    private final Supplier<Optional<Derived.Of<SunStudy.Answer>>> known;
    private final ReadOnlyStringWrapper outcome = new ReadOnlyStringWrapper("");

    /** @param known what came of the sun last, perhaps on an older yard */
    SunZones(Session session, Supplier<Optional<Derived.Of<SunStudy.Answer>>> known) {
        this.session = session;
        this.known = known;
    }

    /** Cuts all zones, as one edit; {@link #outcome} says what came of it. */
    public void cut() {
        Yard yard = session.history().get().now();
        Optional<SunStudy.Answer> answer =
                known.get().filter(of -> of.yard().equals(yard)).map(Derived.Of::value);
        if (answer.isEmpty()) {
            outcome.set(STILL_FOLLOWING);
        } else if (answer.get().study().isEmpty()) {
            outcome.set("Hours of sun need turf, and a place on the earth.");
        } else {
            SunStudy study = answer.get().study().get();
            session.work()
                    .latest(
                            "zones by sun",
                            "Cutting the zones by sun",
                            () -> ZoneDivision.of(yard, parts(study, yard), SunClass.LEAST_PATCH_M2),
                            divided -> take(yard, study.request().dates(), divided));
        }
    }

    private static List<ZoneDivision.Part> parts(SunStudy study, Yard yard) {
        return SunClass.propose(study, Zones.of(yard)).stream()
                .map(part -> new ZoneDivision.Part(part.light().name(), part.ground()))
                .toList();
    }

    private void take(Yard before, List<LocalDate> dates, Optional<Yard> divided) {
        if (!before.equals(session.history().get().now())) {
            outcome.set(STILL_FOLLOWING);
        } else if (divided.isEmpty()) {
            outcome.set("Each zone lies in one class of light already.");
        } else {
            session.edit("cut zones by sun", divided.get());
            outcome.set(counted(before) + " became " + counted(divided.get()) + ", by hours of sun on " + told(dates)
                    + ". Undo takes it back.");
        }
    }

    private static String counted(Yard yard) {
        long zones = yard.all(Turf.class).map(Turf::zone).distinct().count();
        return zones + (zones == 1 ? " zone" : " zones");
    }

    private static String told(List<LocalDate> dates) {
        return dates.size() > 2
                ? dates.size() + " days from " + dates.get(0) + " on"
                : dates.stream().map(LocalDate::toString).collect(Collectors.joining(" and "));
    }

    /** What came of cutting; empty before. */
    public ReadOnlyStringProperty outcome() {
        return outcome.getReadOnlyProperty();
    }
}

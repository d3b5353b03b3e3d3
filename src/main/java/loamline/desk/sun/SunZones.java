package loamline.desk.sun;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import loamline.desk.session.Derived;
import loamline.desk.session.Session;
import loamline.desk.zones.ZoneCutting;
import loamline.sun.SunClass;
import loamline.sun.SunStudy;
import loamline.yard.Yard;
import loamline.yard.ZoneDivision;
import loamline.yard.Zones;

/** Zones by the hours of sun that the turf gets, on the days that are looked at. */
public final class SunZones {
    private final Session session;
    private final ZoneCutting cutting;
    private final Supplier<Optional<Derived.Of<SunStudy.Answer>>> known;

    /** @param known what came of the sun last, perhaps on an older yard */
    SunZones(Session session, Supplier<Optional<Derived.Of<SunStudy.Answer>>> known) {
        this.session = session;
        this.known = known;
        cutting = new ZoneCutting(session);
    }

    /** Cuts all zones, as one edit; {@link #cutting} says what came of it. */
    public void cut() {
        Yard yard = session.history().get().now();
        Optional<SunStudy.Answer> answer =
                known.get().filter(of -> of.yard().equals(yard)).map(Derived.Of::value);
        if (answer.isEmpty()) {
            cutting.say("The sun is still being followed; ask again in a moment.");
            return;
        }
        Optional<SunStudy> study = answer.get().study();
        cutting.cut(new ZoneCutting.Proposal(
                "by sun",
                "Hours of sun need turf, and a place on the earth.",
                "hours of sun on " + study.map(s -> told(s.request().dates())).orElse(""),
                now -> study.map(s -> parts(s, now))));
    }

    private static List<ZoneDivision.Part> parts(SunStudy study, Yard yard) {
        return SunClass.propose(study, Zones.of(yard)).stream()
                .map(part -> new ZoneDivision.Part(part.light().name(), part.ground()))
                .toList();
    }

    private static String told(List<LocalDate> dates) {
        return dates.size() > 2
                ? dates.size() + " days from " + dates.get(0) + " on"
                : dates.stream().map(LocalDate::toString).collect(Collectors.joining(" and "));
    }

    /** What cuts the zones; others may cut with it too. */
    public ZoneCutting cutting() {
        return cutting;
    }
}

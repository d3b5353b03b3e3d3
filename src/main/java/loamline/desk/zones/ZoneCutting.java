package loamline.desk.zones;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import loamline.desk.session.Session;
import loamline.sun.SunClass;
import loamline.yard.Turf;
import loamline.yard.Yard;
import loamline.yard.ZoneDivision;
import loamline.yard.ZoneDivision.Part;

/** Cuts all zones by the parts of a proposal, as one edit, and says what came of it. */
public final class ZoneCutting {
    private final Session session;
    private final ReadOnlyStringWrapper outcome = new ReadOnlyStringWrapper("");

    public ZoneCutting(Session session) {
        this.session = session;
    }

    /**
     * What zones are cut by.
     *
     * @param by as in "by valve"
     * @param lacking what to say if there are no parts
     * @param basis what the parts rest on, as in "3 zones became 5, by the heads that reach them"
     * @param parts of a yard; empty if it lacks what they go by
     */
    public record Proposal(String by, String lacking, String basis, Function<Yard, Optional<List<Part>>> parts) {}

    /** Cuts the zones in the background. */
    public void cut(Proposal proposal) {
        Yard yard = session.history().get().now();
        session.work()
                .latest(
                        "cut zones",
                        "Cutting the zones " + proposal.by(),
                        () -> proposal.parts()
                                .apply(yard)
                                .map(parts -> ZoneDivision.of(yard, parts, SunClass.LEAST_PATCH_M2)
                                        .orElse(yard)),
                        divided -> divided.ifPresentOrElse(
                                there -> take(yard, proposal, there), () -> say(proposal.lacking())));
    }

    private void take(Yard yard, Proposal proposal, Yard divided) {
        if (!yard.equals(session.history().get().now())) {
            say("The yard has changed meanwhile; ask again.");
        } else if (divided.equals(yard)) {
            say("Nothing to cut " + proposal.by() + ": each zone is all of one part.");
        } else {
            session.edit("cut zones " + proposal.by(), divided);
            say(counted(yard) + " became " + counted(divided) + ", by " + proposal.basis() + ". Undo takes it back.");
        }
    }

    private static String counted(Yard yard) {
        long zones = yard.all(Turf.class).map(Turf::zone).distinct().count();
        return zones + (zones == 1 ? " zone" : " zones");
    }

    /** Says something in the place of an outcome. */
    public void say(String words) {
        outcome.set(words);
    }

    /** What came of cutting; empty before. */
    public ReadOnlyStringProperty outcome() {
        return outcome.getReadOnlyProperty();
    }
}

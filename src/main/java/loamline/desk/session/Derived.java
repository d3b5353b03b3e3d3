package loamline.desk.session;

import java.util.Optional;
import java.util.function.BiFunction;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import loamline.yard.Yard;

/**
 * Something that follows from the yard on show and is worked out in the background, also while the yard is in motion:
 * what is under way is finished and shown before the newest yard has its turn, so that a drag is followed as fast as
 * the machine can. What was there before stays until the next is ready; another yard begins with nothing.
 * Nothing is worked out before the first plan is seen.
 */
public final class Derived<T> {
    /** What came of a yard. */
    public record Of<T>(Yard yard, T value) {}

    private final Session session;
    private final String sort;
    private final String words;
    private final BiFunction<Yard, Optional<Of<T>>, T> how;
    private boolean stale;
    private final ReadOnlyObjectWrapper<Optional<Of<T>>> value = new ReadOnlyObjectWrapper<>(Optional.empty());

    /**
     * @param sort the sort of {@link Work} it is
     * @param words what is being done, for the foot
     * @param how from the yard, and what came of the one before, to the value; not on the screen's thread
     */
    public Derived(Session session, String sort, String words, BiFunction<Yard, Optional<Of<T>>, T> how) {
        this.session = session;
        this.sort = sort;
        this.words = words;
        this.how = how;
        session.results().addListener((o, before, now) -> follow(now));
        session.seen().addListener((o, before, now) -> follow(session.results().get()));
        follow(session.results().get());
    }

    private void follow(Optional<Results> now) {
        if (now.isEmpty()) {
            value.set(Optional.empty());
        } else if (!isUnderWay() && session.seen().get()) {
            begin(now.get().yard());
        }
    }

    /** Works it out again, as something else than the yard has changed that it follows from. */
    public void again() {
        stale = true;
        follow(session.results().get());
    }

    private boolean isUnderWay() {
        return session.work().running().get().stream()
                .anyMatch(job -> job.sort().equals(sort));
    }

    private void begin(Yard yard) {
        Optional<Of<T>> before = value.get();
        if (stale || before.filter(of -> of.yard().equals(yard)).isEmpty()) {
            stale = false;
            session.work().latest(sort, words, () -> new Of<>(yard, how.apply(yard, before)), this::take);
        }
    }

    private void take(Of<T> made) {
        session.results().get().ifPresent(now -> {
            value.set(Optional.of(made));
            begin(now.yard());
        });
    }

    /** What came of the yard last worked out; that may be one edit behind. */
    public ReadOnlyObjectProperty<Optional<Of<T>>> value() {
        return value.getReadOnlyProperty();
    }
}

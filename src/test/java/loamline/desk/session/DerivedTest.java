package loamline.desk.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import loamline.place.Frame;
import loamline.yard.History;
import loamline.yard.Yard;
import org.junit.jupiter.api.Test;

class DerivedTest {
    private static final Yard YARD = Yard.empty("a", Frame.local());

    private final Queue<Runnable> waiting = new ArrayDeque<>();
    private final List<String> worked = new ArrayList<>();
    private final Session session = new Session(YARD, new Work(new AtOnce(), waiting::add));
    private final Derived<String> derived = new Derived<>(session, "letters", "Counting letters", (yard, before) -> {
        worked.add(yard.name());
        return yard.name() + before.map(Derived.Of::value).orElse("");
    });

    DerivedTest() {
        session.seen().set(true);
        settle();
    }

    private void settle() {
        while (!waiting.isEmpty()) {
            waiting.remove().run();
        }
    }

    private String value() {
        return derived.value().get().map(Derived.Of::value).orElse("");
    }

    @Test
    void itFollowsEveryEditAndKnowsWhatWasBefore() {
        session.edit("name", YARD.withName("b"));
        settle();
        assertThat(value()).isEqualTo("ba");
    }

    @Test
    void whileOneIsUnderWayOnlyTheNewestWaits() {
        settle();
        session.preview(YARD.withName("b"));
        session.preview(YARD.withName("c"));
        session.preview(YARD.withName("d"));
        settle();
        assertThat(worked).containsExactly("a", "b", "d");
        assertThat(value()).isEqualTo("dba");
    }

    @Test
    void theSameYardIsNotWorkedOutAgain() {
        settle();
        session.edit("nothing", YARD);
        settle();
        assertThat(worked).containsExactly("a");
    }

    @Test
    void aPlanIsSeenFirst() {
        session.seen().set(false);
        session.edit("name", YARD.withName("b"));
        settle();
        assertThat(worked).containsExactly("a");
        session.seen().set(true);
        settle();
        assertThat(worked).containsExactly("a", "b");
    }

    @Test
    void itIsWorkedOutAgainWhenAsked() {
        settle();
        derived.again();
        settle();
        assertThat(worked).containsExactly("a", "a");
    }

    @Test
    void anotherYardBeginsWithNothing() {
        settle();
        session.open(History.of(YARD.withName("z")));
        assertThat(value()).isEmpty();
        settle();
        assertThat(value()).isEqualTo("z");
    }
}

package loamline.desk.store;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import loamline.desk.session.AtOnce;
import loamline.desk.session.Session;
import loamline.place.Frame;
import loamline.yard.Yard;

/** A desk without a screen: everything happens at once on the test's thread, and time passes when told to. */
final class TestDesk implements Asking {
    /** Times stand in the order they come due; of equal ones the first asked comes first. */
    private record Due(long ms, long number, Runnable task) {}

    private final PriorityQueue<Due> waiting =
            new PriorityQueue<>(Comparator.comparingLong(Due::ms).thenComparingLong(Due::number));

    private final Deque<String> answers = new ArrayDeque<>();
    private final Deque<Optional<Path>> files = new ArrayDeque<>();
    final List<String> asked = new ArrayList<>();
    final List<Path> suggested = new ArrayList<>();
    final Session session;
    final Desk desk;
    final Store store;
    private long nowMs;
    private long number;

    TestDesk(Path home) {
        session = new Session(Yard.empty("first", Frame.local()), AtOnce.work());
        desk = new Desk(session, Home.in(home), this, this::later, Runnable::run);
        store = desk.store();
    }

    static TestDesk started(Path home) {
        TestDesk made = new TestDesk(home);
        made.desk.start(Optional.empty());
        return made;
    }

    private void later(long ms, Runnable task) {
        waiting.add(new Due(nowMs + ms, number++, task));
    }

    /** Lets time pass, and does what comes due. */
    TestDesk pass(long ms) {
        long end = nowMs + ms;
        while (!waiting.isEmpty() && waiting.element().ms() <= end) {
            Due due = waiting.remove();
            nowMs = due.ms();
            due.task().run();
        }
        nowMs = end;
        return this;
    }

    TestDesk answering(String label) {
        answers.add(label);
        return this;
    }

    TestDesk choosing(Path file) {
        files.add(Optional.of(file));
        return this;
    }

    TestDesk edit(String name) {
        session.edit("name the yard", session.history().get().now().withName(name));
        return this;
    }

    String yardName() {
        return session.history().get().now().name();
    }

    boolean isUnsaved() {
        return session.history().get().isUnsaved();
    }

    List<String> notices() {
        return store.notices().all().get().stream().map(Notices.Notice::text).toList();
    }

    /** Presses a button of a notice. */
    void press(String label) {
        for (Notices.Notice notice : store.notices().all().get()) {
            for (Notices.Action action : notice.actions()) {
                if (action.label().equals(label)) {
                    store.notices().use(notice, action);
                    return;
                }
            }
        }
        throw new AssertionError(
                "no button “" + label + "” in " + store.notices().all().get());
    }

    @Override
    public <A> A ask(Question<A> question) {
        asked.add(question.text());
        String label = answers.remove();
        return question.choices().stream()
                .filter(choice -> choice.label().equals(label))
                .findFirst()
                .orElseThrow()
                .answer();
    }

    @Override
    public Optional<Path> fileToOpen(String title, Sort sort, Optional<Path> folder) {
        return files.remove();
    }

    @Override
    public Optional<Path> fileToSave(String title, List<Sort> sorts, Path first) {
        suggested.add(first);
        return files.isEmpty() ? Optional.empty() : files.remove();
    }
}

package loamline.desk.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.LinkedBlockingQueue;
import loamline.cancel.Cancellation;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Jobs run on real threads; the test is the screen's thread and decides when it gets to its work. */
@Timeout(20)
class WorkTest {
    private final ExecutorService threads = Executors.newCachedThreadPool();
    private final BlockingQueue<Runnable> screen = new LinkedBlockingQueue<>();
    private final Work work = new Work(threads, screen::add);
    private final List<String> got = new ArrayList<>();

    @AfterEach
    void endThreads() {
        threads.shutdownNow();
    }

    private void screenRunsOne() throws InterruptedException {
        screen.take().run();
    }

    private static String spin() {
        while (true) {
            Cancellation.check();
            Thread.onSpinWait();
        }
    }

    private List<String> running() {
        return work.running().get().stream().map(Job::words).toList();
    }

    @Test
    void aResultIsHandedOverOnTheScreensThread() throws InterruptedException {
        work.latest("a", "Doing a", () -> "made", got::add);
        assertThat(running()).containsExactly("Doing a");
        assertThat(got).isEmpty();
        screenRunsOne();
        assertThat(got).containsExactly("made");
        assertThat(running()).isEmpty();
    }

    @Test
    void jobsOfSeveralSortsRunAtOnce() throws InterruptedException {
        CountDownLatch both = new CountDownLatch(2);
        work.latest("a", "Doing a", () -> meet(both), got::add);
        work.latest("b", "Doing b", () -> meet(both), got::add);
        assertThat(running()).containsExactly("Doing a", "Doing b");
        screenRunsOne();
        screenRunsOne();
        assertThat(got).containsExactly("met", "met");
    }

    private static String meet(CountDownLatch both) throws InterruptedException {
        both.countDown();
        both.await();
        return "met";
    }

    @Test
    void newerWorkOfASortTakesThePlaceOfOlder() throws InterruptedException {
        CountDownLatch started = new CountDownLatch(1);
        work.latest(
                "a",
                "First",
                () -> {
                    started.countDown();
                    return spin();
                },
                got::add);
        started.await();
        work.latest("a", "Second", () -> "second", got::add);
        assertThat(running()).containsExactly("Second");
        screenRunsOne();
        screenRunsOne();
        assertThat(got).containsExactly("second");
        assertThat(work.stopped().get()).isEmpty();
    }

    @Test
    void aResultThatComesLateOverwritesNothing() throws InterruptedException {
        CountDownLatch made = new CountDownLatch(1);
        work.latest(
                "a",
                "First",
                () -> {
                    made.countDown();
                    return "first";
                },
                got::add);
        made.await();
        Runnable late = screen.take();
        work.latest("a", "Second", () -> "second", got::add);
        screenRunsOne();
        late.run();
        assertThat(got).containsExactly("second");
    }

    @Test
    void aCancelledJobStopsAndOffersToBeDoneAgain() throws InterruptedException {
        CountDownLatch started = new CountDownLatch(1);
        boolean[] first = {true};
        work.latest(
                "plan",
                "Planning",
                "Plan again",
                progress -> {
                    started.countDown();
                    boolean once = first[0];
                    first[0] = false;
                    return once ? spin() : "planned";
                },
                got::add);
        started.await();
        work.cancel("plan");
        assertThat(running()).isEmpty();
        screenRunsOne();
        Job.Stopped stopped = work.stopped().get().get(0);
        assertThat(stopped.words()).isEqualTo("Planning was cancelled; what was there before stays.");
        assertThat(stopped.again()).isEqualTo("Plan again");
        stopped.redo().run();
        assertThat(work.stopped().get()).isEmpty();
        screenRunsOne();
        assertThat(got).containsExactly("planned");
    }

    @Test
    void cancellingWhatDoesNotRunIsNothing() {
        work.cancel("a");
        assertThat(work.stopped().get()).isEmpty();
    }

    @Test
    void aJobThatFailsSaysSoInWords() throws InterruptedException {
        work.latest(
                "a",
                "Doing a",
                () -> {
                    throw new IllegalStateException("the ground is frozen");
                },
                (String made) -> got.add(made));
        screenRunsOne();
        assertThat(work.stopped().get())
                .extracting(Job.Stopped::words)
                .containsExactly("Doing a failed: the ground is frozen (IllegalStateException). Undo the last change or"
                        + " try again; what was there before stays.");
        work.dismiss("a");
        assertThat(work.stopped().get()).isEmpty();
    }

    @Test
    void anErrorOfTheMachineIsToldToo() throws InterruptedException {
        work.latest(
                "a",
                "Doing a",
                () -> {
                    throw new StackOverflowError();
                },
                (String made) -> got.add(made));
        screenRunsOne();
        assertThat(work.stopped().get().get(0).words()).startsWith("Doing a failed: StackOverflowError.");
    }

    @Test
    void aResultThatCannotBeTakenOverIsToldToo() throws InterruptedException {
        work.latest("a", "Doing a", () -> "made", made -> {
            throw new IllegalStateException("no room for " + made);
        });
        screenRunsOne();
        assertThat(work.stopped().get().get(0).words()).startsWith("Doing a failed: no room for made");
    }

    @Test
    void progressIsShownInStepsOfAPercent() throws InterruptedException {
        CountDownLatch told = new CountDownLatch(1);
        CountDownLatch seen = new CountDownLatch(1);
        work.latest(
                "a",
                "Doing a",
                "Try again",
                progress -> {
                    progress.at(0.5);
                    progress.at(0.501);
                    told.countDown();
                    seen.await();
                    return "made";
                },
                got::add);
        told.await();
        assertThat(work.running().get().get(0).share()).isEmpty();
        assertThat(screen).hasSize(1);
        screenRunsOne();
        assertThat(work.running().get().get(0).share()).isEqualTo(OptionalDouble.of(0.5));
        seen.countDown();
        screenRunsOne();
        assertThat(got).containsExactly("made");
    }
}

package loamline.desk.session;

import static loamline.yard.YardFixtures.box;
import static loamline.yard.YardFixtures.turf;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.LinkedBlockingQueue;
import loamline.sampling.CorePlan;
import loamline.yard.PlanOptions;
import loamline.yard.YardFixtures;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

@Timeout(20)
class CancelledPlanningTest {
    private final ExecutorService threads = Executors.newCachedThreadPool();
    private final BlockingQueue<Runnable> screen = new LinkedBlockingQueue<>();

    @AfterEach
    void endThreads() {
        threads.shutdownNow();
    }

    @Test
    void aCancelledPlanIsMadeOnlyByPlanningAgain() throws InterruptedException {
        Work work = new Work(threads, screen::add);
        Session session = new Session(YardFixtures.yard(turf("lawn", box(0, 0, 30, 20))), work);
        screen.take().run();
        CorePlan before = session.results().get().orElseThrow().plan().orElseThrow();

        session.edit("plan without", session.history().get().now().withPlanning(fiveCores()));
        work.cancel("plan");
        assertThat(session.results().get().orElseThrow().plan()).isEmpty();
        Job.Stopped stopped = work.stopped().get().get(0);
        assertThat(stopped.words()).isEqualTo("Planning the cores was cancelled; what was there before stays.");
        assertThat(stopped.again()).isEqualTo("Plan again");

        stopped.redo().run();
        while (!work.running().get().isEmpty()) {
            screen.take().run();
        }
        assertThat(session.results().get().orElseThrow().plan()).isPresent().isNotEqualTo(Optional.of(before));
        assertThat(work.stopped().get()).isEmpty();
    }

    private static PlanOptions fiveCores() {
        PlanOptions usual = PlanOptions.USUAL;
        return new PlanOptions(
                usual.kits(),
                5,
                usual.edgeBufferM(),
                usual.trunkBufferM(),
                usual.headBufferM(),
                usual.place(),
                usual.sparesPerStratum(),
                usual.seed(),
                usual.walk(),
                usual.probe(),
                usual.extras());
    }
}

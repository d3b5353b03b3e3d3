package loamline.sampling;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.concurrent.CancellationException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import loamline.bench.LargeYard;
import loamline.yard.Extras;
import loamline.yard.PlanOptions;
import loamline.yard.PlanOptions.Place;
import loamline.yard.Probe;
import loamline.yard.Yard;
import org.junit.jupiter.api.Test;

class CancelledPlanTest {
    /** What a person does not notice between pressing Cancel and having the machine back; own choice, no source. */
    private static final long SOON_MS = 100;

    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    /** All 360 cores of six bags in one round. */
    private static final PlanOptions LONG = new PlanOptions(
            OptionalInt.empty(),
            60,
            0.9,
            0.9,
            0.6,
            Place.CENTRE,
            1,
            1,
            PlanOptions.Rounds.ALL,
            Probe.USUAL,
            Extras.NONE);

    private final Yard yard = LargeYard.make();

    /** Milliseconds of computing from the cancel to the end; computing, since tests share the machine. */
    private long msAfterCancelAt(PlanOptions options, long ms) throws InterruptedException {
        AtomicReference<Throwable> end = new AtomicReference<>();
        long[] endedAt = new long[1];
        Thread thread = new Thread(() -> {
            try {
                CorePlanner.plan(yard, options);
            } catch (CancellationException e) {
                end.set(e);
            }
            endedAt[0] = THREADS.getCurrentThreadCpuTime();
        });
        thread.start();
        long until = TimeUnit.MILLISECONDS.toNanos(ms);
        while (thread.isAlive() && THREADS.getThreadCpuTime(thread.getId()) < until) {
            Thread.sleep(1);
        }
        long cancelledAt = THREADS.getThreadCpuTime(thread.getId());
        thread.interrupt();
        thread.join();
        assertThat(end.get()).as("ended by the cancel at " + ms + " ms").isInstanceOf(CancellationException.class);
        return TimeUnit.NANOSECONDS.toMillis(endedAt[0] - cancelledAt);
    }

    @Test
    void aPlanStopsSoonAfterItIsCancelledWhereverItIs() throws InterruptedException {
        List<Long> delays = new ArrayList<>();
        for (long ms = 0; ms <= 800; ms += 200) {
            delays.add(msAfterCancelAt(LONG, ms));
        }
        assertThat(delays).allMatch(delay -> delay <= SOON_MS);
    }

    @Test
    void thePlanAfterACancelledOneIsTheSame() throws InterruptedException {
        CorePlan before = CorePlanner.plan(yard, PlanOptions.USUAL);
        msAfterCancelAt(PlanOptions.USUAL, 50);
        assertThat(CorePlanner.plan(yard, PlanOptions.USUAL)).isEqualTo(before);
    }
}

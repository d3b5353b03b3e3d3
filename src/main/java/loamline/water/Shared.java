package loamline.water;

import java.util.Collection;
import java.util.List;
import java.util.function.Function;
import loamline.cancel.Cancellation;

/** Work shared among the processors; the results come in the order of what they are made from. */
final class Shared {
    private Shared() {}

    /** @throws java.util.concurrent.CancellationException if the thread is interrupted meanwhile */
    static <A, B> List<B> of(Collection<A> from, Function<A, B> work) {
        Cancellation.check();
        return List.copyOf(from).parallelStream()
                .map(each -> {
                    Cancellation.check();
                    return work.apply(each);
                })
                .toList();
    }
}

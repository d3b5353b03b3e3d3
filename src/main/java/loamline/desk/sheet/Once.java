package loamline.desk.sheet;

import java.util.Optional;
import java.util.function.Supplier;

/** Something that is made when it is asked for first, and kept. */
public final class Once<T> implements Supplier<T> {
    private final Supplier<T> maker;
    private Optional<T> made = Optional.empty();

    private Once(Supplier<T> maker) {
        this.maker = maker;
    }

    public static <T> Once<T> of(Supplier<T> maker) {
        return new Once<>(maker);
    }

    @Override
    public T get() {
        T ready = made.orElseGet(maker);
        made = Optional.of(ready);
        return ready;
    }
}

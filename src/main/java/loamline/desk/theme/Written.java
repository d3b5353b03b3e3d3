package loamline.desk.theme;

import java.util.function.Function;
import javafx.util.StringConverter;
import org.jspecify.annotations.Nullable;

/** How the values of a list to choose from are written; nobody types them. */
public final class Written<T> extends StringConverter<T> {
    private final Function<T, String> words;

    private Written(Function<T, String> words) {
        this.words = words;
    }

    public static <T> Written<T> as(Function<T, String> words) {
        return new Written<>(words);
    }

    @Override
    public String toString(@Nullable T value) {
        return value == null ? "" : words.apply(value);
    }

    /** @throws UnsupportedOperationException always */
    @Override
    public T fromString(String text) {
        throw new UnsupportedOperationException("chosen, never typed: " + text);
    }
}

package loamline.files;

import java.util.List;
import java.util.Optional;
import loamline.account.Problem;

/**
 * What came of reading something.
 *
 * @param value empty if the input as a whole could not be used
 * @param problems all of them, in the order met
 */
public record Read<T>(Optional<T> value, List<Problem> problems) {
    public Read {
        problems = List.copyOf(problems);
    }

    static <T> Read<T> failed(List<Problem> problems) {
        return new Read<>(Optional.empty(), problems);
    }
}

package loamline.files;

import java.util.Collection;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;

/** Gives every feature of a file a key of its own: the one it has, if it is the first with it, or a new one. */
final class Keys {
    private final Set<String> reserved;
    private final Set<String> taken = new HashSet<>();
    private int last;

    /** @param given all keys in the file; none of them is made up for another feature */
    Keys(Collection<String> given) {
        reserved = Set.copyOf(new HashSet<>(given));
    }

    /** The key for the next feature. */
    String next(Optional<String> given, String pointer, ProblemLog log) {
        if (given.isPresent() && taken.add(given.get())) {
            return given.get();
        }
        String fresh = fresh();
        given.ifPresent(twice -> log.info(
                "DUPLICATE_ID",
                pointer,
                "another feature has the id “" + twice + "” too; this one is now “" + fresh + "”"));
        return fresh;
    }

    /** The first of f1, f2, … that is free. */
    private String fresh() {
        String fresh;
        do {
            fresh = "f" + ++last;
        } while (reserved.contains(fresh));
        return fresh;
    }
}

package loamline.sampling;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Bags are named by letters: A to Z, then AA, AB … */
final class Letters {
    private Letters() {}

    /**
     * A name for each bag. A bag that its owner named by one capital letter keeps it; the others take the free
     * letters in order.
     */
    static List<String> forBags(List<Optional<String>> bound) {
        Set<String> taken = new HashSet<>();
        bound.stream().flatMap(Optional::stream).filter(Letters::isLetter).forEach(taken::add);
        List<String> names = new ArrayList<>();
        int next = 0;
        for (Optional<String> bag : bound) {
            if (bag.filter(Letters::isLetter).isPresent()) {
                names.add(bag.get());
            } else {
                while (taken.contains(letter(next))) {
                    next++;
                }
                names.add(letter(next++));
            }
        }
        return names;
    }

    private static boolean isLetter(String name) {
        return name.length() == 1 && name.charAt(0) >= 'A' && name.charAt(0) <= 'Z';
    }

    /** The letter for a number from 0. */
    static String letter(int index) {
        String last = String.valueOf((char) ('A' + index % 26));
        return index < 26 ? last : letter(index / 26 - 1) + last;
    }
}

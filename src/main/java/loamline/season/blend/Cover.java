package loamline.season.blend;

import java.util.List;
import java.util.stream.IntStream;

/**
 * A rule about bags that follows from what plots must get: the weighed sum of bags is at least so much.
 *
 * @param weights of a bag of each material, 0 or more
 * @param least of the sum
 */
record Cover(List<Double> weights, double least) {
    Cover {
        weights = List.copyOf(weights);
    }

    double of(List<Integer> bags) {
        return IntStream.range(0, bags.size())
                .mapToDouble(m -> weights.get(m) * bags.get(m))
                .sum();
    }
}

package loamline.yard;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loamline.geometry.Polyline;
import loamline.geometry.Shape;

/**
 * A fence or a wall.
 *
 * @param key unique in the yard
 * @param barrier {@link Kind#FENCE} or {@link Kind#WALL}
 * @param heightM m
 * @param gates the gaps to walk through, in any order
 * @param solid whether it stops light and water
 * @param line as drawn
 * @param extras what a file said beyond this
 */
public record Barrier(
        String key, Kind barrier, double heightM, List<Opening> gates, boolean solid, Polyline line, Extras extras)
        implements Feature {
    /** Height where nobody gave one, m. */
    public static final double DEFAULT_HEIGHT_M = 1.8;

    /** @throws IllegalArgumentException if the kind is neither fence nor wall */
    public Barrier {
        if (barrier != Kind.FENCE && barrier != Kind.WALL) {
            throw new IllegalArgumentException(barrier + " is neither a fence nor a wall");
        }
        gates = List.copyOf(gates);
    }

    /**
     * A gap.
     *
     * @param atM middle of the gap, metres along the line from its first point
     * @param widthM m
     * @param extras what a file said beyond this
     */
    public record Opening(double atM, double widthM, Extras extras) {
        public Opening(double atM, double widthM) {
            this(atM, widthM, Extras.NONE);
        }
    }

    /** The stretches between the gaps, in order along the line; the whole line if there are none. */
    public List<Polyline> closedStretches() {
        List<Polyline> stretches = new ArrayList<>();
        double fromM = 0;
        for (Opening gap : gates.stream()
                .sorted(java.util.Comparator.comparingDouble(Opening::atM))
                .toList()) {
            double untilM = gap.atM() - gap.widthM() / 2;
            if (untilM > fromM) {
                stretches.add(line.between(fromM, untilM));
            }
            fromM = Math.max(fromM, gap.atM() + gap.widthM() / 2);
        }
        if (fromM < line.lengthM()) {
            stretches.add(line.between(fromM, line.lengthM()));
        }
        return List.copyOf(stretches);
    }

    @Override
    public Optional<Kind> kind() {
        return Optional.of(barrier);
    }

    @Override
    public Optional<Shape> shape() {
        return Optional.of(line);
    }

    @Override
    public Barrier withShape(Shape shape) {
        return new Barrier(key, barrier, heightM, gates, solid, Shapes.polyline(shape), extras);
    }

    /** The same barrier with other gaps. */
    public Barrier withGates(List<Opening> changed) {
        return new Barrier(key, barrier, heightM, changed, solid, line, extras);
    }

    @Override
    public Barrier withKey(String key) {
        return new Barrier(key, barrier, heightM, gates, solid, line, extras);
    }
}

package loamline.scene;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import loamline.geometry.Point;

/**
 * Finds room for labels, greedily by rank: each takes the cheapest of its places that touches no core and no
 * label placed before; a label without such a place is left out.
 *
 * <p>Cost of a place = its own price + that of the form + that of everything that it crosses and may cross (a bit of the walk,
 * a head, a crown) + {@value #AWAY} for each corner off the ground that the label names. Of equals, the first.
 */
final class LabelPlacer {
    private static final double AWAY = 0.5;

    private final PaperRect paper;
    private final TextMeasure text;
    private final List<PaperRect> taken;
    private final List<Crossable> crossable;

    /**
     * @param paper labels stay inside
     * @param taken room that no label may touch
     * @param crossable room that labels avoid if they can
     */
    LabelPlacer(PaperRect paper, TextMeasure text, List<PaperRect> taken, List<Crossable> crossable) {
        this.paper = paper;
        this.text = text;
        this.taken = new ArrayList<>(taken);
        this.crossable = List.copyOf(crossable);
    }

    /** Room that a label may cross at a price. */
    record Crossable(PaperRect room, double price) {}

    /** A label in its place. */
    record Placed(List<Label.Line> lines, PaperRect room, double cost) {}

    /** The labels that found room, by rank and then in the order given. */
    List<Placed> place(List<Label> labels) {
        List<Placed> placed = new ArrayList<>();
        labels.stream().sorted(Comparator.comparingInt(Label::rank)).forEach(label -> {
            label.forms().stream()
                    .flatMap(form -> best(label, form).stream())
                    .min(Comparator.comparingDouble(Placed::cost))
                    .ifPresent(best -> {
                        placed.add(best);
                        taken.add(best.room());
                    });
        });
        return List.copyOf(placed);
    }

    private Optional<Placed> best(Label label, Label.Form form) {
        Optional<Placed> best = Optional.empty();
        double least = Double.POSITIVE_INFINITY;
        PaperRect size = Label.room(form.lines(), new Point(0, 0), text);
        for (Label.Place place : label.places()) {
            PaperRect room = size.moved(place.middle().x(), place.middle().y());
            if (form.price() + place.price() >= least
                    || !paper.contains(room)
                    || taken.stream().anyMatch(room::overlaps)) {
                continue;
            }
            double cost = form.price() + place.price() + crossed(room) + AWAY * cornersAway(label.home(), room);
            if (cost < least) {
                least = cost;
                best = Optional.of(new Placed(form.lines(), room, cost));
            }
        }
        return best;
    }

    private double crossed(PaperRect room) {
        return crossable.stream()
                .filter(thing -> room.overlaps(thing.room()))
                .mapToDouble(Crossable::price)
                .sum();
    }

    private static long cornersAway(Label.Home home, PaperRect room) {
        return room.corners().stream().filter(mm -> !home.holds(mm)).count();
    }
}

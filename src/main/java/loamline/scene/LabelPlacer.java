package loamline.scene;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Finds room for labels, greedily by rank: each takes the cheapest of its places that touches no core and no
 * label placed before; a label without such a place is left out.
 *
 * <p>Cost of a place = its position in the list, from 0 (best) to 1 (last) + {@value #CROSSING} for each thing
 * crossed that may be crossed (a bit of the walk, a head, a trunk) + {@value #AWAY} for each
 * corner off the ground that the label names.
 */
final class LabelPlacer {
    private static final double CROSSING = 0.12;
    private static final double AWAY = 0.5;

    private final PaperRect paper;
    private final TextMeasure text;
    private final List<PaperRect> taken;
    private final List<PaperRect> crossable;

    /**
     * @param paper labels stay inside
     * @param taken room that no label may touch
     * @param crossable room that labels avoid if they can
     */
    LabelPlacer(PaperRect paper, TextMeasure text, List<PaperRect> taken, List<PaperRect> crossable) {
        this.paper = paper;
        this.text = text;
        this.taken = new ArrayList<>(taken);
        this.crossable = List.copyOf(crossable);
    }

    /** A label in its place. */
    record Placed(List<Label.Line> form, PaperRect room) {}

    /** The labels that found room, by rank and then in the order given. */
    List<Placed> place(List<Label> labels) {
        List<Placed> placed = new ArrayList<>();
        labels.stream().sorted(Comparator.comparingInt(Label::rank)).forEach(label -> {
            Optional<Placed> best = label.forms().stream()
                    .flatMap(form -> best(label, form).stream())
                    .findFirst();
            best.ifPresent(one -> {
                placed.add(one);
                taken.add(one.room());
            });
        });
        return List.copyOf(placed);
    }

    private Optional<Placed> best(Label label, List<Label.Line> form) {
        Optional<Placed> best = Optional.empty();
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < label.places().size(); i++) {
            double order = (double) i / label.places().size();
            if (order >= least) {
                break;
            }
            PaperRect room = Label.room(form, label.places().get(i), text);
            if (!paper.contains(room) || taken.stream().anyMatch(room::overlaps)) {
                continue;
            }
            double cost = order + CROSSING * crossed(room) + AWAY * cornersAway(label.home(), room);
            if (cost < least) {
                least = cost;
                best = Optional.of(new Placed(form, room));
            }
        }
        return best;
    }

    private long crossed(PaperRect room) {
        return crossable.stream().filter(room::overlaps).count();
    }

    private static long cornersAway(Label.Home home, PaperRect room) {
        return room.corners().stream().filter(mm -> !home.holds(mm)).count();
    }
}

package loamline.yard;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * All states of a yard since it was opened, and where in them we are. Undo and redo move the position;
 * nothing is computed backwards. Immutable.
 *
 * @param first the yard as opened
 * @param steps what was done, oldest first
 * @param position how many of the steps are in force, 0 to the number of steps
 * @param saved the position at the last save, or -1 if none of these states is what was saved
 */
public record History(Yard first, List<Step> steps, int position, int saved) {
    /** @throws IllegalArgumentException if the position is out of range */
    public History {
        steps = List.copyOf(steps);
        if (position < 0 || position > steps.size()) {
            throw new IllegalArgumentException("position " + position + " of " + steps.size() + " steps");
        }
    }

    /**
     * One edit.
     *
     * @param label what was done, as in "move core A2"
     * @param after the yard it led to
     */
    public record Step(String label, Yard after) {}

    /** A history without steps, saved as it stands. */
    public static History of(Yard yard) {
        return new History(yard, List.of(), 0, 0);
    }

    public Yard now() {
        return position == 0 ? first : steps.get(position - 1).after();
    }

    /** Adds a step and drops those that were undone; an edit that changes nothing adds none. */
    public History then(String label, Yard after) {
        if (after.equals(now())) {
            return this;
        }
        List<Step> kept = new ArrayList<>(steps.subList(0, position));
        kept.add(new Step(label, after));
        return new History(first, kept, position + 1, saved > position ? -1 : saved);
    }

    /** One step back, if there is one. */
    public History undone() {
        return position == 0 ? this : new History(first, steps, position - 1, saved);
    }

    /** One step forward again, if there is one. */
    public History redone() {
        return position == steps.size() ? this : new History(first, steps, position + 1, saved);
    }

    /** The label of what undo would take back. */
    public Optional<String> undoLabel() {
        return position == 0
                ? Optional.empty()
                : Optional.of(steps.get(position - 1).label());
    }

    /** The label of what redo would do again. */
    public Optional<String> redoLabel() {
        return position == steps.size()
                ? Optional.empty()
                : Optional.of(steps.get(position).label());
    }

    /** The same history, marked as saved here. */
    public History markedSaved() {
        return new History(first, steps, position, position);
    }

    /** The same history, marked as saved nowhere. */
    public History markedUnsaved() {
        return new History(first, steps, position, -1);
    }

    public boolean isUnsaved() {
        return position != saved;
    }
}

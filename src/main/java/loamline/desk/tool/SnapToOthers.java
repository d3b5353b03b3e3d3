package loamline.desk.tool;

import java.util.List;
import java.util.Set;
import loamline.desk.tool.Input.Held;
import loamline.geometry.Point;
import loamline.yard.Edits;

/** A place being dragged snaps to every feature that is not selected, and so not dragged itself. */
public final class SnapToOthers implements SnapHook {
    private Snapping others = Snapping.TO_NOTHING;

    @Override
    public Point place(Point pointer, Held held, Surroundings around) {
        others = others.current(
                Edits.remove(around.yard(), Set.copyOf(around.selection().keys())));
        return others.snap(pointer, held, List.of(), around.metresPerPx()).at();
    }
}

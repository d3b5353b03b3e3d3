package loamline.desk.tool;

import loamline.desk.tool.Input.Held;
import loamline.geometry.Point;

/** Where a place being dragged is taken to be. */
@FunctionalInterface
public interface SnapHook {
    /** Leaves every place where it is. */
    SnapHook NONE = (pointer, held, around) -> pointer;

    Point place(Point pointer, Held held, Surroundings around);
}

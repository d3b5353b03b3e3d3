package loamline.findings;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import loamline.geometry.Point;
import loamline.geometry.Region;
import loamline.geometry.Spacing;
import loamline.yard.Trouble;
import loamline.yard.Yard;

/**
 * A part of the lawn that struggles.
 *
 * @param name its word, or the cores it holds
 * @param spot where it was drawn; empty if only the cores show it
 * @param cores logged in it; may be empty
 */
record PoorArea(String name, Optional<Region> spot, List<LoggedCore> cores) {
    /** Turf quality up to this is poor, on the scale of 1 to 9 on which 6 is acceptable. */
    static final double POOR_QUALITY = 4;

    /** Turf quality from here on is acceptable: a core in a drawn spot that has it does not belong to the spot. */
    static final double SOUND_QUALITY = 6;

    /** Poor cores nearer than this many usual gaps belong together. */
    private static final double TOGETHER_GAPS = 1.5;

    /** A spot is drawn by eye: a poor core so near its edge belongs to it, m. */
    private static final double EDGE_M = 2;

    PoorArea {
        cores = List.copyOf(cores);
    }

    /** Trouble spots as drawn, with the poor cores beside them; then groups of poor cores elsewhere. */
    static List<PoorArea> of(Yard yard, List<LoggedCore> cores) {
        double togetherM = TOGETHER_GAPS * Spacing.usualGapM(places(cores));
        List<LoggedCore> free = new ArrayList<>(cores);
        List<PoorArea> areas = new ArrayList<>();
        for (Trouble trouble : yard.all(Trouble.class).toList()) {
            Region ground = Region.of(trouble.outline());
            Region reach = ground.buffer(EDGE_M);
            List<LoggedCore> own = free.stream()
                    .filter(core -> (!isSound(core) && ground.covers(core.core().at()))
                            || (isPoor(core) && reach.covers(core.core().at())))
                    .collect(Collectors.toList());
            free.removeAll(own);
            String note = trouble.note().isBlank() ? "trouble spot" : trouble.note();
            areas.add(new PoorArea(note, Optional.of(ground), own));
        }
        Optional<LoggedCore> seed = firstPoor(free);
        while (seed.isPresent()) {
            List<LoggedCore> own = new ArrayList<>(List.of(seed.get()));
            free.remove(seed.get());
            join(own, free, togetherM);
            String ids = own.stream().map(LoggedCore::id).collect(Collectors.joining(", "));
            areas.add(new PoorArea("poor grass at " + ids, Optional.empty(), own));
            seed = firstPoor(free);
        }
        return List.copyOf(areas);
    }

    private static Optional<LoggedCore> firstPoor(List<LoggedCore> cores) {
        return cores.stream().filter(PoorArea::isPoor).findFirst();
    }

    private static boolean isSound(LoggedCore core) {
        return core.value(Quantity.QUALITY).orElse(0) >= SOUND_QUALITY;
    }

    private static boolean isPoor(LoggedCore core) {
        return core.value(Quantity.QUALITY).orElse(Double.NaN) <= POOR_QUALITY;
    }

    /** Moves poor cores near the group's into it, until none is near. */
    private static void join(List<LoggedCore> group, List<LoggedCore> free, double togetherM) {
        for (int i = 0; i < group.size(); i++) {
            Point at = group.get(i).core().at();
            List<LoggedCore> near = free.stream()
                    .filter(core -> isPoor(core) && core.core().at().distanceTo(at) <= togetherM)
                    .toList();
            group.addAll(near);
            free.removeAll(near);
        }
    }

    static List<Point> places(List<LoggedCore> cores) {
        return cores.stream().map(core -> core.core().at()).toList();
    }
}

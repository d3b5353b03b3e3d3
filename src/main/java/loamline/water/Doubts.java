package loamline.water;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import loamline.account.Problem;
import loamline.account.Where;
import loamline.yard.Head;
import loamline.yard.Yard;

/** What the results of a yard's water leave out or do otherwise than asked. */
final class Doubts {
    private Doubts() {}

    static List<Problem> of(Yard yard, Lawn lawn, Collection<Valve> valves, WaterOptions options) {
        List<Problem> problems = new ArrayList<>();
        if (valves.isEmpty()) {
            boolean none = yard.all(Head.class).findAny().isEmpty();
            problems.add(Problem.error(
                    "NO_HEADS",
                    Where.WHOLE,
                    none
                            ? "no head is drawn, so there is no water to compute: place the heads"
                            : "no head can be used, so there is no water to compute: mend the heads named above"));
        }
        lawn.mask()
                .filter(mask -> mask.grid().cellM() > options.cellM())
                .ifPresent(mask -> problems.add(coarser(lawn)));
        valves.forEach(valve -> problems.addAll(of(valve, yard, lawn)));
        return problems;
    }

    private static List<Problem> of(Valve valve, Yard yard, Lawn lawn) {
        List<Problem> problems = new ArrayList<>();
        String name = valve.figures().name();
        Where first = Where.feature(yard.indexOf(valve.heads().get(0).head()));
        if (name.isBlank()) {
            problems.add(Problem.info(
                    "HEAD_WITHOUT_VALVE",
                    first,
                    valve.heads().size() + " head(s) name no valve and count as one valve together: name it"));
        }
        if (lawn.mask().isPresent() && valve.heads().stream().allMatch(head -> head.onTurf() == 0)) {
            problems.add(Problem.warning(
                    "VALVE_OFF_TURF",
                    first,
                    "no water of valve “" + name + "” falls on turf: move its heads, or trace that turf"));
        }
        return problems;
    }

    private static Problem coarser(Lawn lawn) {
        return Problem.warning(
                "CELLS_TOO_MANY",
                Where.WHOLE,
                String.format(
                        Locale.ROOT,
                        "cells this small are more than %,d; %.3f m is used: ask for larger cells",
                        Lawn.MOST_CELLS,
                        lawn.mask().orElseThrow().grid().cellM()));
    }
}

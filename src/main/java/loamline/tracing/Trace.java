package loamline.tracing;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import loamline.geometry.Outline;

/** The ground round some clicks, at any place of the slider. */
public final class Trace {
    /** Move of the slider, either way, by which stability is measured. */
    private static final double NUDGE = 0.04;

    /** Share of the area that such a move may take or add before it is worth a word. */
    private static final double MUCH = 0.2;

    private final Mosaic mosaic;

    /** Clicks on open ground, their cells and their ways up the tree. */
    private final List<Pixel> hits = new ArrayList<>();

    private final List<Integer> seeds = new ArrayList<>();
    private final List<Branch> branches = new ArrayList<>();

    /** What is to be said about the other clicks. */
    private final Set<Doubt> misses = new LinkedHashSet<>();

    Trace(Mosaic mosaic, List<Pixel> clicks) {
        if (clicks.isEmpty()) {
            throw new IllegalArgumentException("a trace needs at least one click");
        }
        this.mosaic = mosaic;
        clicks.forEach(this::add);
    }

    private void add(Pixel click) {
        Picture picture = mosaic.picture();
        if (!picture.has(click)) {
            throw new IllegalArgumentException(
                    click + " lies outside the picture of " + picture.width() + " x " + picture.height());
        }
        int cell = mosaic.features().cellOf(click);
        switch (mosaic.features().state[cell]) {
            case Features.OPEN -> {
                hits.add(click);
                seeds.add(cell);
                branches.add(new Branch(mosaic.tree(), mosaic.patch(cell)));
            }
            case Features.CLOSED -> misses.add(new Doubt(Doubt.Kind.CLOSED, Optional.empty(), 1));
            default -> misses.add(new Doubt(Doubt.Kind.NO_DATA, Optional.empty(), 1));
        }
    }

    /**
     * The outline at a place of the slider.
     *
     * <p>The cells found at a tolerance lie within those found at any greater one with the same {@code
     * smallestHolePx2}, so {@link Proposal#areaPx2} never shrinks. At 0.5 each click takes the ground round it
     * that stands out most.
     *
     * @param tolerance 0 the least that can be told apart, 0.5 the best guess, 1 all that is connected
     * @param smallestHolePx2 holes of less area are filled, px²; 0 keeps all. Ground that is closed stays a hole
     * @throws IllegalArgumentException if the tolerance is not from 0 to 1, or the smallest hole not 0 or more
     */
    public Proposal at(double tolerance, double smallestHolePx2) {
        if (!(tolerance >= 0 && tolerance <= 1)) {
            throw new IllegalArgumentException("a tolerance is from 0 to 1, not " + tolerance);
        }
        if (!(smallestHolePx2 >= 0)) {
            throw new IllegalArgumentException("the smallest hole has 0 px² or more, not " + smallestHolePx2);
        }
        if (hits.isEmpty()) {
            return new Proposal(new Outline(List.of()), 0, BorderShares.NONE, 0, List.copyOf(misses));
        }
        Cells cells = cells(tolerance, smallestHolePx2);
        List<Ring> rings = Ring.around(cells);
        Border border = Border.of(mosaic.features(), rings);
        double stability = stability(tolerance);
        List<Doubt> doubts = new ArrayList<>(misses);
        doubts.addAll(border.doubts());
        if (stability < 1 - MUCH) {
            doubts.add(new Doubt(Doubt.Kind.UNSTABLE, Optional.empty(), 1 - stability));
        }
        Outline outline = Outlines.of(rings, mosaic.picture(), mosaic.scale(), hits);
        return new Proposal(outline, cells.count() * cellPx2(), border.shares(), stability, doubts);
    }

    /** What the outline at a place of the slider goes round. */
    Cells cells(double tolerance, double smallestHolePx2) {
        int[] starts = seeds.stream().mapToInt(Integer::intValue).toArray();
        return mosaic.shaping().of(nodes(tolerance), starts, smallestHolePx2 / cellPx2());
    }

    private double cellPx2() {
        return (double) mosaic.scale() * mosaic.scale();
    }

    private double stability(double tolerance) {
        return size(nodes(Math.max(0, tolerance - NUDGE))) / size(nodes(Math.min(1, tolerance + NUDGE)));
    }

    private double size(List<Integer> nodes) {
        return nodes.stream().mapToDouble(mosaic.tree()::size).sum();
    }

    /** The nodes of all clicks at a place of the slider, none below another. */
    private List<Integer> nodes(double tolerance) {
        Set<Integer> all = new LinkedHashSet<>();
        branches.forEach(branch -> all.add(branch.node(tolerance)));
        return all.stream()
                .filter(node -> all.stream()
                        .noneMatch(other -> !other.equals(node) && mosaic.tree().holds(other, node)))
                .toList();
    }
}

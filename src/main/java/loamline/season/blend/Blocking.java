package loamline.season.blend;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Why a blend has no answer, however many bags are bought: for each plot without one, every rule that stands in the way by
 * itself.
 */
public final class Blocking {
    /** What stands in the way. */
    public enum Rule {
        /** Nothing on the price list brings the quantity. */
        NOT_SOLD,
        /** There is no date at all. */
        NO_DATE,
        /** What one dose may bring of the quantity. */
        DOSE,
        /** What the season may bring of the quantity. */
        SEASON,
        /** Which materials may be used when. */
        MATERIALS,
        /** The quantity cannot be reached, and several rules are in the way at once. */
        TOGETHER
    }

    /**
     * A rule in the way.
     *
     * @param plot its position
     * @param quantity empty for rules about dates and materials
     */
    public record Block(int plot, Rule rule, Optional<Quantity> quantity) {}

    private Blocking() {}

    /** What is in the way; empty if some number of bags will do. In the order of plots and rules. */
    public static List<Block> of(Blend blend) {
        List<Block> blocks = new ArrayList<>();
        for (int p = 0; p < blend.plots().size(); p++) {
            Plot plot = blend.plots().get(p);
            if (!works(plot, blend.materials())) {
                blocks.addAll(rules(p, plot, blend.materials()));
            }
        }
        return blocks;
    }

    private static boolean works(Plot plot, List<Material> materials) {
        PlotRows rows = PlotRows.together(plot, materials);
        LinearProgram program = new LinearProgram(new double[rows.columns().size()]);
        program.add(rows, 0);
        return program.least().isPresent();
    }

    private static List<Block> rules(int p, Plot plot, List<Material> materials) {
        List<Block> blocks = new ArrayList<>();
        List<Quantity> asked = plot.season().entrySet().stream()
                .filter(entry -> entry.getValue().least() > 0)
                .map(Map.Entry::getKey)
                .toList();
        asked.stream()
                .filter(q -> materials.stream().noneMatch(m -> m.of(q) > 0))
                .forEach(q -> blocks.add(new Block(p, Rule.NOT_SOLD, Optional.of(q))));
        if (plot.slots().isEmpty()) {
            blocks.add(new Block(p, Rule.NO_DATE, Optional.empty()));
        }
        if (!blocks.isEmpty()) {
            return blocks;
        }
        for (Quantity q : Quantity.values()) {
            if (works(withSlots(plot, slot -> withoutLimit(slot, q)), materials)) {
                blocks.add(new Block(p, Rule.DOSE, Optional.of(q)));
            }
            if (works(withoutMost(plot, q), materials)) {
                blocks.add(new Block(p, Rule.SEASON, Optional.of(q)));
            }
        }
        Set<Integer> all = IntStream.range(0, materials.size()).boxed().collect(Collectors.toSet());
        if (works(withSlots(plot, slot -> new Slot(slot.date(), slot.mostGM2(), all, slot.wantedNGM2())), materials)) {
            blocks.add(new Block(p, Rule.MATERIALS, Optional.empty()));
        }
        if (blocks.isEmpty()) {
            asked.stream()
                    .filter(q -> !works(only(plot, q), materials) || asked.size() == 1)
                    .forEach(q -> blocks.add(new Block(p, Rule.TOGETHER, Optional.of(q))));
        }
        return blocks.isEmpty() ? List.of(new Block(p, Rule.TOGETHER, Optional.empty())) : blocks;
    }

    private static Plot withSlots(Plot plot, UnaryOperator<Slot> change) {
        return new Plot(
                plot.name(),
                plot.areaM2(),
                plot.season(),
                plot.slots().stream().map(change).toList());
    }

    private static Slot withoutLimit(Slot slot, Quantity quantity) {
        Map<Quantity, Double> most = new EnumMap<>(Quantity.class);
        most.putAll(slot.mostGM2());
        most.remove(quantity);
        return new Slot(slot.date(), most, slot.materials(), slot.wantedNGM2());
    }

    private static Plot withoutMost(Plot plot, Quantity quantity) {
        Map<Quantity, Range> season = new EnumMap<>(Quantity.class);
        season.putAll(plot.season());
        season.computeIfPresent(quantity, (q, range) -> Range.atLeast(range.least()));
        return new Plot(plot.name(), plot.areaM2(), season, plot.slots());
    }

    /** The plot when it must get nothing but one quantity. */
    private static Plot only(Plot plot, Quantity quantity) {
        Map<Quantity, Range> season = new EnumMap<>(Quantity.class);
        plot.season().forEach((q, range) -> season.put(q, q == quantity ? range : Range.atMost(range.most())));
        return new Plot(plot.name(), plot.areaM2(), season, plot.slots());
    }
}

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
        /** What one dose may bring of the quantity, or of several at once. */
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
     * @param quantities of which limits are in the way together, none of them by itself; none for rules about dates and
     *     materials
     */
    public record Block(int plot, Rule rule, List<Quantity> quantities) {
        public Block {
            quantities = List.copyOf(quantities);
        }

        private static Block of(int plot, Rule rule, Quantity... quantities) {
            return new Block(plot, rule, List.of(quantities));
        }
    }

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
                .forEach(q -> blocks.add(Block.of(p, Rule.NOT_SOLD, q)));
        if (plot.slots().isEmpty()) {
            blocks.add(Block.of(p, Rule.NO_DATE));
        }
        if (!blocks.isEmpty()) {
            return blocks;
        }
        for (Quantity q : Quantity.values()) {
            if (works(withoutDoseLimits(plot, List.of(q)), materials)) {
                blocks.add(Block.of(p, Rule.DOSE, q));
            }
            if (works(withoutMost(plot, q), materials)) {
                blocks.add(Block.of(p, Rule.SEASON, q));
            }
        }
        Set<Integer> all = IntStream.range(0, materials.size()).boxed().collect(Collectors.toSet());
        if (works(withSlots(plot, slot -> new Slot(slot.date(), slot.mostGM2(), all, slot.wantedNGM2())), materials)) {
            blocks.add(Block.of(p, Rule.MATERIALS));
        }
        if (blocks.isEmpty()) {
            doses(plot, materials).ifPresent(caps -> blocks.add(new Block(p, Rule.DOSE, caps)));
        }
        if (blocks.isEmpty()) {
            asked.stream()
                    .filter(q -> !works(only(plot, q), materials) || asked.size() == 1)
                    .forEach(q -> blocks.add(Block.of(p, Rule.TOGETHER, q)));
        }
        return blocks.isEmpty() ? List.of(Block.of(p, Rule.TOGETHER)) : blocks;
    }

    private static Plot withSlots(Plot plot, UnaryOperator<Slot> change) {
        return new Plot(
                plot.name(),
                plot.areaM2(),
                plot.season(),
                plot.slots().stream().map(change).toList());
    }

    private static Plot withoutDoseLimits(Plot plot, List<Quantity> quantities) {
        return withSlots(plot, slot -> {
            Map<Quantity, Double> most = new EnumMap<>(Quantity.class);
            most.putAll(slot.mostGM2());
            quantities.forEach(most::remove);
            return new Slot(slot.date(), most, slot.materials(), slot.wantedNGM2());
        });
    }

    /** Limits of a dose that are in the way together, each of them needed; empty if there is more in the way. */
    private static Optional<List<Quantity>> doses(Plot plot, List<Material> materials) {
        List<Quantity> lifted = new ArrayList<>(List.of(Quantity.values()));
        if (!works(withoutDoseLimits(plot, lifted), materials)) {
            return Optional.empty();
        }
        for (Quantity q : Quantity.values()) {
            lifted.remove(q);
            if (!works(withoutDoseLimits(plot, lifted), materials)) {
                lifted.add(q);
            }
        }
        return Optional.of(lifted.stream().sorted().toList());
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

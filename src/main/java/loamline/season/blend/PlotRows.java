package loamline.season.blend;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * A plot as columns and rows of a linear program: a column for the weight of each material at each date, kg, and a row for
 * each limit.
 *
 * <p>Dates that allow the same may be taken together: limits are linear, so doses that are equal on all of them meet every
 * limit that unequal ones meet. One column then stands for all of them, with limits as many times as large.
 *
 * @param columns materials that carry something of which nothing may be had are left out
 */
record PlotRows(List<Column> columns, List<Row> rows) {
    /**
     * A weight to be found.
     *
     * @param slots positions of the dates that it stands for
     */
    record Column(List<Integer> slots, int material) {}

    /**
     * A limit.
     *
     * @param columns positions of the columns that count
     * @param shares what a kilogram of each counts
     * @param leastKg 0 if there is none
     * @param mostKg infinite if there is none
     */
    record Row(List<Integer> columns, List<Double> shares, double leastKg, double mostKg) {
        boolean hasLeast() {
            return leastKg > 0;
        }

        boolean hasMost() {
            return mostKg < Double.POSITIVE_INFINITY;
        }
    }

    /** Like dates in one column: for what does not depend on when. */
    static PlotRows together(Plot plot, List<Material> materials) {
        return new Builder(plot, materials).build(true);
    }

    /** A column for every date. */
    static PlotRows apart(Plot plot, List<Material> materials) {
        return new Builder(plot, materials).build(false);
    }

    private record Builder(Plot plot, List<Material> materials, List<Column> columns, List<Row> rows) {
        Builder(Plot plot, List<Material> materials) {
            this(plot, materials, new ArrayList<>(), new ArrayList<>());
        }

        PlotRows build(boolean together) {
            for (List<Integer> slots : groups(together)) {
                addDose(slots);
            }
            plot.season().forEach((quantity, range) -> addRow(0, quantity, range));
            return new PlotRows(List.copyOf(columns), List.copyOf(rows));
        }

        private List<List<Integer>> groups(boolean together) {
            List<List<Integer>> groups = new ArrayList<>();
            for (int s = 0; s < plot.slots().size(); s++) {
                Slot slot = plot.slots().get(s);
                groups.stream()
                        .filter(group ->
                                together && plot.slots().get(group.get(0)).isLike(slot))
                        .findFirst()
                        .orElseGet(() -> {
                            groups.add(new ArrayList<>());
                            return groups.get(groups.size() - 1);
                        })
                        .add(s);
            }
            return groups;
        }

        private void addDose(List<Integer> slots) {
            Slot slot = plot.slots().get(slots.get(0));
            int first = columns.size();
            slot.materials().stream()
                    .filter(m -> isFree(slot.mostGM2(), materials.get(m)))
                    .forEach(m -> columns.add(new Column(slots, m)));
            slot.mostGM2().forEach((quantity, most) -> addRow(first, quantity, Range.atMost(most * slots.size())));
        }

        private boolean isFree(Map<Quantity, Double> doseMost, Material material) {
            return material.content().entrySet().stream()
                    .filter(part -> part.getValue() > 0)
                    .noneMatch(part -> doseMost.getOrDefault(part.getKey(), 1.0) == 0
                            || plot.season()
                                            .getOrDefault(part.getKey(), Range.atLeast(0))
                                            .most()
                                    == 0);
        }

        private void addRow(int first, Quantity quantity, Range range) {
            List<Integer> carriers = IntStream.range(first, columns.size())
                    .filter(c -> share(c, quantity) > 0)
                    .boxed()
                    .toList();
            if (!carriers.isEmpty() || range.least() > 0) {
                rows.add(new Row(
                        carriers,
                        carriers.stream().map(c -> share(c, quantity)).toList(),
                        plot.kg(range.least()),
                        plot.kg(range.most()) * (1 - Blend.TOLERANCE)));
            }
        }

        private double share(int column, Quantity quantity) {
            return materials.get(columns.get(column).material()).of(quantity);
        }
    }
}

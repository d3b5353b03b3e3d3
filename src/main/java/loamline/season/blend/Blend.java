package loamline.season.blend;

import java.util.List;

/**
 * What may be bought and what ground must get.
 *
 * @param materials in the order of the price list
 * @param plots in the order of the yard
 */
public record Blend(List<Material> materials, List<Plot> plots) {
    /** Share of a limit by which floating-point solving may miss it; limits are made tighter by as much. */
    public static final double TOLERANCE = 1e-6;

    public Blend {
        materials = List.copyOf(materials);
        plots = List.copyOf(plots);
        int count = materials.size();
        plots.stream()
                .flatMap(plot -> plot.slots().stream())
                .forEach(slot -> slot.materials().stream()
                        .filter(m -> m < 0 || m >= count)
                        .findFirst()
                        .ifPresent(m -> {
                            throw new IllegalArgumentException("there is no material " + m);
                        }));
    }

    /** The same with one material left out of use. */
    Blend without(int material) {
        return new Blend(
                materials,
                plots.stream()
                        .map(plot -> new Plot(
                                plot.name(),
                                plot.areaM2(),
                                plot.season(),
                                plot.slots().stream()
                                        .map(slot -> without(slot, material))
                                        .toList()))
                        .toList());
    }

    private static Slot without(Slot slot, int material) {
        return new Slot(
                slot.date(),
                slot.mostGM2(),
                slot.materials().stream().filter(m -> m != material).collect(java.util.stream.Collectors.toSet()),
                slot.wantedNGM2());
    }
}

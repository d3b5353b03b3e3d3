package loamline.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import loamline.scene.CupMap;
import loamline.scene.Ramp;
import loamline.scene.Shading;
import loamline.units.Measure;
import loamline.water.cups.CupTest;
import loamline.water.cups.HeadFinding;
import loamline.water.cups.Verdict;
import loamline.yard.Yard;
import loamline.yard.Zone;

/**
 * What a cup test showed: a map with cups, readings and heads to look at under the few numbers that count; then heads,
 * run times, readings, and how the numbers came about.
 *
 * @param zones the yard's turf, as {@link loamline.yard.Zones#of} gives it
 */
public record CupSheet(Yard yard, List<Zone> zones, CupTest test, SheetOptions options) {
    private static final String CAUTION = "Measured on one day: wind, pressure and hour belong to it. Longer watering"
            + " does not mend a hole; mend first, then test again.";

    /** White in the colours of rates, so that readings are legible on them. */
    private static final double WHITE = 0.45;

    public CupSheet {
        zones = List.copyOf(zones);
    }

    /** All pages as a PDF; the same bytes for the same input. */
    public byte[] pdf() {
        Fonts fonts = new Fonts();
        Blocks blocks = new Blocks(fonts, options.palette());
        List<Page> pages = new ArrayList<>();
        pages.add(new CupMapPage(yard, zones, CupMap.of(yard, test), measured(), options, blocks)
                .page("cup test, valve " + test.valve(), CAUTION, tiles(blocks)));
        pages.addAll(new CupTables(test, new Figures(options.units()), blocks)
                .pages(options.paper().upright(), "cup test, valve " + test.valve(), CAUTION));
        return new Book(yard.name(), "cup test", options, fonts).pdf(pages);
    }

    private Optional<Shading> measured() {
        return test.measured()
                .map(rates ->
                        Shading.of(rates.mmH(), Ramp.CIVIDIS.lighter(WHITE), Measure.DEPTH_RATE, options.units()));
    }

    private List<Block> tiles(Blocks blocks) {
        Tile tile = new Tile(blocks);
        Figures figures = new Figures(options.units());
        String mean = test.meanMmH().isPresent() ? figures.rate(test.meanMmH().getAsDouble()) : "–";
        String catches = Figures.count(test.cups().size(), "cup")
                + (test.meanMl().isPresent()
                        ? String.format(
                                Locale.ROOT, ", mean %.1f ml", test.meanMl().getAsDouble())
                        : "");
        String quarter =
                test.uniformity().map(u -> Figures.percent(u.duLq(), 0)).orElse("–");
        String others = test.uniformity()
                .map(u -> "low half " + Figures.percent(u.duLh(), 0) + ", CU " + Figures.percent(u.cu(), 0))
                .orElse(test.schedulingWords());
        return List.of(
                tile.of("Net rate", mean, catches),
                tile.of("Low-quarter uniformity, measured", quarter, others),
                tile.of("Driest cup would need", times(), "times as long for the mean"),
                suspects(tile));
    }

    private String times() {
        return test.schedulingWords()
                + (test.uniformity().isPresent() && test.schedulingWords().length() < 8 ? " ×" : "");
    }

    private Block suspects(Tile tile) {
        List<HeadFinding> faults = test.findings().faults();
        if (faults.isEmpty()) {
            long unsure = test.findings().heads().stream()
                    .filter(head -> head.verdict() == Verdict.UNSURE)
                    .count();
            return tile.of(
                    "Heads",
                    test.findings().heads().isEmpty() ? "not judged" : "none at fault",
                    unsure == 0 ? "as far as cups can tell" : Figures.count((int) unsure, "head") + " not clear");
        }
        return tile.of(
                faults.size() == 1 ? "Look at this head" : "Look at these heads",
                faults.stream().map(CupMap::words).collect(Collectors.joining("; ")),
                "at fault with a probability of " + Figures.sure(faults.get(0).sure()));
    }
}

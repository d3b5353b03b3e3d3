package loamline.sheets;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import loamline.findings.AreaFinding;
import loamline.findings.BagBalance;
import loamline.findings.Findings;
import loamline.findings.LoggedCore;
import loamline.findings.Surface;
import loamline.sampling.CorePlan;
import loamline.yard.Yard;
import loamline.yard.Zone;

/**
 * What the cores showed: a map under the few numbers that count; then why each part struggles, with what speaks for it
 * and against it, and the readings.
 *
 * @param zones the yard's turf, as {@link loamline.yard.Zones#of} gives it
 * @param plan the cores as planned
 */
public record FindingsSheet(Yard yard, List<Zone> zones, CorePlan plan, Findings findings, SheetOptions options) {
    private static final String TITLE = "what the cores showed";
    private static final String CAUTION =
            "Signs, not proof: make the test that is named before money is spent. Call the"
                    + " utility locating service before digging.";

    public FindingsSheet {
        zones = List.copyOf(zones);
    }

    /** All pages as a PDF; the same bytes for the same input. */
    public byte[] pdf() {
        Fonts fonts = new Fonts();
        Blocks blocks = new Blocks(fonts, options.palette());
        List<Page> pages = new ArrayList<>();
        pages.add(new FindingsMapPage(yard, zones, plan, findings, options, blocks)
                .page(TITLE + colours(), CAUTION, tiles(blocks)));
        pages.addAll(new FindingsTables(findings, new Figures(options.units()), blocks)
                .pages(options.paper().upright(), TITLE, CAUTION));
        return new Book(yard.name(), "findings", dated(), fonts).pdf(pages);
    }

    /** The day of the visit, unless another is asked for. */
    private SheetOptions dated() {
        Optional<LocalDate> visit =
                findings.log().visit().to().filter(day -> options.date().isEmpty());
        return visit.map(options::with).orElse(options);
    }

    private String colours() {
        return findings.clearestSurface()
                .map(surface -> ", in colour: " + surface.quantity().title())
                .orElse("");
    }

    private List<Block> tiles(Blocks blocks) {
        Tile tile = new Tile(blocks);
        long refused = findings.cores().stream().filter(LoggedCore::isRefused).count();
        int planned = plan.mainCores().size();
        String bags = findings.log().bags().stream().allMatch(BagBalance::isBalanced)
                ? "every bag balanced"
                : "bag "
                        + findings.log().bags().stream()
                                .filter(bag -> !bag.isBalanced())
                                .map(BagBalance::composite)
                                .collect(Collectors.joining(", "))
                        + " not complete";
        List<Block> tiles = new ArrayList<>();
        tiles.add(tile.of("Cores logged", findings.log().logged() + " of " + planned, refused + " refused; " + bags));
        for (AreaFinding area : findings.areas().stream().limit(3).toList()) {
            tiles.add(tile.of(
                    area.name(),
                    area.title(),
                    area.cores().isEmpty() ? "no core logged in it" : "cores " + String.join(", ", area.cores())));
        }
        Optional<Surface> shown = findings.clearestSurface();
        if (tiles.size() < 4) {
            tiles.add(tile.of(
                    "Colours on the map",
                    shown.map(s -> s.quantity().title()).orElse("none"),
                    shown.map(s -> s.method().word() + ", no farther than it carries")
                            .orElse("no reading runs smoothly from core to core")));
        }
        return tiles;
    }
}

package loamline.sheets;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import loamline.findings.Quantity;
import loamline.geometry.Box;
import loamline.geometry.Point;
import loamline.sampling.CorePlan;
import loamline.sampling.CorePlan.PlannedCore;
import loamline.scene.Layer;
import loamline.scene.SceneOptions;
import loamline.scene.View;
import loamline.scene.YardScene;
import loamline.units.UnitSystem;
import loamline.yard.Yard;
import loamline.yard.Zone;

/**
 * The log as one HTML file for a phone: map, a form for each core, and the list as {@code LOG.csv}. It needs no network
 * and no other file, keeps what is entered in the browser, and writes lengths in centimetres whatever unit is typed.
 *
 * @param zones the yard's turf, as {@link loamline.yard.Zones#of} gives it
 * @param plan the cores and their walk
 */
public record PhonePage(Yard yard, List<Zone> zones, CorePlan plan, SheetOptions options) {
    /** A yard without anything in it is shown as this much ground, m. */
    private static final Box NOTHING = new Box(-5, -5, 5, 5);

    /** Width of the map; signs then have the size they have on paper, mm. */
    private static final double WIDTH_MM = 96;

    private static final double ROUND_M = 1;
    private static final Set<Layer> LAYERS =
            EnumSet.complementOf(EnumSet.of(Layer.THROWS, Layer.RASTER, Layer.HEADS, Layer.CUPS, Layer.STRATA));

    public PhonePage {
        zones = List.copyOf(zones);
    }

    /** The file's text; the same for the same input. */
    public String html() {
        View view = view();
        String[] around = template().split("%MAP%|%DATA%", -1);
        String head = around[0]
                .replace("%TITLE%", SvgCanvas.escaped(yard.name().isBlank() ? "Core log" : yard.name()))
                .replace("%PROGRAM%", SvgCanvas.escaped(options.program()));
        return head + map(view) + around[1] + data(view) + around[2];
    }

    private static String template() {
        try (InputStream in = Optional.ofNullable(PhonePage.class.getResourceAsStream("/loamline/sheets/phone.html"))
                .orElseThrow(() -> new IllegalStateException("phone.html is not in the program"))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private View view() {
        Stream<Point> cores = plan.cores().stream().map(PlannedCore::at);
        Box ground = Box.around(Stream.concat(
                        cores, yard.box().stream().flatMap(box -> box.outline().vertices())))
                .orElse(NOTHING)
                .grown(ROUND_M);
        return new View(ground, ground.widthM() / WIDTH_MM);
    }

    private String map(View view) {
        SceneOptions drawn = SceneOptions.usual(view, new Fonts())
                .with(options.palette())
                .with(options.units())
                .with(LAYERS);
        StringBuilder marks = new StringBuilder();
        YardScene.of(yard, zones, Optional.of(plan), drawn).paint(new SvgCanvas(marks), new Point(0, 0));
        return String.format(
                        Locale.ROOT,
                        "<svg id=\"map\" viewBox=\"0 0 %s %s\" role=\"img\" aria-label=\"map of the cores\""
                                + " font-family=\"'DejaVu Sans Condensed','Roboto Condensed',Arial,sans-serif\">%n",
                        SvgCanvas.number(view.paper().widthMm()),
                        SvgCanvas.number(view.paper().heightMm()))
                + marks + "<g id=\"taps\"></g></svg>";
    }

    private String data(View view) {
        return "{\"yard\":" + quoted(yard.name()) + ",\"units\":"
                + quoted(options.units() == UnitSystem.US ? "in" : "cm") + ",\"feels\":["
                + Quantity.FEELS.stream().map(PhonePage::quoted).collect(Collectors.joining(",")) + "],\"cores\":[\n"
                + walked().map(core -> core(core, view)).collect(Collectors.joining(",\n")) + "\n]}";
    }

    /** Bag by bag in the order of the walk, every spare behind its core. */
    private Stream<PlannedCore> walked() {
        List<String> bags =
                plan.composites().stream().map(CorePlan.Composite::name).toList();
        return plan.mainCores().stream()
                .sorted(java.util.Comparator.comparingInt((PlannedCore core) -> bags.indexOf(core.composite()))
                        .thenComparingInt(core -> core.order().orElse(Integer.MAX_VALUE)))
                .flatMap(core -> Stream.concat(
                        Stream.of(core),
                        plan.cores().stream().filter(spare -> spare.spareOf().equals(Optional.of(core.id())))));
    }

    private static String core(PlannedCore core, View view) {
        Point mm = view.onPaper(core.at());
        return String.format(
                Locale.ROOT,
                "{\"id\":%s,\"zone\":%s,\"bag\":%s,\"spareOf\":%s,\"x\":%s,\"y\":%s,\"xM\":%.3f,\"yM\":%.3f}",
                quoted(core.id()),
                quoted(core.zone()),
                quoted(core.composite()),
                core.spareOf().map(PhonePage::quoted).orElse("null"),
                SvgCanvas.number(mm.x()),
                SvgCanvas.number(mm.y()),
                core.at().x(),
                core.at().y());
    }

    /** A string in a script element: nothing in it can end the string or the element. */
    private static String quoted(String words) {
        StringBuilder out = new StringBuilder("\"");
        for (int i = 0; i < words.length(); i++) {
            char c = words.charAt(i);
            boolean plain = c >= ' ' && c != '"' && c != '\\' && c != '<' && c != '>' && c != '&' && c < 0x2028;
            out.append(plain ? String.valueOf(c) : String.format(Locale.ROOT, "\\u%04x", (int) c));
        }
        return out.append('"').toString();
    }
}

package loamline.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import loamline.geometry.Lines;
import loamline.geometry.Point;
import loamline.geometry.Polyline;
import loamline.geometry.Region;
import loamline.sampling.CorePlan;
import loamline.sampling.CorePlan.Composite;
import loamline.yard.Core;
import loamline.yard.OwnCore;
import loamline.yard.Yard;
import loamline.yard.Zone;

/** Cores and spares, and the ground each core stands for. */
final class CoreSigns {
    /** Weight of a core's sign: radius of the disc. */
    static final double CORE_MM = 2.45;

    /** Weight of a spare's sign. */
    static final double SPARE_MM = 1.75;

    private static final double CORE_LINE_MM = 0.4;
    /** A locked core has a second outline, this many times as large. */
    static final double LOCK_RING = 1.35;

    private static final double SPARE_LINE_MM = 0.22;
    private static final double STRATUM_LINE_MM = 0.18;
    /** A stratum's border within this of the zone's edge would double it. */
    private static final double NEAR_EDGE_MM = 0.5;

    private static final double NUMBER_PT = 7.6;
    private static final double SPARE_NUMBER_PT = 4.9;

    private static final Pattern NUMBER = Pattern.compile("(\\d+)s?$");

    private CoreSigns() {}

    /**
     * A core to draw.
     *
     * @param words what stands in it
     */
    record Dot(String id, String bag, CoreShape shape, String words, Point at, Sort sort) {
        boolean spare() {
            return sort == Sort.SPARE;
        }
    }

    /** A locked core stays where it is when the others are planned again. */
    enum Sort {
        CORE,
        LOCKED,
        SPARE
    }

    static void strata(Sketch sketch, CorePlan plan, List<Zone> zones) {
        List<Region> grounds = plan.composites().stream()
                .flatMap(composite -> composite.strata().stream())
                .map(CorePlan.Stratum::ground)
                .toList();
        double nearM = sketch.view().metres(NEAR_EDGE_MM);
        Region edges = Region.union(zones.stream()
                .map(zone -> zone.net().buffer(nearM).minus(zone.net().buffer(-nearM)))
                .toList());
        List<Polyline> borders = Lines.outside(Lines.borders(grounds), edges);
        Pen dashes = Pen.dashed(sketch.ink(Role.STRATA), STRATUM_LINE_MM, 1.1, 0.9);
        sketch.draw(Layer.STRATA, Path.of(borders), Paint.line(dashes));
    }

    /** The plan's cores and spares; without a plan, the cores that the yard itself holds. */
    static List<Dot> dots(Yard yard, Optional<CorePlan> plan) {
        List<String> bags = bags(yard, plan);
        if (plan.isPresent()) {
            Set<String> locked =
                    yard.all(Core.class).filter(Core::locked).map(Core::id).collect(Collectors.toSet());
            return plan.get().cores().stream()
                    .map(core -> dot(
                            bags,
                            core.composite(),
                            core.id(),
                            core.at(),
                            core.spareOf().isPresent() ? Sort.SPARE : sort(locked.contains(core.id()))))
                    .toList();
        }
        List<Dot> dots = new ArrayList<>();
        for (OwnCore own : OwnCore.of(yard)) {
            dots.add(dot(bags, own.core(), sort(own.core().locked())));
            own.spares().forEach(spare -> dots.add(dot(bags, spare, Sort.SPARE)));
        }
        return dots;
    }

    private static Sort sort(boolean locked) {
        return locked ? Sort.LOCKED : Sort.CORE;
    }

    /** The bags in the order in which they take their shapes. */
    static List<String> bags(Yard yard, Optional<CorePlan> plan) {
        Stream<String> planned = plan.stream()
                .flatMap(p -> Stream.concat(
                        p.composites().stream().map(Composite::name),
                        p.cores().stream().map(CorePlan.PlannedCore::composite)));
        Stream<String> kept = plan.isPresent()
                ? Stream.empty()
                : yard.all(Core.class).map(Core::composite).sorted();
        return Stream.concat(planned, kept).distinct().toList();
    }

    private static Dot dot(List<String> bags, Core core, Sort sort) {
        return dot(bags, core.composite(), core.id(), core.at(), sort);
    }

    /** The number alone tells a core where its shape tells the bag; where shapes repeat, the whole id. */
    private static Dot dot(List<String> bags, String bag, String id, Point at, Sort sort) {
        int index = Math.max(0, bags.indexOf(bag));
        Matcher number = NUMBER.matcher(id);
        boolean shapeTells = index < CoreShape.values().length;
        String words = shapeTells && number.find() ? number.group(1) : id;
        return new Dot(id, bag, CoreShape.ofBag(index), words, at, sort);
    }

    static void spares(Sketch sketch, List<Dot> dots, double radiusMm) {
        Pen dashes = Pen.dashed(sketch.ink(Role.SOFT), SPARE_LINE_MM, 0.7, 0.45);
        dots.stream().filter(Dot::spare).forEach(dot -> {
            Path outline = dot.shape().path(radiusMm);
            Ink wash = sketch.ink(Role.PANEL).at(0.6);
            sketch.add(Layer.SPARES, new Mark.Stamp(dot.at(), outline, Paint.both(wash, dashes)));
            number(
                    sketch,
                    Layer.SPARES,
                    dot,
                    radiusMm,
                    new Label.Line(dot.words(), Type.bold(SPARE_NUMBER_PT), sketch.ink(Role.SOFT)));
        });
    }

    static void cores(Sketch sketch, List<Dot> dots, double radiusMm) {
        Pen line = sketch.pen(Role.INK, CORE_LINE_MM);
        dots.stream().filter(dot -> !dot.spare()).forEach(dot -> {
            CoreState state = sketch.options().states().getOrDefault(dot.id(), CoreState.PLANNED);
            boolean logged = state == CoreState.LOGGED;
            Path outline = dot.shape().path(radiusMm);
            Ink inside = sketch.ink(logged ? Role.INK : Role.PANEL);
            sketch.add(Layer.CORES, new Mark.Stamp(dot.at(), outline, Paint.both(inside, line)));
            if (dot.sort() == Sort.LOCKED) {
                Path ring = dot.shape().path(LOCK_RING * radiusMm);
                sketch.add(Layer.CORES, new Mark.Stamp(dot.at(), ring, Paint.line(line)));
            }
            Ink ink = sketch.ink(logged ? Role.PANEL : Role.INK);
            number(sketch, Layer.CORES, dot, radiusMm, new Label.Line(dot.words(), Type.bold(NUMBER_PT), ink));
            if (state == CoreState.REFUSED) {
                double r = 1.25 * radiusMm;
                Path strike = Path.open(new Point(-r, r), new Point(r, -r));
                sketch.add(Layer.CORES, new Mark.Stamp(dot.at(), strike, Paint.line(line)));
            }
        });
    }

    private static void number(Sketch sketch, Layer layer, Dot dot, double radiusMm, Label.Line line) {
        double widthMm = sketch.options().text().widthMm(line.words(), line.type());
        double shrink = Math.min(1, dot.shape().numberRoom() * radiusMm / widthMm);
        Type fitting = line.type().sized(line.type().sizePt() * shrink);
        Point middle = new Point(0, dot.shape().numberDrop() * radiusMm);
        if (!line.words().isEmpty()) {
            sketch.write(layer, dot.at(), middle, new Label.Line(line.words(), fitting, line.ink()));
        }
        double reachMm = dot.sort() == Sort.LOCKED ? LOCK_RING * radiusMm : radiusMm;
        sketch.block(dot.at(), dot.shape().box(reachMm + CORE_LINE_MM / 2));
    }

    /** Whether a sign placed here would touch a core. */
    static boolean touchesCore(Point at, double radiusMm, List<Dot> dots, View view) {
        double reachMm = radiusMm + 1.4 * CORE_MM;
        return dots.stream()
                .filter(dot -> !dot.spare())
                .anyMatch(dot -> dot.at().distanceTo(at) < view.metres(reachMm));
    }
}

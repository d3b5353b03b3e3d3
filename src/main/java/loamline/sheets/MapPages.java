package loamline.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import loamline.geometry.Box;
import loamline.geometry.Point;
import loamline.geometry.Region;
import loamline.sampling.CorePlan;
import loamline.sampling.CorePlan.Composite;
import loamline.sampling.CorePlan.PlannedCore;
import loamline.sampling.CorePlan.Walk;
import loamline.scene.Legend;
import loamline.scene.PaperRect;
import loamline.scene.Scene;
import loamline.scene.SceneOptions;
import loamline.scene.View;
import loamline.scene.YardScene;
import loamline.yard.Tree;
import loamline.yard.Yard;
import loamline.yard.Zone;

/** The map of the walk on one page, and a larger map of every bag whose signs would touch on it. */
record MapPages(Yard yard, List<Zone> zones, CorePlan plan, SheetOptions options, Blocks blocks) {
    private static final String CAUTION =
            "Call the utility locating service before probing. Mark heads, wires and dog fences first.";
    /** Signs nearer than this, middle to middle, touch or nearly do, mm. */
    private static final double CROWDED_MM = 5;
    /** A yard without anything in it is shown as this much ground, m. */
    private static final Box NOTHING = new Box(-5, -5, 5, 5);

    /** The whole walk under its summary. */
    Page overview(Block tiles) {
        MapFit fit = overviewFit();
        return TiledMap.page(fit, scene(fit, plan), "core walk", CAUTION, tiles);
    }

    /** The map of the overview by itself. */
    MapBlock overviewMap() {
        return map(overviewFit(), plan);
    }

    /** Its size on paper. */
    PaperRect overviewRoom() {
        return TiledMap.room(overviewFit().place().paper());
    }

    private MapFit overviewFit() {
        return fit(everything(), plan, TiledMap::room);
    }

    /** A page for each bag that is crowded on the overview, or for each of its zones where that shows more. */
    List<Page> details() {
        MapFit overview = overviewFit();
        List<Page> pages = new ArrayList<>();
        for (Composite bag : plan.composites()) {
            Optional<Page> whole = detail(bag, bag.zones(), overview);
            whole.ifPresent(pages::add);
            if (whole.isEmpty() && bag.zones().size() > 1) {
                bag.zones().forEach(zone -> detail(bag, List.of(zone), overview).ifPresent(pages::add));
            }
        }
        return pages;
    }

    private static boolean crowded(List<Point> signs, View view) {
        for (int i = 0; i < signs.size(); i++) {
            for (int j = 0; j < i; j++) {
                if (signs.get(i).distanceTo(signs.get(j)) < view.metres(CROWDED_MM)) {
                    return true;
                }
            }
        }
        return false;
    }

    private Stream<PlannedCore> coresOf(Composite bag) {
        return plan.cores().stream().filter(core -> core.composite().equals(bag.name()));
    }

    /** The page of some zones of a bag; empty if they are not crowded or would be shown no larger. */
    private Optional<Page> detail(Composite bag, List<String> names, MapFit overview) {
        List<Point> signs = coresOf(bag)
                .filter(core -> names.contains(core.zone()))
                .map(PlannedCore::at)
                .toList();
        if (!crowded(signs, overview.view())) {
            return Optional.empty();
        }
        Stream<Point> corners = Stream.concat(
                signs.stream(),
                zones.stream()
                        .filter(zone -> names.contains(zone.name()))
                        .flatMap(zone -> zone.net().outline().vertices()));
        CorePlan own = only(bag);
        return Box.around(corners)
                .map(box -> fit(box, own, Page::body))
                .filter(fit -> fit.denominator() < overview.denominator())
                .map(fit -> new Page(
                        fit.place().paper(),
                        "bag " + bag.name() + ", " + String.join(", ", names),
                        CAUTION,
                        List.of(new Page.Placed(
                                map(fit, own), Page.body(fit.place().paper())))));
    }

    /** The plan with the cores and the walk of one bag; the others keep their shapes. */
    private CorePlan only(Composite bag) {
        return new CorePlan(
                plan.seed(),
                plan.composites(),
                coresOf(bag).toList(),
                plan.walks().stream()
                        .filter(walk -> walk.composite().equals(bag.name())
                                || walk.composite().equals(Walk.ALL))
                        .toList(),
                plan.merges(),
                plan.problems(),
                plan.accounts());
    }

    private MapFit fit(Box ground, CorePlan shown, UnaryOperator<PaperRect> frameOf) {
        List<Legend.Entry> legend = legend(shown);
        SceneOptions any = sceneOptions(new View(NOTHING, 1));
        return MapFit.onPaper(ground, options.paper(), frameOf, legend, any);
    }

    private MapBlock map(MapFit fit, CorePlan shown) {
        return new MapBlock(scene(fit, shown), fit.denominator(), fit.place().furniture());
    }

    private Scene scene(MapFit fit, CorePlan shown) {
        return YardScene.of(yard, zones, Optional.of(shown), sceneOptions(fit.view()));
    }

    private List<Legend.Entry> legend(CorePlan shown) {
        return Legend.of(yard, Optional.of(shown), sceneOptions(new View(NOTHING, 1)));
    }

    private SceneOptions sceneOptions(View view) {
        return SceneOptions.usual(view, blocks.text()).with(options.palette()).with(options.units());
    }

    private Box everything() {
        Stream<Point> drawn =
                yard.features().stream().flatMap(f -> f.shape().stream()).flatMap(s -> s.vertices());
        Stream<Point> crowns = yard.all(Tree.class)
                .flatMap(tree -> Region.around(tree.at(), tree.crownRadiusM().orElse(0))
                        .outline()
                        .vertices());
        Stream<Point> walked = plan.walks().stream().flatMap(walk -> walk.path().vertices());
        Stream<Point> cored = plan.cores().stream().map(PlannedCore::at);
        return Box.around(Stream.of(drawn, crowns, walked, cored).flatMap(points -> points))
                .orElse(NOTHING);
    }
}

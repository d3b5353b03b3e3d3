package loamline.desk.trace;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import loamline.desk.session.Selection;
import loamline.desk.tool.AssistTool;
import loamline.desk.tool.Effect;
import loamline.desk.tool.Input;
import loamline.desk.tool.Surroundings;
import loamline.desk.tool.Tool;
import loamline.files.YardFiles;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Region;
import loamline.units.UnitSystem;
import loamline.yard.Backdrop;
import loamline.yard.Boundary;
import loamline.yard.Building;
import loamline.yard.Cover;
import loamline.yard.Feature;
import loamline.yard.Kind;
import loamline.yard.Turf;
import loamline.yard.Yard;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The demo yards traced by clicks and keys, against the outlines that their images were painted from. */
class AssistDemoTest {
    private static final double GOOD_IOU = 0.9;

    /** A person at work on a demo yard of which only the property line is drawn. */
    private static final class Desk {
        private final Yard truth;
        private final ImageTracer tracer = new ImageTracer();
        private Yard yard;
        private Tool tool = AssistTool.of(tracer, AssistTool.Settings.USUAL);
        private int clicks;

        Desk(String name) {
            Path maps = Path.of("maps").toAbsolutePath();
            Yard read = YardFiles.read(maps.resolve(name + ".loam.json")).yard().orElseThrow();
            Backdrop image = read.backdrop().orElseThrow();
            truth = read.withBackdrop(java.util.Optional.of(
                    image.withFile(maps.resolve(image.file()).toString())));
            yard = truth.withFeatures(
                    truth.features().stream().filter(Boundary.class::isInstance).toList());
        }

        private void send(Input input) {
            Tool.Step step = tool.on(input, new Surroundings(yard, Selection.NOTHING, UnitSystem.US, 0.05));
            tool = step.next();
            for (Effect effect : step.effects()) {
                if (effect instanceof Effect.Edit edit) {
                    yard = edit.after();
                } else if (effect instanceof Effect.Later later) {
                    try {
                        send(later.task().call());
                    } catch (Exception e) {
                        throw new AssertionError(e);
                    }
                }
            }
        }

        /** Clicks at pixels of the image, then Enter; gives what was added. */
        Feature trace(Kind kind, int... xy) {
            send(new AssistTool.Settings(kind, 0.5));
            for (int i = 0; i < xy.length; i += 2) {
                Point at = truth.backdrop().orElseThrow().placement().ground(new Point(xy[i] + 0.5, xy[i + 1] + 0.5));
                send(new Input.Press(at, 1, Input.Held.NONE));
                clicks++;
            }
            int before = yard.features().size();
            send(new Input.Key(Input.KeyName.ENTER, Input.Held.NONE));
            assertThat(yard.features()).hasSize(before + 1);
            return yard.features().get(before);
        }

        /** Takes features over from the truth as if somebody had drawn them. */
        void draw(String... names) {
            Set<String> wanted = Set.of(names);
            List<Feature> all = new ArrayList<>(yard.features());
            truth.features().stream().filter(f -> wanted.contains(name(f))).forEach(all::add);
            yard = yard.withFeatures(all);
        }

        Region ground(String... names) {
            return drawn(names).minus(roofs());
        }

        Region drawn(String... names) {
            Set<String> wanted = Set.of(names);
            return Region.union(truth.features().stream()
                    .filter(f -> wanted.contains(name(f)))
                    .map(f -> Region.of((Outline) f.shape().orElseThrow()))
                    .toList());
        }

        Region roof(String name) {
            return roof(truth.all(Building.class).filter(b -> b.name().equals(name)));
        }

        private Region roofs() {
            return roof(truth.all(Building.class));
        }

        private static Region roof(Stream<Building> buildings) {
            return Region.union(
                    buildings.map(b -> Region.of(b.outline()).buffer(b.eaveM())).toList());
        }

        String[] coversAndTurfBut(String... names) {
            Set<String> left = new HashSet<>(Set.of(names));
            return truth.features().stream()
                    .filter(f -> f instanceof Cover || f instanceof Turf || f instanceof Building)
                    .map(Desk::name)
                    .filter(name -> !left.contains(name))
                    .distinct()
                    .toArray(String[]::new);
        }

        private static String name(Feature feature) {
            if (feature instanceof Turf turf) {
                return turf.zone();
            } else if (feature instanceof Cover cover) {
                return cover.name();
            }
            return feature instanceof Building building ? building.name() : "";
        }
    }

    private static double iou(Feature traced, Region truth) {
        Region ground = Region.of((Outline) traced.shape().orElseThrow());
        return ground.intersection(truth).areaM2() / ground.union(truth).areaM2();
    }

    private static long vertices(Feature feature) {
        return feature.shape().orElseThrow().vertices().count();
    }

    @Test
    void theMainPartsOfTheSuburbanLotTakeAClickOrThreeEach() {
        Desk desk = new Desk("plover-court");
        Feature house = desk.trace(Kind.BUILDING, 300, 570, 300, 650, 550, 670);
        assertThat(iou(house, desk.roof("House"))).isGreaterThan(0.95);
        Feature drive = desk.trace(Kind.PAVING, 500, 800);
        assertThat(iou(drive, desk.ground("Drive"))).isGreaterThan(0.95);
        assertThat(vertices(drive)).isLessThanOrEqualTo(12);
        Feature front = desk.trace(Kind.TURF, 400, 800);
        assertThat(iou(front, desk.ground("Front east"))).isGreaterThan(0.95);
        assertThat(desk.clicks).isEqualTo(5);
    }

    @Test
    @Tag("slow")
    void aLawnUnderTreesTakesAClickAShadow() {
        Desk desk = new Desk("plover-court");
        desk.draw(desk.coversAndTurfBut("Back shade", "Back lawn"));
        Feature back = desk.trace(
                Kind.TURF, 430, 350, 190, 180, 195, 380, 220, 600, 220, 280, 215, 430, 320, 180, 350, 205, 625, 300,
                540, 570);
        assertThat(iou(back, desk.ground("Back shade", "Back lawn"))).isGreaterThan(GOOD_IOU);
    }

    @Test
    @Tag("slow")
    void theFarmIsTracedByAFewClicksAPart() {
        Desk desk = new Desk("tansy-hill");
        assertThat(iou(desk.trace(Kind.BUILDING, 740, 590, 740, 520), desk.roof("Barn")))
                .isGreaterThan(0.95);
        assertThat(iou(desk.trace(Kind.BUILDING, 320, 350, 310, 290, 372, 390, 415, 390), desk.roof("House")))
                .isGreaterThan(0.95);
        assertThat(iou(desk.trace(Kind.GRAVEL, 610, 700, 640, 580), desk.ground("Lane")))
                .isGreaterThan(GOOD_IOU);
        assertThat(iou(desk.trace(Kind.BED, 490, 748), desk.ground("Lilac island")))
                .isGreaterThan(GOOD_IOU);
    }

    @Test
    @Tag("slow")
    void aLawnRoundAPondSparesThePond() {
        Desk desk = new Desk("tansy-hill");
        String[] zones = {"Pond bank", "Lane lawn"};
        desk.draw(desk.coversAndTurfBut(zones));
        Feature lawn = desk.trace(Kind.TURF, 300, 560, 130, 570, 370, 750);
        Region truth = desk.ground(zones).minus(desk.drawn("Pond", "Lilac island"));
        assertThat(iou(lawn, truth)).isGreaterThan(0.95);
        assertThat(vertices(lawn)).isLessThan(100);
    }
}

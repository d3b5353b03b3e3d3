package loamline.desk.tool;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import loamline.Laws;
import loamline.desk.session.Selection;
import loamline.desk.tool.Input.Held;
import loamline.desk.tool.Input.KeyName;
import loamline.geometry.Point;
import loamline.yard.Feature;
import loamline.yard.Yard;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.Tag;

/** Whatever is done, undo leads back to the beginning and redo to the end. */
class EditingLawsTest {
    private static final int EDITS = 500;

    /** Many inputs are refused or only select. */
    private static final int MOST_INPUTS = 20_000;

    /** Undo drops what was done after it as soon as something else is done: seldom, so that sequences grow long. */
    private static final int TRAVEL_EVERY = 50;

    /** Copies of copies would make every step slower than the last. */
    private static final int MOST_FEATURES = 40;

    /** With less there is little to edit. */
    private static final int FEWEST_FEATURES = 4;

    @Property(seed = Laws.SEED, tries = 2, shrinking = ShrinkingMode.OFF)
    void undoLeadsBackAndRedoForth(@ForAll long seed) {
        check(seed);
    }

    @Tag("slow")
    @Property(seed = Laws.SEED, tries = 300, shrinking = ShrinkingMode.OFF)
    void undoLeadsBackAndRedoForthManyTimes(@ForAll long seed) {
        check(seed);
    }

    private static void check(long seed) {
        Random random = new Random(seed);
        Desk desk = new Desk(SmallYard.YARD);
        Yard checked = desk.shown;
        for (int i = 0; i < MOST_INPUTS && desk.edits < EDITS; i++) {
            act(desk, random);
            if (random.nextInt(TRAVEL_EVERY) == 0) {
                travel(desk, random);
            }
            if (desk.shown != checked) {
                assertSound(desk.shown);
                checked = desk.shown;
            }
            int features = desk.yard().features().size();
            if (features < FEWEST_FEATURES || features > MOST_FEATURES) {
                startAgain(desk);
            }
        }
        Yard last = desk.yard();
        int steps = desk.history.position();
        assertThat(desk.edits).isEqualTo(EDITS);
        for (int i = 0; i < steps; i++) {
            desk.history = desk.history.undone();
            assertSound(desk.yard());
        }
        assertThat(desk.yard()).isEqualTo(SmallYard.YARD);
        for (int i = 0; i < steps; i++) {
            desk.history = desk.history.redone();
        }
        assertThat(desk.yard()).isEqualTo(last);
    }

    private static void act(Desk desk, Random random) {
        switch (random.nextInt(5)) {
            case 0 -> desk.run(pick(Commands.all(), random));
            case 1 -> desk.run(Commands.rename("N" + random.nextInt(9)));
            case 2 -> choose(desk, random);
            case 3 -> desk.send(new Input.Key(pick(List.of(KeyName.values()), random), held(random)));
            default -> pointer(desk, random);
        }
    }

    /** Undo and redo, in the middle of whatever is going on. */
    private static void travel(Desk desk, Random random) {
        desk.history = random.nextBoolean() ? desk.history.undone() : desk.history.redone();
        desk.settle();
    }

    private static void choose(Desk desk, Random random) {
        List<String> keys = new ArrayList<>();
        for (Feature feature : desk.yard().features()) {
            if (random.nextInt(4) == 0) {
                keys.add(feature.key());
            }
        }
        desk.selection = Selection.ofFeatures(random.nextBoolean() || keys.isEmpty() ? keys : keys.subList(0, 1));
    }

    /** A press on a grip, a corner or anywhere, then some of a drag, then perhaps the release. */
    private static void pointer(Desk desk, Random random) {
        Held held = held(random);
        desk.send(new Input.Press(place(desk, random), 1 + random.nextInt(2), held));
        for (int i = random.nextInt(3); i > 0; i--) {
            desk.send(new Input.Drag(place(desk, random), held));
        }
        if (random.nextInt(5) > 0) {
            desk.send(new Input.Release(place(desk, random), held));
        }
    }

    private static Point place(Desk desk, Random random) {
        List<Point> grips = new ArrayList<>();
        for (Guide guide : desk.tool.guides(desk.around())) {
            if (guide instanceof Guide.Grip grip) {
                grips.add(grip.at());
            }
        }
        return grips.isEmpty() || random.nextInt(3) == 0
                ? new Point(random.nextDouble() * 32 - 1, random.nextDouble() * 32 - 1)
                : pick(grips, random);
    }

    private static Held held(Random random) {
        return new Held(random.nextInt(4) == 0, false, random.nextInt(4) == 0);
    }

    private static <T> T pick(List<T> some, Random random) {
        return some.get(random.nextInt(some.size()));
    }

    /** One more edit, that puts everything back. */
    private static void startAgain(Desk desk) {
        desk.history = desk.history.then("start again", SmallYard.YARD);
        desk.settle();
    }

    /** What a yard promises: unique keys and finite places are checked where it is made; the rest here. */
    private static void assertSound(Yard yard) {
        assertThat(yard.features()).contains(SmallYard.ODD);
        assertThat(yard.features().stream().map(Feature::key)).doesNotHaveDuplicates();
        assertThat(yard.features().stream()
                        .flatMap(feature -> feature.shape().stream())
                        .flatMap(shape -> shape.vertices())
                        .allMatch(p -> Double.isFinite(p.x()) && Double.isFinite(p.y())))
                .isTrue();
    }
}

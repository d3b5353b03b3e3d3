package loamline.bench;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.place.Frame;
import loamline.place.LonLat;
import loamline.sun.SunRequest;
import loamline.sun.SunStudy;
import loamline.yard.Building;
import loamline.yard.Extras;
import loamline.yard.Feature;
import loamline.yard.Tree;
import loamline.yard.Turf;
import loamline.yard.Yard;

/** Turf with boxes and cylinders on it, half of each, and a week's dates: a scene that any ray caster can be asked about. */
public final class SunScene {
    private static final LonLat PLACE = new LonLat(-89.05, 40.35);

    private SunScene() {}

    /** @param casters how many, the first half buildings */
    public static Yard make(double widthM, double heightM, int casters) {
        SplittableRandom random = new SplittableRandom(7);
        List<Feature> features = new ArrayList<>();
        features.add(new Turf(
                "turf",
                Turf.DEFAULT_ZONE,
                "",
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                Outline.of(0, 0, widthM, 0, widthM, heightM, 0, heightM),
                Extras.NONE));
        for (int i = 0; i < casters; i++) {
            double x = random.nextDouble(widthM);
            double y = random.nextDouble(heightM);
            double top = 2 + random.nextDouble(6);
            features.add(i < casters / 2 ? building(random, i, x, y, top) : tree(random, i, x, y, top));
        }
        return Yard.empty("bench", Frame.at(PLACE)).withFeatures(features);
    }

    private static Feature building(SplittableRandom random, int i, double x, double y, double top) {
        double w = 3 + random.nextDouble(7);
        double d = 3 + random.nextDouble(5);
        return new Building("b" + i, "", top, 0, Outline.of(x, y, x + w, y, x + w, y + d, x, y + d), Extras.NONE);
    }

    private static Feature tree(SplittableRandom random, int i, double x, double y, double top) {
        return new Tree(
                "t" + i,
                OptionalDouble.of(1 + random.nextDouble(3)),
                OptionalDouble.of(top),
                0,
                true,
                0,
                OptionalDouble.of(0),
                true,
                new Point(x, y),
                Extras.NONE);
    }

    /** Every ten minutes of seven days through the half year: about 560 positions of the sun. */
    public static SunRequest request(double cellM) {
        List<LocalDate> dates = Stream.iterate(LocalDate.of(2027, 3, 20), date -> date.plusDays(22))
                .limit(7)
                .toList();
        return new SunRequest(dates, SunRequest.USUAL_STEP, cellM);
    }

    /** The same scene as JSON: {@code widthM, heightM, cellM, stepHours, sun, blocks, crowns}. */
    public static String json(Yard yard, SunStudy study, double widthM, double heightM) {
        String suns = study.positions().stream()
                .map(sun -> numbers(sun.azimuthDeg(), sun.elevationDeg()))
                .collect(Collectors.joining(","));
        String blocks = yard.all(Building.class)
                .map(b -> "{\"heightM\":" + b.heightM() + ",\"ring\":["
                        + b.outline().vertices().map(p -> numbers(p.x(), p.y())).collect(Collectors.joining(","))
                        + "]}")
                .collect(Collectors.joining(","));
        String crowns = yard.all(Tree.class)
                .map(t -> "{\"xM\":" + t.at().x() + ",\"yM\":" + t.at().y() + ",\"radiusM\":"
                        + t.crownRadiusM().orElseThrow() + ",\"heightM\":"
                        + t.heightM().orElseThrow() + "}")
                .collect(Collectors.joining(","));
        return String.format(
                Locale.ROOT,
                "{\"widthM\":%s,\"heightM\":%s,\"cellM\":%s,\"stepHours\":%s,\"sun\":[%s],\"blocks\":[%s],\"crowns\":[%s]}",
                widthM,
                heightM,
                study.request().cellM(),
                study.request().step().toSeconds() / 3600.0,
                suns,
                blocks,
                crowns);
    }

    private static String numbers(double a, double b) {
        return "[" + a + "," + b + "]";
    }
}

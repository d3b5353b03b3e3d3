package loamline.water;

import java.nio.file.*;
import java.util.*;
import loamline.files.YardFiles;
import loamline.yard.*;
import org.junit.jupiter.api.Test;

class TmpTest {
    @Test
    void t() {
        Yard y = YardFiles.read(Path.of("maps/plover-court.geojson")).yard().get();
        for (int k = 0; k < 6; k++) {
            long t = System.nanoTime();
            Water w = Water.of(y, WaterOptions.USUAL);
            System.out.println("ms " + (System.nanoTime() - t) / 1e6);
            if (k == 5) {
                w.valves().forEach(System.out::println);
                w.gaps()
                        .forEach(g ->
                                System.out.println(g.id() + " " + g.areaM2() + " " + g.zone() + " " + g.centroid()));
                w.coverage().reachedBy().forEach(r -> System.out.println(r.areaM2()));
                w.coverage().destinations().forEach(System.out::println);
                w.headToHead()
                        .forEach(h -> System.out.println(
                                h.head() + " " + h.ok() + " " + h.nearestM() + " " + h.reach() + " " + h.sides()));
                Head h = y.all(Head.class).skip(9).findFirst().get();
                for (int j = 0; j < 8; j++) {
                    List<Feature> f = new ArrayList<>(y.features());
                    f.set(y.indexOf(h), h.withShape(h.at().plus(0.1 * j, 0)));
                    Yard y2 = y.withFeatures(f);
                    long t2 = System.nanoTime();
                    Water w2 = w.after(y2);
                    System.out.println("after ms " + (System.nanoTime() - t2) / 1e6);
                }
                long t3 = System.nanoTime();
                Water b = Water.of(y, WaterOptions.USUAL.withObstacles(true));
                System.out.println("obst ms " + (System.nanoTime() - t3) / 1e6);
                b.coverage().destinations().forEach(System.out::println);
                b.gaps()
                        .forEach(g ->
                                System.out.println(g.id() + " " + g.areaM2() + " " + g.zone() + " " + g.centroid()));
            }
        }
    }
}

package loamline.season.blend;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Random blends, the same for the same seed. */
final class Blends {
    private Blends() {}

    static Blend random(long seed, int plots, int materials, int dates) {
        Random random = new Random(seed);
        List<Material> list =
                IntStream.range(0, materials).mapToObj(m -> material(random, m)).toList();
        return new Blend(
                list,
                IntStream.range(0, plots)
                        .mapToObj(p -> plot(random, p, materials, dates))
                        .toList());
    }

    private static Material material(Random random, int m) {
        double n = random.nextInt(4) == 0 ? 0 : 0.1 + 0.36 * random.nextDouble();
        double slow = random.nextInt(3) == 0 ? 0 : random.nextDouble();
        Map<Quantity, Double> content = new EnumMap<>(Quantity.class);
        content.put(Quantity.N, n);
        content.put(Quantity.QUICK_N, n * (1 - slow));
        content.put(Quantity.P2O5, random.nextInt(3) == 0 ? 0.2 * random.nextDouble() : 0);
        content.put(Quantity.K2O, random.nextInt(2) == 0 ? 0.5 * random.nextDouble() : 0);
        content.put(Quantity.SALT, 0.2 + random.nextDouble());
        return new Material("m" + m, 5 + 20 * random.nextDouble(), 10 + 40 * random.nextDouble(), content);
    }

    private static Plot plot(Random random, int p, int materials, int dates) {
        Map<Quantity, Range> season = new EnumMap<>(Quantity.class);
        double n = 15 * random.nextDouble();
        season.put(Quantity.N, new Range(0.95 * n, 1.05 * n));
        double p2o5 = random.nextInt(3) == 0 ? 3 * random.nextDouble() : 0;
        season.put(Quantity.P2O5, new Range(0.95 * p2o5, 1.05 * p2o5 + 0.5));
        double k2o = 8 * random.nextDouble();
        season.put(Quantity.K2O, new Range(0.95 * k2o, 1.05 * k2o + n));
        List<Slot> slots = new ArrayList<>();
        for (int d = 0; d < dates; d++) {
            Map<Quantity, Double> most = new EnumMap<>(Quantity.class);
            most.put(Quantity.N, random.nextInt(4) == 0 ? 4.9 * random.nextDouble() : 4.9);
            most.put(Quantity.QUICK_N, 3.4);
            most.put(Quantity.K2O, 4.9);
            most.put(Quantity.SALT, 18.0);
            Set<Integer> allowed = IntStream.range(0, materials)
                    .filter(m -> random.nextInt(6) > 0)
                    .boxed()
                    .collect(Collectors.toCollection(TreeSet::new));
            slots.add(new Slot(LocalDate.of(2027, 1 + d, 5), most, allowed, n / dates));
        }
        return new Plot("z" + p, 50 + 500 * random.nextDouble(), season, slots);
    }
}

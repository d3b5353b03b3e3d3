package loamline.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import loamline.soil.Element;
import loamline.soil.LabValue;
import loamline.soil.SoilOptions;
import loamline.units.Factors;
import loamline.yard.Feature;
import loamline.yard.Kind;
import loamline.yard.Yard;
import loamline.yard.YardFixtures;

/**
 * Small yards beside a pond, with laboratory values good and bad, another company's ledger, a price list and a law; the
 * same for the same seed.
 */
record LabSeasons(Random random) {
    private static final double LB = Factors.G_M2_PER_LB_1000FT2;
    private static final List<String> STATES = List.of("MN", "NY", "MD", "NJ", "MI", "CT", "VT", "FL");
    private static final List<String> REGIONS = List.of("virginia", "illinois", "kansas", "north carolina");

    /** Chance of being sold, name, N, P2O5, K2O, Ca, S, CCE and slow share in per cent, form, salt index. */
    private static final String SOLD = """
            1.0,slow 24-0-8,24,0,8,0,0,0,45,granular,40
            0.7,urea,46,0,0,0,0,0,0,granular,75
            0.7,slow 18-24-12,18,24,12,0,0,0,35,granular,60
            0.9,triple,0,46,0,0,0,0,0,granular,10
            0.9,potash,0,0,50,0,0,0,0,granular,46
            0.4,nearly free,30,0.5,5,0,0,0,40,granular,50
            0.9,ground lime,0,0,0,34,0,85,0,lime,0
            0.5,hydrated lime,0,0,0,50,0,130,0,lime,0
            0.9,sulfur,0,0,0,0,90,0,0,sulfur,0
            0.9,gypsum,0,0,0,21,16,0,0,gypsum,0
            """;

    /** An upright rectangle, m. */
    record Box(double west, double south, double east, double north) {
        double[] corners() {
            return YardFixtures.box(west, south, east, north);
        }
    }

    /** Inputs beside the shapes that they were made from. */
    record Case(SeasonInputs inputs, List<Box> lawns, Box pond) {}

    static Case of(long seed) {
        return new LabSeasons(new Random(seed)).made();
    }

    private Case made() {
        List<Box> lawns = new ArrayList<>();
        double west = 0;
        for (int i = 0; i < 1 + random.nextInt(3); i++) {
            double east = west + 3 + 15 * random.nextDouble();
            lawns.add(new Box(west, 0, east, 4 + 20 * random.nextDouble()));
            west = east + 0.5;
        }
        double x = west * random.nextDouble();
        double y = -12 + 24 * random.nextDouble();
        Box pond = new Box(x, y, x + 1 + 8 * random.nextDouble(), y + 1 + 8 * random.nextDouble());
        SeasonOptions options = options();
        SeasonInputs inputs = new SeasonInputs(
                Ground.of(yard(lawns, pond), options.setbackM()),
                IntStream.range(0, lawns.size())
                        .mapToObj(this::sample)
                        .flatMap(List::stream)
                        .toList(),
                products(),
                IntStream.range(0, random.nextInt(4)).mapToObj(i -> visit()).toList(),
                IntStream.range(0, lawns.size()).mapToObj(this::target).toList(),
                options);
        return new Case(inputs, lawns, pond);
    }

    private static Yard yard(List<Box> lawns, Box pond) {
        return YardFixtures.yard(Stream.concat(
                        IntStream.range(0, lawns.size())
                                .mapToObj(i ->
                                        YardFixtures.turf(zone(i), lawns.get(i).corners())),
                        Stream.of(YardFixtures.cover(Kind.WATER, pond.corners())))
                .toArray(Feature[]::new));
    }

    private static String zone(int i) {
        return "z" + i;
    }

    private SeasonOptions options() {
        SeasonOptions usual = SeasonOptions.from(LocalDate.of(2027, 1 + random.nextInt(9), 1 + random.nextInt(28)));
        Optional<String> state = maybe(0.8) ? Optional.of(pick(STATES)) : Optional.empty();
        return new SeasonOptions(
                usual.from(),
                Optional.of(pick(REGIONS)),
                state,
                random.nextBoolean(),
                random.nextBoolean(),
                usual.meanC(),
                SoilOptions.USUAL,
                usual.tables());
    }

    private Target target(int i) {
        Target usual = Target.of(zone(i));
        OptionalDouble nitrogen =
                maybe(0.7) ? OptionalDouble.of(3.5 * LB * random.nextDouble()) : OptionalDouble.empty();
        Target.Seed seed = maybe(0.2)
                ? new Target.Seed(List.of(), OptionalDouble.of(0.4), OptionalDouble.empty(), OptionalDouble.empty())
                : Target.Seed.NONE;
        return new Target(
                usual.zone(),
                "tall fescue",
                "",
                usual.use(),
                nitrogen,
                seed,
                0,
                usual.keeping(),
                usual.compost(),
                2 + i);
    }

    private Visit visit() {
        return new Visit(
                maybe(0.9)
                        ? Optional.of(LocalDate.of(2027, 3 + random.nextInt(8), 1 + random.nextInt(28)))
                        : Optional.empty(),
                "theirs",
                maybe(0.5) ? List.of() : List.of(zone(random.nextInt(3))),
                new Visit.Percents(told(20), told(pick(List.of(0, 5))), told(pick(List.of(0, 8)))),
                told(30),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                told(0.9 * LB * random.nextDouble()),
                2);
    }

    /** A price list out of {@link #SOLD}, with weights and prices of its own. */
    private List<Product> products() {
        List<Product> list = new ArrayList<>();
        for (String line : SOLD.lines().toList()) {
            String[] cells = line.split(",");
            if (maybe(number(cells, 0))) {
                list.add(product(cells));
            }
        }
        return list;
    }

    private Product product(String[] cells) {
        return new Product(
                cells[1],
                new Product.Percent(
                        number(cells, 2),
                        number(cells, 3),
                        number(cells, 4),
                        number(cells, 5),
                        0,
                        number(cells, 6),
                        0,
                        number(cells, 7)),
                number(cells, 8),
                cells[9],
                5 + 20 * random.nextDouble(),
                10 + 40 * random.nextDouble(),
                OptionalDouble.of(number(cells, 10)),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                2);
    }

    private static double number(String[] cells, int at) {
        return Double.parseDouble(cells[at]);
    }

    /** A zone's sample: poor, sour, alkaline or sodic, and each value may lack what makes it one. */
    private List<LabValue> sample(int i) {
        Optional<LocalDate> date = maybe(0.8)
                ? Optional.of(LocalDate.of(2023 + random.nextInt(5), 1 + random.nextInt(12), 5))
                : Optional.empty();
        List<LabValue> values = new ArrayList<>();
        String extractant = maybe(0.8) ? "Mehlich-3" : pick(List.of("", "our own", "Bray P1"));
        nutrient(values, i, date, Element.P, 60 * random.nextDouble(), extractant);
        nutrient(values, i, date, Element.K, 120 * random.nextDouble(), extractant);
        double ph = 4.8 + 3.6 * random.nextDouble();
        values.add(value(i, date, Element.PH, ph, "", "", maybe(0.85) ? "water" : pick(List.of("", "CaCl2"))));
        if (maybe(0.6)) {
            String buffer = pick(List.of("SMP", "Sikora", "Mehlich", "Adams-Evans", ""));
            values.add(value(i, date, Element.BUFFER_PH, 5.2 + 1.6 * random.nextDouble(), "", "", buffer));
        } else {
            values.add(value(i, date, Element.ACIDITY, 12 * random.nextDouble(), unit("meq/100 g"), "", "Mehlich"));
        }
        if (maybe(0.7)) {
            values.add(value(i, date, Element.SAND, 80, "%", "", ""));
            values.add(value(i, date, Element.SILT, 12, "%", "", ""));
            values.add(value(i, date, Element.CLAY, 8, "%", "", ""));
        }
        if (maybe(0.3)) {
            values.add(value(i, date, Element.CEC, 10, "meq/100 g", "", ""));
            nutrient(values, i, date, Element.NA, 200 + 600 * random.nextDouble(), extractant);
            nutrient(values, i, date, Element.CA, 800, extractant);
            nutrient(values, i, date, Element.MG, 120, extractant);
        }
        return values;
    }

    private void nutrient(
            List<LabValue> values, int i, Optional<LocalDate> date, Element element, double ppm, String extractant) {
        values.add(value(i, date, element, ppm, unit(pick(List.of("ppm", "lb/acre"))), extractant, ""));
    }

    private String unit(String known) {
        return maybe(0.85) ? known : pick(List.of("", "grains"));
    }

    private LabValue value(
            int i,
            Optional<LocalDate> date,
            Element element,
            double value,
            String unit,
            String extractant,
            String method) {
        OptionalDouble depthM =
                maybe(0.85) ? OptionalDouble.of(pick(List.of(0.0762, 0.1016, 0.1524))) : OptionalDouble.empty();
        return new LabValue(
                "S" + i,
                List.of(zone(i)),
                element,
                value,
                LabValue.Made.of(element, unit, extractant, method, depthM),
                "invented",
                date,
                2);
    }

    private OptionalDouble told(double value) {
        return maybe(0.85) ? OptionalDouble.of(value) : OptionalDouble.empty();
    }

    private boolean maybe(double chance) {
        return random.nextDouble() < chance;
    }

    private <T> T pick(List<T> list) {
        return list.get(random.nextInt(list.size()));
    }
}

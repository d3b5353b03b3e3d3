package loamline.soil;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import loamline.account.Account;
import loamline.reference.SoilRange;
import loamline.reference.SoilTables;
import loamline.reference.SoilTables.Guideline;

/**
 * Rates the values of a sample.
 *
 * <p>With a guideline named, nutrients are rated by it alone; pH, organic matter and salinity by it if it has them, else
 * by the usual ones. Without, each value is rated by the first usual guideline that is made for its test.
 *
 * @param named the guideline asked for
 */
record Rater(SoilTables tables, Optional<Guideline> named) {
    /** Depths this close count as one, m; a probe is not set finer. */
    private static final double SAME_DEPTH_M = 0.011;

    List<Rating> ratings(SampleTest test) {
        return test.values().stream()
                .map(value -> {
                    Optional<Guideline> guideline = guideline(value, test);
                    return new Rating(
                            value,
                            standing(value, test, guideline),
                            guideline.map(Guideline::name).orElse(""),
                            change(value, test));
                })
                .toList();
    }

    private Optional<Guideline> guideline(LabValue value, SampleTest test) {
        if (named.isPresent()
                && (value.element().isNutrient() || !ranges(value, named.get()).isEmpty())) {
            return named;
        }
        return tables.guidelines().stream()
                .filter(Guideline::usual)
                .filter(g -> fits(g, value, test))
                .findFirst();
    }

    private boolean fits(Guideline guideline, LabValue value, SampleTest test) {
        String texture = test.texture().map(Texture::label).orElse("");
        List<SoilRange> made = ranges(value, guideline).stream()
                .filter(r -> value.test().filter(r.test()::equals).isPresent())
                .toList();
        return made.stream().anyMatch(r -> r.isFor(texture)) || (texture.isEmpty() && !made.isEmpty());
    }

    private List<SoilRange> ranges(LabValue value, Guideline guideline) {
        return tables.ranges(value.element().key()).stream()
                .filter(r -> r.guideline().equals(guideline.name()))
                .toList();
    }

    private Advice<Rating.Standing> standing(LabValue value, SampleTest test, Optional<Guideline> guideline) {
        Optional<String> whyNot = new Questions(tables).whyNot(value);
        if (whyNot.isPresent()) {
            return Advice.refused(whyNot.get());
        }
        return guideline.isEmpty() ? Advice.refused(noGuideline(value)) : standing(value, test, guideline.get());
    }

    private static String noGuideline(LabValue value) {
        return switch (value.element()) {
            case BUFFER_PH, ACIDITY, LBC -> "read by the lime method, not rated";
            case CEC, SAND, SILT, CLAY, CARBONATE -> "describes the soil, not rated";
            case PH -> SampleTest.SALT_PH;
            case REC_P2O5, REC_K2O, REC_LIME -> "the laboratory’s own recommendation, not rated";
            default ->
                "no range is held for " + value.element().key() + " by "
                        + value.test().orElse("an unknown method") + ": it is shown, not rated";
        };
    }

    private Advice<Rating.Standing> standing(LabValue value, SampleTest test, Guideline guideline) {
        List<SoilRange> ofElement = ranges(value, guideline);
        if (ofElement.isEmpty()) {
            return Advice.refused("“" + guideline.name() + "” has no range for "
                    + value.element().key());
        }
        List<SoilRange> made = ofElement.stream()
                .filter(r -> value.test().filter(r.test()::equals).isPresent())
                .toList();
        if (made.isEmpty()) {
            return Advice.refused("“" + guideline.name() + "” is made for "
                    + ofElement.stream().map(SoilRange::test).distinct().collect(Collectors.joining(", "))
                    + "; this value is by " + value.test().orElse("an unknown method")
                    + ", and there is no conversion between them");
        }
        Optional<Texture> texture = test.texture();
        Optional<SoilRange> range = made.stream()
                .filter(r -> r.isFor(texture.map(Texture::label).orElse("")))
                .findFirst();
        if (range.isEmpty()) {
            return Advice.refused(
                    texture.isEmpty()
                            ? "“" + guideline.name() + "” depends on texture: fill in sand, silt and clay"
                            : "“" + guideline.name() + "” has no range for "
                                    + texture.get().label());
        }
        return inUnitOf(range.get(), value, test).map(number -> standing(number, range.get()));
    }

    private static Rating.Standing standing(double number, SoilRange range) {
        return new Rating.Standing(number, range, range.bandOf(number));
    }

    private Advice<Double> inUnitOf(SoilRange range, LabValue value, SampleTest test) {
        Advice<Double> number = converted(range, value, test);
        Account account = Account.of(
                        "class = " + range.element() + " (" + range.test() + ", " + range.unit() + ") in "
                                + range.guideline(),
                        "Rounded to " + Questions.plain(range.step()) + " first, since classes are printed with gaps; "
                                + range.origin().status() + ".",
                        range.origin().source())
                .with("value", value.value())
                .with("unit", value.made().unitText());
        return number.isGiven() ? Advice.given(number.value().orElseThrow(), account) : number;
    }

    private Advice<Double> converted(SoilRange range, LabValue value, SampleTest test) {
        Concentrations in = new Concentrations(tables);
        if (value.element() == Element.PH) {
            return in.ph(value);
        }
        if (range.unit().equals("index")) {
            return manganeseIndex(in.ppm(value), test);
        }
        LabUnit unit = LabUnit.of(range.unit()).orElseThrow(() -> new IllegalStateException(range.unit()));
        return value.element().kind() == Element.Kind.SHARE ? in.share(value) : in.in(unit, value);
    }

    private Advice<Double> manganeseIndex(Advice<Double> ppm, SampleTest test) {
        Advice<Double> ph = test.waterPh();
        return ph.isGiven() ? ppm.map(mn -> manganeseIndex(mn, ph.value().orElseThrow())) : ph;
    }

    /** Availability of manganese: 101.7 + 3.75 Mn (ppm, Mehlich-3) − 15.2 pH. Rutgers NJAES. */
    static double manganeseIndex(double ppm, double ph) {
        return Math.max(0, 101.7 + 3.75 * ppm - 15.2 * ph);
    }

    private Optional<Change> change(LabValue value, SampleTest test) {
        if (new Questions(tables).whyNot(value).isPresent()) {
            return Optional.empty();
        }
        return test.before(value.element()).stream()
                .filter(e -> isMadeAlike(e, value))
                .findFirst()
                .flatMap(e -> inUnitOf(e, value)
                        .map(before -> Change.of(value.element(), e.date().orElseThrow(), before, value.value())));
    }

    private static boolean isMadeAlike(LabValue earlier, LabValue value) {
        return earlier.test().equals(value.test())
                && earlier.made().methodText().equalsIgnoreCase(value.made().methodText())
                && Math.abs(earlier.made().depthM().orElse(0)
                                - value.made().depthM().orElse(0))
                        < SAME_DEPTH_M;
    }

    /** An earlier value in the unit of a newer one; empty if there is no way. */
    private Optional<Double> inUnitOf(LabValue earlier, LabValue value) {
        if (earlier.unit().equals(value.unit())
                && earlier.made().unitText().equalsIgnoreCase(value.made().unitText())) {
            return Optional.of(earlier.value());
        }
        Concentrations in = new Concentrations(tables);
        return value.unit()
                .filter(u -> value.element().isNutrient())
                .flatMap(u -> in.in(u, earlier).value());
    }
}

package loamline.soil;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import loamline.reference.NamedRow;
import loamline.reference.SoilTables;

/** What has to be asked about a value before anything may follow from it. */
record Questions(SoilTables tables) {
    /** Largest share, per cent. */
    private static final double WHOLE_PCT = 100;
    /** No soil is known beyond these; common practice, no source. */
    private static final double MOST_CEC_MEQ = 250;

    private static final double MOST_EC_DS_M = 100;
    private static final double MOST_PH = 14;
    /** A core deeper than this is no turf sample; common practice, no source. */
    private static final double MOST_DEPTH_M = 1;

    /** Values from which amounts on an area follow, so that their depth must be known. */
    private static final Set<Element> NEED_DEPTH =
            Set.of(Element.P, Element.K, Element.BUFFER_PH, Element.ACIDITY, Element.LBC);

    /** All of them, those that block first. */
    List<Question> about(LabValue value) {
        List<Question> questions = new ArrayList<>();
        range(value).ifPresent(questions::add);
        unit(value).ifPresent(questions::add);
        extractant(value).ifPresent(questions::add);
        method(value).ifPresent(questions::add);
        if (questions.isEmpty()) {
            doubt(value).ifPresent(questions::add);
        }
        depth(value).ifPresent(questions::add);
        return questions;
    }

    /** Why a value is of no use as it stands; empty if it is sound. */
    Optional<String> whyNot(LabValue value) {
        return about(value).stream().filter(Question::blocks).map(Question::ask).findFirst();
    }

    private static Optional<Question> range(LabValue value) {
        boolean index = value.isIn(LabUnit.INDEX);
        double most = switch (value.element().kind()) {
            case PH -> index ? 10 * MOST_PH : MOST_PH;
            case SHARE -> value.isIn(LabUnit.G_KG) ? 10 * WHOLE_PCT : WHOLE_PCT;
            case CHARGE -> MOST_CEC_MEQ;
            case CONDUCTIVITY -> MOST_EC_DS_M;
            default -> Double.MAX_VALUE;
        };
        return value.value() >= 0 && value.value() <= most
                ? Optional.empty()
                : Optional.of(new Question(
                        "LAB_VALUE_RANGE",
                        "value",
                        plain(value.value()) + " cannot be: it lies from 0"
                                + (most == Double.MAX_VALUE ? " up" : " to " + plain(most))
                                + "; correct it from the laboratory's sheet",
                        true));
    }

    static String plain(double number) {
        return number == Math.rint(number) && Math.abs(number) < 1e9
                ? Long.toString((long) number)
                : Double.toString(number);
    }

    private static Optional<Question> unit(LabValue value) {
        if (value.unit().filter(value.element().kind().units()::contains).isPresent()) {
            return Optional.empty();
        }
        String fitting =
                value.element().kind().units().stream().map(LabUnit::symbol).collect(Collectors.joining(", "));
        String text = value.made().unitText();
        if (value.unit().isEmpty()) {
            return Optional.of(
                    text.isEmpty()
                            ? new Question(
                                    "LAB_UNIT_MISSING",
                                    "unit",
                                    "the unit is empty: fill in what the laboratory printed, one of " + fitting,
                                    true)
                            : new Question(
                                    "LAB_UNIT_UNKNOWN",
                                    "unit",
                                    "“" + text + "” is no unit that is known here: write one of " + fitting,
                                    true));
        }
        return Optional.of(
                new Question("LAB_UNIT_UNFIT", "unit", "“" + text + "” does not fit: write one of " + fitting, true));
    }

    private static Optional<Question> extractant(LabValue value) {
        if (!value.element().isNutrient() || value.extractant().isPresent()) {
            return Optional.empty();
        }
        String known = Arrays.stream(Extractant.values()).map(Extractant::label).collect(Collectors.joining(", "));
        String text = value.made().extractantText();
        return Optional.of(
                text.isEmpty()
                        ? new Question(
                                "LAB_EXTRACTANT_MISSING",
                                "extractant",
                                "the extractant is empty: ask the laboratory for it, one of " + known,
                                true)
                        : new Question(
                                "LAB_EXTRACTANT_UNKNOWN",
                                "extractant",
                                "“" + text + "” is no extractant that is known here: write one of " + known,
                                true));
    }

    private static Optional<Question> method(LabValue value) {
        boolean matters = Set.of(Element.PH, Element.BUFFER_PH, Element.EC, Element.ACIDITY)
                .contains(value.element());
        if (!matters || value.method().isPresent()) {
            return Optional.empty();
        }
        String text = value.made().methodText();
        String known = Arrays.stream(LabMethod.values())
                .map(LabMethod::label)
                .filter(label -> LabMethod.of(label, value.element()).isPresent())
                .collect(Collectors.joining(", "));
        return Optional.of(
                text.isEmpty()
                        ? new Question(
                                "LAB_METHOD_MISSING",
                                "method",
                                "the method is empty: ask the laboratory for it, one of " + known,
                                true)
                        : new Question(
                                "LAB_METHOD_UNKNOWN",
                                "method",
                                "“" + text + "” is no method that is known here: write one of " + known,
                                true));
    }

    private Optional<Question> doubt(LabValue value) {
        if (!value.element().isNutrient() || value.isBy(Extractant.PASTE)) {
            return Optional.empty();
        }
        Optional<Double> ppm = new Concentrations(tables).ppm(value).value();
        return tables.rows("soil-plausible.csv").stream()
                .filter(row -> row.text("element").equals(value.element().key()))
                .map(row -> row.number("most"))
                .filter(most -> ppm.filter(found -> found > most).isPresent())
                .map(most -> new Question(
                        "LAB_VALUE_DOUBTFUL",
                        "value",
                        plain(value.value()) + " " + value.made().unitText() + " is more than " + plain(most)
                                + " ppm, which soils do not hold: check the unit and the decimal point",
                        true))
                .findFirst();
    }

    private static Optional<Question> depth(LabValue value) {
        if (!NEED_DEPTH.contains(value.element())) {
            return Optional.empty();
        }
        if (value.made().depthM().isEmpty()) {
            return Optional.of(new Question(
                    "LAB_DEPTH_MISSING",
                    "depth_cm",
                    "the depth of the sample is empty: fill it in; no dose follows without it",
                    false));
        }
        double depthM = value.made().depthM().getAsDouble();
        return depthM > 0 && depthM <= MOST_DEPTH_M
                ? Optional.empty()
                : Optional.of(new Question(
                        "LAB_DEPTH_RANGE",
                        "depth_cm",
                        plain(depthM * 100) + " cm is no depth of a turf sample: check its unit",
                        false));
    }

    /** The depth of a value from which a dose may follow. */
    static Optional<Double> soundDepthM(LabValue value) {
        return depth(value).isPresent()
                ? Optional.empty()
                : value.made().depthM().stream().boxed().findFirst();
    }

    /** The published span of exchange capacity of a texture, least to most, meq/100 g; empty if none is published. */
    Optional<double[]> cecSpan(Texture texture) {
        List<NamedRow> rows = tables.rows("cec-by-texture.csv").stream()
                .filter(row -> row.list("textures").contains(texture.label()))
                .toList();
        return rows.isEmpty()
                ? Optional.empty()
                : Optional.of(new double[] {
                    rows.stream()
                            .mapToDouble(row -> row.number("low_meq"))
                            .min()
                            .orElseThrow(),
                    rows.stream()
                            .mapToDouble(row -> row.number("high_meq"))
                            .max()
                            .orElseThrow()
                });
    }
}

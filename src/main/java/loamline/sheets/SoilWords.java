package loamline.sheets;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import loamline.soil.Advice;
import loamline.soil.Change;
import loamline.soil.Element;
import loamline.soil.Exchange;
import loamline.soil.Gypsum;
import loamline.soil.LabUnit;
import loamline.soil.LabValue;
import loamline.soil.Lime;
import loamline.soil.Rating;
import loamline.soil.Recommended;
import loamline.soil.SampleResult;
import loamline.soil.Saturation;
import loamline.soil.Sulfur;
import loamline.soil.Texture;

/** A sample's results in words that a client can read. */
record SoilWords(SampleResult sample, Figures figures) {
    private static final MathContext THREE_DIGITS = new MathContext(3, RoundingMode.HALF_UP);
    /** From here on whole numbers say enough. */
    private static final double WHOLE_FROM = 100;

    private static final double WHOLE_PERCENT_FROM = 10;

    /** One row of what to spread. */
    record Spread(String what, String amount, String dressings, String how) {}

    static String number(double value) {
        BigDecimal rounded = Math.abs(value) >= WHOLE_FROM
                ? new BigDecimal(value).setScale(0, RoundingMode.HALF_UP)
                : new BigDecimal(value, THREE_DIGITS).stripTrailingZeros();
        return rounded.toPlainString();
    }

    static String name(Element element) {
        return switch (element) {
            case P -> "Phosphorus, P";
            case K -> "Potassium, K";
            case CA -> "Calcium, Ca";
            case MG -> "Magnesium, Mg";
            case S -> "Sulfur, S";
            case NA -> "Sodium, Na";
            case FE -> "Iron, Fe";
            case MN -> "Manganese, Mn";
            case ZN -> "Zinc, Zn";
            case CU -> "Copper, Cu";
            case B -> "Boron, B";
            case AL -> "Aluminum, Al";
            case PB -> "Lead, Pb";
            case PH -> "pH";
            case BUFFER_PH -> "Buffer pH";
            case OM -> "Organic matter";
            case EC -> "Salt, EC";
            case CEC -> "Exchange capacity";
            case ACIDITY -> "Acidity";
            case CARBONATE -> "Free carbonate";
            case LBC -> "Lime buffer capacity";
            case REC_P2O5 -> "Recommended P2O5";
            case REC_K2O -> "Recommended K2O";
            case REC_LIME -> "Recommended lime";
            default ->
                Character.toUpperCase(element.key().charAt(0)) + element.key().substring(1);
        };
    }

    static String value(LabValue value) {
        boolean bare =
                value.element().kind() == Element.Kind.PH && !value.unit().equals(Optional.of(LabUnit.INDEX));
        return number(value.value()) + (bare ? "" : " " + value.made().unitText());
    }

    /** What a value was made with, such as {@code Mehlich-3}. */
    static String test(LabValue value) {
        String test = value.element().isNutrient()
                ? value.made().extractantText()
                : value.made().methodText();
        return value.element().isNutrient() && test.isEmpty() ? "not told" : test;
    }

    static String change(Change change) {
        String before =
                "was " + number(change.before()) + " in " + change.since().getYear() + ": ";
        if (!change.beyondError().orElse(true)) {
            return before + "same within error";
        }
        return before + (change.difference() > 0 ? "higher" : change.difference() < 0 ? "lower" : "same");
    }

    /** Ratings with a place in a range. */
    List<Rating> rated() {
        return sample.ratings().stream().filter(r -> r.standing().isGiven()).toList();
    }

    /** Values that could have been rated and were not. */
    List<Rating> refused() {
        return sample.ratings().stream()
                .filter(r -> !r.standing().isGiven() && !r.standing().reason().endsWith("not rated"))
                .toList();
    }

    /** The sentence of three that the page opens with. */
    String inShort() {
        List<String> sentences = new ArrayList<>();
        rated().stream()
                .filter(r -> r.value().element() == Element.PH)
                .findFirst()
                .ifPresent(r -> sentences.add("The soil is "
                        + (r.standing().value().orElseThrow().band().level() == 0
                                ? "in a good range"
                                : r.name().orElseThrow())
                        + ", pH " + number(r.value().value()) + "."));
        levels(-1, "is short of", sentences);
        levels(1, "holds more than enough", sentences);
        List<String> spread = spread().stream()
                .filter(s -> !s.dressings().isEmpty())
                .map(s -> s.amount() + " " + s.what())
                .toList();
        if (!spread.isEmpty()) {
            sentences.add("It asks for " + String.join(", ", spread) + ".");
        }
        List<String> unsaid = unsaid();
        if (!unsaid.isEmpty()) {
            sentences.add("This test does not tell how much " + String.join(" and ", unsaid) + ".");
        } else if (spread.isEmpty()) {
            sentences.add("It asks for nothing.");
        }
        return String.join(" ", sentences);
    }

    private List<String> unsaid() {
        Map<String, Advice<?>> advice = new LinkedHashMap<>();
        advice.put("lime", sample.lime());
        advice.put("phosphate", sample.needs().p2o5GM2());
        advice.put("potash", sample.needs().k2oGM2());
        return advice.entrySet().stream()
                .filter(e -> !e.getValue().isGiven())
                .map(Map.Entry::getKey)
                .toList();
    }

    private void levels(int side, String verb, List<String> sentences) {
        String names = rated().stream()
                .filter(r -> r.value().element().isNutrient())
                .filter(r ->
                        Integer.signum(r.standing().value().orElseThrow().band().level()) == side)
                .map(r -> name(r.value().element()).replaceFirst(",.*", "").toLowerCase(Locale.ROOT))
                .distinct()
                .collect(Collectors.joining(", "));
        if (!names.isEmpty()) {
            sentences.add("It " + verb + " " + names + ".");
        }
    }

    /** What to spread, with nothing where nothing is due; what is refused is in {@link #open()}. */
    List<Spread> spread() {
        List<Spread> rows = new ArrayList<>();
        sample.lime().value().ifPresent(lime -> rows.add(lime(lime)));
        sample.sulfur().value().filter(s -> s.kgM2() > 0).ifPresent(s -> rows.add(sulfur(s)));
        sample.gypsum().value().filter(g -> g.kgM2() > 0).ifPresent(g -> rows.add(gypsum(g)));
        Recommended laboratory = sample.recommended();
        nutrient("P2O5 (phosphate)", sample.needs().p2o5GM2(), laboratory.p2o5GM2())
                .ifPresent(rows::add);
        nutrient("K2O (potash)", sample.needs().k2oGM2(), laboratory.k2oGM2()).ifPresent(rows::add);
        return rows;
    }

    private Spread lime(Lime lime) {
        if (lime.productKgM2() == 0) {
            String why = lime.method().equals("none needed") ? "The pH has reached its target." : lime.method() + ".";
            return new Spread(
                    "lime", "none", "", why + beside(sample.recommended().limeGM2()));
        }
        double gM2 = 1000 * lime.productKgM2();
        String how =
                lime.method() + "." + beside(sample.recommended().limeGM2()) + " " + String.join(" ", lime.cautions());
        return new Spread("lime", figures.dose(gM2), dressings(lime.dosesKgM2(), lime.monthsBetween()), how);
    }

    private String dressings(List<Double> dosesKgM2, int monthsBetween) {
        String each = figures.dose(1000 * dosesKgM2.get(0));
        return dosesKgM2.size() == 1
                ? "1 of " + each
                : dosesKgM2.size() + " of " + each + ", " + monthsBetween + " months apart";
    }

    private Spread sulfur(Sulfur sulfur) {
        int years = sulfur.years().get(sulfur.years().size() - 1);
        String each = figures.dose(1000 * sulfur.dosesKgM2().get(0));
        return new Spread(
                "sulfur",
                figures.dose(1000 * sulfur.kgM2()),
                sulfur.dosesKgM2().size() + " of " + each + " in " + Figures.count(years, "year"),
                String.join(" ", sulfur.cautions()));
    }

    private Spread gypsum(Gypsum gypsum) {
        return new Spread(
                "gypsum (pure)", figures.dose(1000 * gypsum.kgM2()), "several", String.join(" ", gypsum.cautions()));
    }

    private Optional<Spread> nutrient(String what, Advice<Double> need, Optional<Double> laboratoryGM2) {
        if (need.account()
                .filter(a -> a.inputs().containsKey("recommended_g_m2"))
                .isPresent()) {
            return need.value()
                    .map(gM2 -> new Spread(
                            what,
                            gM2 == 0 ? "none" : figures.dose(gM2),
                            gM2 == 0 ? "" : "over the season",
                            "The laboratory’s own recommendation; ours is left open."));
        }
        String told = beside(laboratoryGM2);
        return need.value()
                .map(gM2 -> gM2 == 0
                        ? new Spread(what, "none", "", "The soil has enough." + told)
                        : new Spread(what, figures.dose(gM2), "over the season", use(need) + told));
    }

    /** The laboratory's own number, to be held against ours. */
    private String beside(Optional<Double> laboratoryGM2) {
        return laboratoryGM2
                .map(gM2 -> " The laboratory recommends " + (gM2 == 0 ? "none" : figures.dose(gM2)) + ".")
                .orElse("");
    }

    private String use(Advice<Double> need) {
        return need.account()
                .map(account -> account.inputs().get("nitrogen_g_m2"))
                .map(nitrogen -> "For a season with " + figures.dose((Double) nitrogen)
                        + " of nitrogen; less where clippings stay.")
                .orElse("The guideline’s rate for a year.");
    }

    /** Everything that was not said, with what would let it be said. */
    List<String> open() {
        List<String> open = new ArrayList<>();
        refused()
                .forEach(r -> open.add(name(r.value().element()) + " " + value(r.value()) + ": "
                        + r.standing().reason() + "."));
        refusal(open, "Lime", sample.lime());
        refusal(open, "Sulfur", sample.sulfur());
        refusal(open, "Gypsum", sample.gypsum());
        refusal(open, "P2O5", sample.needs().p2o5GM2());
        refusal(open, "K2O", sample.needs().k2oGM2());
        return open;
    }

    private static void refusal(List<String> open, String what, Advice<?> advice) {
        if (!advice.isGiven()) {
            open.add(what + ": " + advice.reason() + ".");
        }
    }

    /** What the soil is: texture, capacity, what it is held by, salt. */
    String soil() {
        List<String> parts = new ArrayList<>();
        sample.texture().map(Texture::label).ifPresent(t -> parts.add("texture " + t));
        sample.exchange().value().ifPresent(e -> parts.add(exchange(e) + ranges()));
        sample.sodium().name().ifPresent(parts::add);
        return String.join(" · ", parts);
    }

    /** What is published about the shares of the exchange. */
    private String ranges() {
        return sample.saturations().isEmpty()
                ? ""
                : " ("
                        + sample.saturations().stream()
                                .map(s -> s.share() + " " + s.place().name().toLowerCase(Locale.ROOT) + " " + span(s)
                                        + " of " + s.guideline())
                                .collect(Collectors.joining(", "))
                        + ")";
    }

    private static String span(Saturation s) {
        String unit = s.share().contains(":") ? "" : " %";
        return number(s.low())
                + (s.high().isPresent() ? "–" + number(s.high().getAsDouble()) + unit : unit + " and more");
    }

    private static String percent(double pct) {
        return Figures.percent(pct / 100, pct < WHOLE_PERCENT_FROM ? 1 : 0);
    }

    private static String exchange(Exchange e) {
        String held = e.cationsMeq().keySet().stream()
                .map(cation -> cation.key() + " " + percent(e.saturationPct(cation)))
                .collect(Collectors.joining(", "));
        return "exchange capacity " + number(e.cecMeq()) + " meq/100 g" + (e.measured() ? "" : " by summation")
                + ", held by " + held;
    }
}

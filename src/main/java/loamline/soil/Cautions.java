package loamline.soil;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import loamline.reference.NamedRow;

/** What to know before acting on a sample's results. */
record Cautions(SoilOptions options) {
    private static final String GENERAL =
            "Advice, not a substitute for local extension guidance; the laboratory’s own recommendation knows its method"
                    + " best.";

    List<String> of(SampleTest test, Sodium sodium, Needs needs) {
        List<String> cautions = new ArrayList<>();
        needs.p2o5GM2().value().filter(p -> p > 0).ifPresent(p -> cautions.add(law()));
        salt(sodium).ifPresent(cautions::add);
        if (test.one(Element.PH, v -> v.isBy(LabMethod.SALT)).isPresent()) {
            cautions.add("One pH is in a salt solution: it reads about 0.5 below pH in water.");
        }
        cautions.add(GENERAL);
        return cautions;
    }

    private String law() {
        Optional<NamedRow> law = options.state()
                .flatMap(state -> options.tables().rows("phosphorus-laws.csv").stream()
                        .filter(row -> row.text("state").equalsIgnoreCase(state))
                        .findFirst());
        return law.map(row ->
                        row.text("state") + since(row) + ": " + row.text("rule") + " Local code wins; rules change.")
                .orElse(
                        "Many states and towns limit phosphorus on turf: look up the rule of the place before you spread it.");
    }

    private static String since(NamedRow row) {
        return row.text("year").isEmpty() ? "" : " (since " + row.text("year") + ")";
    }

    /** Which grasses a salty soil is too much for. */
    private Optional<String> salt(Sodium sodium) {
        if (sodium.eceDsM().isEmpty()) {
            return Optional.empty();
        }
        double ece = sodium.eceDsM().getAsDouble();
        String grasses = options.tables().rows("salt-tolerance.csv").stream()
                .filter(row -> isTooMuch(row, ece))
                .map(row -> row.text("grass"))
                .collect(Collectors.joining(", "));
        return grasses.isEmpty()
                ? Optional.empty()
                : Optional.of("Salt of " + ece + " dS/m is more than these grasses stand (Uddin & Juraimi 2013; reviews"
                        + " differ on ryegrass): " + grasses + ".");
    }

    private static boolean isTooMuch(NamedRow row, double ece) {
        OptionalDouble most = row.numberOrNone("stands_to_ds_m");
        return most.isPresent() && ece > most.getAsDouble();
    }
}

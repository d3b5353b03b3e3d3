package loamline.season;

import java.util.EnumMap;
import java.util.Map;
import loamline.reference.NamedRow;
import loamline.season.blend.Quantity;

/** What one dose may bring, g/m²: the table's caps, and a state's where they are lower. */
record Caps(Map<Quantity, Double> mostGM2) {
    static Caps of(SeasonOptions options, Law law) {
        Map<Quantity, Double> most = new EnumMap<>(Quantity.class);
        for (NamedRow row : options.tables().rows("turf-caps.csv")) {
            most.put(Quantity.valueOf(row.text("cap")), Quantities.gM2(row.number("most_lb_1000ft2")));
        }
        law.capGM2("total_n_lb").ifPresent(cap -> most.merge(Quantity.N, cap, Math::min));
        law.capGM2("quick_n_lb").ifPresent(cap -> most.merge(Quantity.QUICK_N, cap, Math::min));
        law.capGM2("p2o5_dose_lb").ifPresent(cap -> most.put(Quantity.P2O5, cap));
        String limeCap = options.soil().lime().cap();
        options.soil().tables().rows("lime-caps.csv").stream()
                .filter(row -> row.text("cap").equalsIgnoreCase(limeCap))
                .findFirst()
                .ifPresent(row -> most.put(Quantity.LIME_WEIGHT, Quantities.gM2(row.number("most_lb_1000ft2"))));
        return new Caps(most);
    }
}

package loamline.season;

import java.util.ArrayList;
import java.util.List;

/** What holds for every plan. */
final class SeasonCautions {
    private static final List<String> ALWAYS = List.of(
            "The label is the law: never spread more than it says, and follow it where it differs from this plan.",
            "State and local rules on nitrogen and phosphorus come first, and local code wins.",
            "No fertilizer on dormant, frozen, saturated or drought-stressed turf, nor when heavy rain is due within two"
                    + " days. Sweep it off pavement.",
            "Call the utility locating service two to three working days before coring; mark heads, wires and dog fences.");

    private SeasonCautions() {}

    static List<String> of(Law law) {
        List<String> cautions = new ArrayList<>(ALWAYS);
        law.words().ifPresent(cautions::add);
        if (law.setbackM() > 0) {
            cautions.add("Ground nearer to open water than the law's setback is left out of every quantity.");
        }
        return cautions;
    }
}

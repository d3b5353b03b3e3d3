package loamline.files;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import loamline.geometry.Point;
import loamline.place.Frame;
import loamline.water.cups.CupPlan;
import org.jspecify.annotations.Nullable;

/** A cup test as {@code cup-plan.json}, and as the list that {@code loamline cups} reads, its catches still blank. */
public final class CupPlanFiles {
    private CupPlanFiles() {}

    /** The files by name, as text. */
    public static Map<String, String> of(CupPlan plan, Frame frame) {
        Map<String, String> files = new LinkedHashMap<>();
        files.put("cup-plan.json", json(plan, new Places(frame)));
        files.put("readings.csv", csv(plan));
        return files;
    }

    private static String json(CupPlan plan, Places places) {
        List<@Nullable Object> cups = new ArrayList<>();
        for (Point at : plan.cups()) {
            Map<String, @Nullable Object> cup = new LinkedHashMap<>();
            cup.put("cup", Integer.toString(cups.size() + 1));
            places.put(cup, at);
            cups.add(cup);
        }
        Map<String, @Nullable Object> tree = new LinkedHashMap<>();
        tree.put("valve", plan.valve());
        tree.put("reasons", plan.reasons());
        tree.put("spacingM", plan.spacingM());
        tree.put("minutes", plan.minutes());
        tree.put("throatCm2", plan.throatCm2());
        tree.put("modelMmH", plan.modelMmH());
        tree.put("rules", CupPlan.RULES);
        tree.put("cups", cups);
        return JsonText.of(tree);
    }

    private static String csv(CupPlan plan) {
        CsvText csv = new CsvText().row(List.of("cup", "x_m", "y_m", "ml", "throat_cm2", "minutes"));
        for (int i = 0; i < plan.cups().size(); i++) {
            Point at = plan.cups().get(i);
            csv.row(Arrays.asList(Integer.toString(i + 1), at.x(), at.y(), null, plan.throatCm2(), plan.minutes()));
        }
        return csv.toString();
    }
}

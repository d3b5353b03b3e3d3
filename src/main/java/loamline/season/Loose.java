package loamline.season;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What tasks use that is on no price list: seed by weight, compost by volume. */
final class Loose {
    private Loose() {}

    static List<Purchase> of(List<Task> tasks) {
        Map<String, Purchase> bought = new LinkedHashMap<>();
        tasks.stream()
                .filter(task -> task.kg() > 0 || task.volumeM3() > 0)
                .map(task -> new Purchase(task.product(), 0, task.kg(), task.kg(), task.volumeM3(), 0))
                .forEach(purchase -> bought.merge(purchase.name(), purchase, Loose::sum));
        return List.copyOf(bought.values());
    }

    private static Purchase sum(Purchase a, Purchase b) {
        return new Purchase(
                a.name(),
                0,
                a.kg() + b.kg(),
                a.usedKg() + b.usedKg(),
                a.volumeM3() + b.volumeM3(),
                a.cost() + b.cost());
    }
}

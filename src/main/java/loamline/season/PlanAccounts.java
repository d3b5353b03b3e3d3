package loamline.season;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import loamline.account.Account;
import loamline.account.Source;
import loamline.season.blend.BagPlan;
import loamline.season.blend.Blend;

/** How bags and cost came about. */
final class PlanAccounts {
    private static final Source BAGS =
            new Source("unl-calculations", "University of Nebraska-Lincoln, Lawn Fertilizer Calculations");
    private static final Source SEARCH = new Source(
            "benders-1962", "Benders 1962, Numerische Mathematik 4:238-252; Land & Doig 1960, Econometrica 28:497-520");

    private PlanAccounts() {}

    static Map<String, Account> of(Blend blend, BagPlan plan, List<Purchase> bought) {
        Map<String, Account> accounts = new LinkedHashMap<>();
        Account cost = Account.of(
                "cost = Σ bags · price",
                "The least that whole bags can cost with every need met within 5 % and every cap kept.",
                SEARCH);
        for (int i = 0; i < bought.size(); i++) {
            Purchase purchase = bought.get(i);
            accounts.put(
                    "/products/" + i + "/bags",
                    Account.of(
                                    "bags · weight = Σ rate · area + left",
                                    "Whole bags; what is left keeps for next year.",
                                    BAGS)
                            .with("bags", purchase.bags())
                            .with("weight_kg", purchase.kg() / purchase.bags())
                            .with("spread_kg", purchase.usedKg())
                            .with("left_kg", purchase.leftoverKg()));
            cost = cost.with(purchase.name(), purchase.cost());
        }
        accounts.put("/cost", cost.with("cost", plan.cost(blend)));
        return accounts;
    }
}

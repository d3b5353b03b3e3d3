package loamline.findings;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import loamline.account.Account;
import loamline.account.Source;

/** How findings came about. */
final class FindingAccounts {
    private static final Source FISHER =
            new Source("fisher-1935", "Fisher 1935, The Design of Experiments, section 21 (permutation test)");
    private static final Source HOLM = new Source("holm-1979", "Holm 1979, Scandinavian Journal of Statistics 6:65-70");
    private static final Source CLIFF = new Source("cliff-1993", "Cliff 1993, Psychological Bulletin 114:494-509");
    private static final Source CRESSIE =
            new Source("cressie-1993", "Cressie 1993, Statistics for Spatial Data, 3.2 (ordinary kriging)");
    private static final Source SHEPARD =
            new Source("shepard-1968", "Shepard 1968, Proceedings of the 23rd ACM National Conference, 517-524");
    private static final Source MAPPED =
            new Source("heads-as-mapped", "Radial profiles of the heads as drawn, see the account of the water");
    private static final Source JUDGED = new Source(
            "judged-weights",
            "Weights of signs are judgement, no source; tested on simulated yards with a planted cause");

    private final Map<String, Account> accounts = new LinkedHashMap<>();

    private FindingAccounts() {}

    static Map<String, Account> of(Findings findings) {
        FindingAccounts all = new FindingAccounts();
        for (int i = 0; i < findings.areas().size(); i++) {
            all.add("/areas/" + i, findings.areas().get(i));
        }
        for (int i = 0; i < findings.cores().size(); i++) {
            all.water(
                    "/cores/" + i + "/" + Quantity.WATER.key(), findings.cores().get(i), findings.known());
        }
        for (int i = 0; i < findings.surfaces().size(); i++) {
            all.add("/surfaces/" + i, findings.surfaces().get(i));
        }
        return all.accounts;
    }

    /** Whether it is measured or modelled, and by what. */
    private void water(String pointer, LoggedCore core, Surroundings known) {
        core.value(Quantity.WATER).ifPresent(share -> {
            String valves = String.join(", ", known.tested());
            Account account = core.waterMeasured()
                    ? Account.of(
                            "share = (rate between the cups + rates of the other valves as mapped) / mean over the turf",
                            "Measured: cups of valve " + valves
                                    + " were read near by, which beats what heads throw as mapped.",
                            SHEPARD)
                    : Account.of(
                            "share = rate of all valves as mapped / mean over the turf",
                            "Modelled, without wind" + (valves.isEmpty() ? "." : ": no cup was read near by."),
                            MAPPED);
            accounts.put(pointer, account.with("share", share));
        });
    }

    private void add(String pointer, AreaFinding area) {
        for (int i = 0; i < area.comparisons().size(); i++) {
            Comparison c = area.comparisons().get(i);
            Account account = Account.of(
                    "p = share of all deals of the cores with a difference of means at least as large; "
                            + "Holm: p times the number of p-values not smaller, in order",
                    "Cliff’s delta: pairs in which the area is larger, less those in which it is smaller, over all pairs",
                    FISHER,
                    HOLM,
                    CLIFF);
            accounts.put(
                    pointer + "/comparisons/" + i,
                    account.with("areaMean", c.areaMean())
                            .with("restMean", c.restMean())
                            .with("areaN", c.areaN())
                            .with("restN", c.restN())
                            .with("p", c.p()));
        }
        for (int i = 0; i < area.causes().size(); i++) {
            accounts.put(pointer + "/causes/" + i, account(area.causes().get(i)));
        }
    }

    private static Account account(RankedCause cause) {
        List<Source> sources = Stream.concat(
                        Stream.of(JUDGED, cause.cause().source()),
                        cause.evidence().stream().map(e -> e.sign().source()))
                .distinct()
                .toList();
        Account account = new Account(
                "points = prior + Σ weight · strength · n / (n + 1)",
                Map.of(),
                sources,
                "Named only where its telling sign is seen and it holds six tenths of the weight of all causes together;"
                        + " strength is the share of cores beyond the level, from −1 to 1, or Cliff’s delta.");
        account = account.with("prior", cause.cause().prior());
        for (Evidence evidence : cause.evidence()) {
            account = account.with(
                    evidence.sign().subject() + " "
                            + evidence.sign().test().name().toLowerCase(java.util.Locale.ROOT),
                    evidence.points());
        }
        return account;
    }

    private void add(String pointer, Surface surface) {
        Account account = new Account(
                surface.method() == Surface.Method.KRIGING
                        ? "[γ(hᵢⱼ) 1; 1ᵀ 0] [w; μ] = [γ(hᵢ₀); 1]; value = wᵀz"
                        : "value = Σ z h⁻² / Σ h⁻²",
                Map.of(),
                surface.method() == Surface.Method.KRIGING ? List.of(CRESSIE) : List.of(SHEPARD),
                surface.method().words() + "; every core predicted from all others");
        account = account.with("n", surface.n())
                .with("rmse", surface.rmse())
                .with("rmseOfMean", surface.meanRmse())
                .with("reachM", surface.reachM());
        if (surface.variogram().isPresent()) {
            account = account.with("nugget", surface.variogram().get().nugget())
                    .with("sill", surface.variogram().get().sill())
                    .with("rangeM", surface.variogram().get().rangeM());
        }
        accounts.put(pointer, account);
    }
}

package loamline.water.cups;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loamline.account.Account;
import loamline.account.Source;
import loamline.water.Uniformity;
import loamline.water.need.MonthRunTime;

/** How the numbers of a cup test came about. */
final class CupAccounts {
    private static final Source DEPTH = new Source("cup-depth", "Volume over area is depth, depth over time is rate");

    private static final Source LOW_QUARTER = new Source(
            "merriam-keller-1978",
            "From memory of Merriam & Keller 1978, Farm Irrigation System Evaluation: A Guide for Management, Utah State"
                    + " University");

    private static final Source LOW_HALF = new Source(
            "ia-2005",
            "From memory of Irrigation Association, Landscape Irrigation Scheduling and Water Management, 2005");

    private static final Source CHRISTIANSEN = new Source(
            "christiansen-1942", "Christiansen 1942, California Agricultural Experiment Station Bulletin 670");

    private static final Source STATISTICAL =
            new Source("nmsu-456", "New Mexico State University, Soils 456 notes, chapter 5: statistical uniformity");

    private static final Source COEFFICIENT =
            new Source("cati-880802", "CATI Irrigation Notes 880802, California State University Fresno, 1988");

    private static final Source NNLS =
            new Source("lawson-hanson-1974", "Lawson & Hanson 1974, Solving Least Squares Problems, chapter 23");

    private static final Source EVIDENCE = new Source(
            "kass-raftery-1995", "Kass & Raftery 1995, Journal of the American Statistical Association 90:773-795");

    private CupAccounts() {}

    static Map<String, Account> of(
            List<Cup> cups, Optional<Uniformity> uniformity, HeadFindings findings, List<MonthRunTime> runTimes) {
        Map<String, Account> accounts = new LinkedHashMap<>();
        if (!cups.isEmpty()) {
            accounts.put(
                    "/meanMmH",
                    Account.of("rate = 600 · ml / (cm² · min), their mean", "The net rate on the turf.", DEPTH)
                            .with("n", cups.size()));
        }
        uniformity.ifPresent(measured -> uniformity(measured, accounts));
        for (int i = 0; i < findings.heads().size(); i++) {
            accounts.put("/suspects/" + i, suspect(findings, findings.heads().get(i)));
        }
        for (int i = 0; i < runTimes.size(); i++) {
            accounts.put("/runTimes/" + i, runTimes.get(i).account());
        }
        return accounts;
    }

    private static void uniformity(Uniformity measured, Map<String, Account> accounts) {
        double mean = measured.mean();
        put(accounts, "/duLq", "DULQ = mean of the lowest quarter / mean", Uniformity.RULE + ".", LOW_QUARTER, mean);
        put(
                accounts,
                "/duLh",
                "DULH = mean of the lowest half / mean",
                "Run times rest on it: the drier half gets the need.",
                LOW_HALF,
                mean);
        put(
                accounts,
                "/cu",
                "CU = 1 − Σ |v − mean| / (n · mean)",
                "Below 0 where readings lie very far apart.",
                CHRISTIANSEN,
                mean);
        put(accounts, "/cv", "CV = s / mean, s over n − 1", "", STATISTICAL, mean);
        scheduling(accounts, mean);
    }

    private static void scheduling(Map<String, Account> accounts, double mean) {
        put(
                accounts,
                "/sc",
                "SC = mean / smallest, each cup a window of its own",
                "How many times as long the driest cup would have to run to get the mean; none if it stayed dry.",
                COEFFICIENT,
                mean);
    }

    private static void put(
            Map<String, Account> accounts, String key, String formula, String note, Source source, double meanMmH) {
        accounts.put(key, Account.of(formula, note, source).with("mean_mm_h", meanMmH));
    }

    private static Account suspect(HeadFindings findings, HeadFinding head) {
        return Account.of(
                        "factor = b / s; min Σ ((y − Σ b · rate) / σ)² + Σ ((b − s) / (τ s))², b ≥ 0;"
                                + " sure = P(fault) · L(fault) / Σ P · L",
                        "Each fault (0 to 200 % of its share, turned up to 60°, a shorter arc) is weighed by how likely it"
                                + " makes the readings; the scale of the valve is free.",
                        NNLS,
                        EVIDENCE)
                .with("head", head.head())
                .with("scale", findings.scale())
                .with("noise_share", findings.noiseShare())
                .with("tau", Noise.HEADS)
                .with("p_fault", FaultFinder.FAULTY)
                .with("cups", String.join(" ", head.cups()));
    }
}

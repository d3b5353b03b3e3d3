package loamline.soil;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleSupplier;
import loamline.account.Account;
import loamline.reference.NamedRow;

/** Reads a lime rate by the method that the laboratory's buffer allows. */
record LimeReading(SampleTest test, double targetPh) {
    /** The rate at the method's own depth and unit; the pH is below the target. */
    Advice<LimeRate> rate(double ph) {
        Optional<LabValue> acidity = test.one(Element.ACIDITY, v -> v.isBy(LabMethod.MEHLICH));
        if (acidity.isPresent()) {
            return withDepth(acidity.get(), depthM -> pennState(acidity.get().value(), ph, depthM));
        }
        Optional<LabValue> buffer = test.one(Element.BUFFER_PH);
        if (buffer.isPresent()) {
            Advice<Double> bufferPh = new Concentrations(test.tables()).ph(buffer.get());
            return bufferPh.isGiven()
                    ? withDepth(
                            buffer.get(),
                            d -> byBuffer(
                                    buffer.get().method().orElseThrow(),
                                    bufferPh.value().orElseThrow(),
                                    ph,
                                    d))
                    : Advice.refused(bufferPh.reason());
        }
        return test.one(Element.LBC)
                .map(lbc -> withDepth(lbc, depthM -> georgia(lbc.value(), ph, depthM)))
                .orElseGet(() -> Advice.refused(
                        "pH alone does not tell how much lime: ask the laboratory for a buffer pH with its method,"
                                + " or for exchangeable acidity by the Mehlich buffer"));
    }

    private interface Method {
        Advice<LimeRate> at(double depthM);
    }

    private static Advice<LimeRate> withDepth(LabValue value, Method method) {
        return Questions.soundDepthM(value)
                .map(method::at)
                .orElseGet(() -> Advice.refused("the depth of the sample is not known: fill in depth_cm"));
    }

    private Advice<LimeRate> byBuffer(LabMethod method, double bufferPh, double ph, double depthM) {
        return switch (method) {
            case MEHLICH -> northCarolina(bufferPh, ph, depthM);
            case ADAMS_EVANS, MOORE_SIKORA -> adamsEvans(bufferPh, ph, depthM);
            case SMP -> smp("smp", bufferPh, depthM);
            case SIKORA -> smp("sikora", bufferPh, depthM);
            default -> woodruff(bufferPh, depthM);
        };
    }

    private Advice<LimeRate> pennState(double acidity, double ph, double depthM) {
        LimeTable table = LimeTable.of(test.tables(), "penn-state");
        if (acidity == 0) {
            return given("penn-state", 0, depthM, inputs("no acidity, no lime", "acidity_meq", 0));
        }
        if (acidity > table.most()) {
            Account account =
                    inputs("beyond the turf table: acidity · 1000 to 7.0, · 840 to 6.5", "acidity_meq", acidity);
            return computed(
                    "penn-state-formula", () -> LimeFormulas.pennStateLbAcre(acidity, ph, targetPh), depthM, account);
        }
        OptionalDouble rate = table.rate(Math.max(acidity, table.least()), targetPh);
        Account account = inputs(
                "rate = table(acidity, target)",
                "acidity_meq",
                acidity,
                "A straight line between rows; the first row holds for less acid soil too. Made for turf as it stands,"
                        + " so it is not brought to another depth.");
        return rate.isPresent()
                ? given("penn-state", rate.getAsDouble(), depthM, account)
                : noColumn("the Penn State table", "7.0, 6.5 and 6.0");
    }

    private Advice<LimeRate> smp(String method, double bufferPh, double depthM) {
        LimeTable table = LimeTable.of(test.tables(), "smp");
        boolean organic = targetPh == LimeTable.ORGANIC_TARGET_PH && test.isOrganic();
        String column = organic ? LimeTable.ORGANIC_TO_5_2 : LimeTable.column(targetPh);
        if (!table.has(column)) {
            return noColumn("the SMP table", "7.0, 6.5 and 6.0, and 5.2 for soil of more than 19 % organic matter");
        }
        if (bufferPh < table.least()) {
            return Advice.refused("the buffer pH lies below the SMP table, which ends at " + table.least()
                    + ": ask the laboratory for its own recommendation");
        }
        double rate = table.rate(bufferPh, column).orElse(0);
        Account account = inputs(
                "rate = table(buffer pH, target)",
                "buffer_pH",
                bufferPh,
                "A straight line between rows; none above the table’s first row, 6.8. Agricultural limestone of 90 % CCE,"
                        + " copied from memory: hold it against the publication.");
        OptionalDouble pure = table.rate(bufferPh, LimeTable.PURE_TO_7);
        return given(
                method,
                rate,
                depthM,
                targetPh == 7.0 && pure.isPresent()
                        ? account.with("rate_of_pure_fine_CaCO3_ton_acre", pure.getAsDouble())
                        : account);
    }

    private Advice<LimeRate> northCarolina(double bufferPh, double ph, double depthM) {
        double acidity = LimeFormulas.mehlichAcidity(bufferPh);
        return computed(
                "north-carolina",
                () -> LimeFormulas.northCarolinaTonAcre(ph, acidity, targetPh, 0),
                depthM,
                inputs(
                                "rate = 4 · (6.6 − buffer pH) · (target − pH) / (6.6 − pH)",
                                "buffer_pH",
                                bufferPh,
                                "Lime of the months before is not subtracted: the test knows nothing of it.")
                        .with("pH", ph));
    }

    private Advice<LimeRate> adamsEvans(double bufferPh, double ph, double depthM) {
        return computed(
                "adams-evans",
                () -> LimeFormulas.adamsEvansLbAcre(ph, bufferPh, targetPh),
                depthM,
                inputs(
                                "rate = 8000 · (8 − buffer pH) / H(pH) · (H(pH) − H(target)) · 1.5",
                                "buffer_pH",
                                bufferPh,
                                "H from pH = 7.79 − 5.55 H + 2.27 H², copied from memory.")
                        .with("pH", ph));
    }

    private Advice<LimeRate> woodruff(double bufferPh, double depthM) {
        if (targetPh != 7.0) {
            return Advice.refused(
                    "by the Woodruff buffer only the lime to pH 7.0 is known; the share for another target"
                            + " is not published here: take the laboratory’s own recommendation");
        }
        double acidity = LimeFormulas.woodruffAcidity(bufferPh);
        return given(
                "woodruff",
                LimeFormulas.fullLbAcre(acidity),
                depthM,
                inputs("rate = 1000 · 10 · (7.0 − buffer pH)", "buffer_pH", bufferPh)
                        .with("ENM_lb_acre", LimeFormulas.enmLbAcre(acidity)));
    }

    private Advice<LimeRate> georgia(double capacity, double ph, double depthM) {
        return given(
                "georgia-lbc",
                LimeFormulas.georgiaLbAcre(capacity, ph, targetPh),
                depthM,
                inputs(
                                "rate = LBC · (target − pH) · 2",
                                "LBC_ppm_per_pH",
                                capacity,
                                "LBC must be the one at equilibrium.")
                        .with("pH", ph));
    }

    /** The laboratory's own rate, which is for the soil as it was sampled. */
    LimeRate laboratory(LabValue value, String whyNotOurs) {
        return new LimeRate(
                method("laboratory"),
                Recommended.limeLbM(value),
                value.made().depthM().orElse(0),
                Recommended.account(test, value, whyNotOurs));
    }

    private static Advice<LimeRate> noColumn(String table, String targets) {
        return Advice.refused(table + " has targets " + targets + ": choose one of them");
    }

    private Advice<LimeRate> computed(String method, DoubleSupplier rate, double depthM, Account account) {
        try {
            return given(method, rate.getAsDouble(), depthM, account);
        } catch (IllegalArgumentException e) {
            return Advice.refused(e.getMessage() + ": ask the laboratory for its own recommendation");
        }
    }

    private Account inputs(String formula, String symbol, double value) {
        return inputs(formula, symbol, value, "");
    }

    private Account inputs(String formula, String symbol, double value, String note) {
        return Account.of(formula, note).with(symbol, value).with("target_pH", targetPh);
    }

    private NamedRow method(String name) {
        return test.tables().rows("lime-methods.csv").stream()
                .filter(row -> row.text("method").equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException(name + " is in no table"));
    }

    private Advice<LimeRate> given(String method, double rate, double depthM, Account account) {
        NamedRow row = method(method);
        Account sourced = new Account(
                account.formula(),
                account.inputs(),
                List.of(test.tables().origin(row).source()),
                account.note());
        return Advice.given(new LimeRate(row, rate, depthM, sourced), sourced);
    }
}

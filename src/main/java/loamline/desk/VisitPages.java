package loamline.desk;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import loamline.desk.log.LogModel;
import loamline.desk.print.Saving;
import loamline.desk.print.StepPages;
import loamline.desk.season.SeasonModel;
import loamline.desk.season.SeasonStep;
import loamline.desk.session.Session;
import loamline.desk.soil.SoilModel;
import loamline.desk.sun.SunModel;
import loamline.desk.water.WaterModel;
import loamline.files.SeasonFiles;
import loamline.findings.Findings;
import loamline.sampling.CorePlan;
import loamline.season.Season;
import loamline.sheets.ClientPlan;
import loamline.sheets.CupPlanSheet;
import loamline.sheets.FindingsSheet;
import loamline.sheets.SheetOptions;
import loamline.sheets.SoilSheet;
import loamline.sheets.SunMap;
import loamline.sheets.WaterMap;
import loamline.soil.SoilReport;
import loamline.water.cups.CupPlan;
import loamline.yard.Yard;
import loamline.yard.Zones;

/** The pages that the steps of a visit make of what they found, saved from the step itself or from Print. */
final class VisitPages {
    private final Session session;
    private final Saving saving;

    VisitPages(Session session, Saving saving) {
        this.session = session;
        this.saving = saving;
    }

    /** What Print offers of the other steps, in their order. */
    List<StepPages> ofSteps(LogModel log, SunModel sun, WaterModel water, SoilModel soil, SeasonModel season) {
        return List.of(
                new StepPages(
                        "Findings",
                        "findings.pdf",
                        "Nothing is logged yet of these cores: see Log.",
                        () -> log.seen().flatMap(seen -> seen.findings().map(found -> findings(seen.plan(), found)))),
                new StepPages(
                        "Sun map", "sun-map.pdf", "Hours of sun are not worked out yet: see Sun.", () -> sun(sun)),
                new StepPages(
                        "Water map", "water-map.pdf", "No head waters the turf yet: see Water.", () -> water(water)),
                new StepPages(
                        "Soil pages",
                        "soil.pdf",
                        "There is no laboratory report yet: see Soil.",
                        () -> soil.report().map(VisitPages::soil)),
                new StepPages(
                        "Client plan",
                        SeasonStep.Page.CLIENT_PLAN.file(),
                        "The season is not planned yet: see Season.",
                        () -> season.season().map(this::clientPlan)));
    }

    private Yard yard() {
        return session.history().get().now();
    }

    private Function<SheetOptions, byte[]> findings(CorePlan plan, Findings findings) {
        Yard yard = yard();
        return options -> new FindingsSheet(yard, Zones.of(yard), plan, findings, options).pdf();
    }

    private Optional<Function<SheetOptions, byte[]>> sun(SunModel sun) {
        Yard yard = yard();
        Optional<SunMap.Moment> moment = sun.moment();
        return sun.study().map(study -> options -> new SunMap(yard, Zones.of(yard), study, moment, options).pdf());
    }

    private Optional<Function<SheetOptions, byte[]>> water(WaterModel water) {
        Yard yard = yard();
        return water.water()
                .filter(found -> !found.valves().isEmpty() && found.rateMmH().isPresent())
                .map(found -> options -> new WaterMap(yard, Zones.of(yard), found, options).pdf());
    }

    private static Function<SheetOptions, byte[]> soil(SoilReport report) {
        return options -> new SoilSheet(report, options).pdf();
    }

    private Function<SheetOptions, byte[]> clientPlan(Season planned) {
        Yard yard = yard();
        return options -> new ClientPlan(yard, Zones.of(yard), planned, options).pdf();
    }

    void saveCupSheet(CupPlan plan) {
        Yard yard = yard();
        saving.pages(
                "Cup sheet",
                "cup-sheet-valve-" + plan.valve() + ".pdf",
                options -> new CupPlanSheet(yard, Zones.of(yard), plan, options).pdf());
    }

    void saveSoil(SoilReport report) {
        saving.pages("Soil pages", "soil.pdf", soil(report));
    }

    void saveFindings(CorePlan plan, Findings findings) {
        saving.pages("Findings", "findings.pdf", findings(plan, findings));
    }

    void saveSeason(SeasonStep.Page page, Season planned) {
        Yard yard = session.history().get().now();
        saving.pages(
                page.title(),
                page.file(),
                page == SeasonStep.Page.CLIENT_PLAN
                        ? clientPlan(planned)
                        : options -> SeasonFiles.of(yard.name(), planned, options.program())
                                .getOrDefault(page.file(), "")
                                .getBytes(StandardCharsets.UTF_8));
    }
}

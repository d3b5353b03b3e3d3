package loamline.desk;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.IntConsumer;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.value.ObservableValue;
import loamline.desk.cores.CoreTool;
import loamline.desk.cores.CoresStep;
import loamline.desk.log.LogModel;
import loamline.desk.log.LogStep;
import loamline.desk.map.Found;
import loamline.desk.map.MapView;
import loamline.desk.print.PagesView;
import loamline.desk.print.PrintModel;
import loamline.desk.print.PrintStep;
import loamline.desk.print.Saving;
import loamline.desk.season.SeasonModel;
import loamline.desk.season.SeasonStep;
import loamline.desk.session.Results;
import loamline.desk.session.Selection;
import loamline.desk.session.Session;
import loamline.desk.sheet.Lines;
import loamline.desk.sheet.Step;
import loamline.desk.sheet.Step.Start;
import loamline.desk.soil.SoilModel;
import loamline.desk.soil.SoilStep;
import loamline.desk.store.Asking;
import loamline.desk.store.Desk;
import loamline.desk.sun.SunModel;
import loamline.desk.sun.SunStep;
import loamline.desk.tables.TabbedTables;
import loamline.desk.tables.TablesModel;
import loamline.desk.tables.TablesView;
import loamline.desk.tool.LineTool;
import loamline.desk.tool.PointerTool;
import loamline.desk.tool.SnapToOthers;
import loamline.desk.tool.Tool;
import loamline.desk.tool.ToolHost;
import loamline.desk.trace.DrawingTools;
import loamline.desk.trace.ImageDrops;
import loamline.desk.trace.ImageTracer;
import loamline.desk.trace.TraceModel;
import loamline.desk.trace.TraceStep;
import loamline.desk.water.WaterModel;
import loamline.desk.water.WaterStep;
import loamline.desk.zones.ZoneCuttingView;
import loamline.desk.zones.ZonesStep;
import loamline.findings.Surroundings;
import loamline.sheets.Paper;
import loamline.yard.Head;
import loamline.yard.Turf;

/** The steps of a visit: the models behind them, their tools, and what they show on the map. */
final class Visit {
    /** The step that is open at first. */
    static final int CORES = 2;

    private static final int TRACE = 0;
    private static final String LOG = "Log";
    private static final String SUN = "Sun";
    private static final String WATER = "Water";

    private final Session session;
    private final Desk desk;
    private final ToolHost host;
    private final MapView map;
    private final Asking asking;
    private final IntConsumer openStep;
    private final TraceModel traced;
    private final PrintModel printed;
    private final Saving saving;
    private final VisitPages pages;
    private final LogModel log;
    private final SunModel sun;
    private final WaterModel water;
    private final SoilModel soil;
    private final SeasonModel season;

    /** @param openStep opens the step at a place */
    Visit(Session session, Desk desk, ToolHost host, MapView map, Asking asking, String program, IntConsumer openStep) {
        this.session = session;
        this.desk = desk;
        this.host = host;
        this.map = map;
        this.asking = asking;
        this.openStep = openStep;
        traced = new TraceModel(session, host, new ImageTracer());
        printed = new PrintModel(session, usualPaper(), program);
        saving = new Saving(printed, this::askWhere);
        pages = new VisitPages(session, saving);
        ImageDrops.takeOn(map, traced);
        map.setOnFindImage(() -> askForImage().ifPresent(traced::open));
        LocalDate today = LocalDate.now(ZoneId.systemDefault());
        sun = new SunModel(session, today.getYear());
        water = new WaterModel(session);
        soil = new SoilModel(session);
        season = new SeasonModel(session, today);
        sun.known().addListener((o, before, now) -> sun.growingHours().ifPresent(season::shine));
        log = new LogModel(
                session,
                () -> new Surroundings(water.water(), water.tests(), sun.study(), soil.report()),
                List.of(sun.known(), water.known(), soil.known()),
                this::folder);
    }

    private static Paper usualPaper() {
        return Locale.getDefault().getCountry().equals("US") ? Paper.LETTER : Paper.A4;
    }

    /** All steps, in the order of the sheet; another one is one entry more. */
    List<Step> steps() {
        return List.of(
                Step.of("Trace", Lines::trace, () -> new TraceStep(traced, this::askForImage, new DrawingTools(host)))
                        .inHand(Visit::pointer),
                Step.of(
                                "Zones",
                                Lines::zones,
                                () -> new ZonesStep(
                                        session,
                                        this::cutZone,
                                        new ZoneCuttingView(sun.zones().cutting(), sun.zones()::cut)))
                        .startingWith(results -> lacking(
                                results.zones().isEmpty(),
                                "Zones are parts of the turf that are treated alike.",
                                "Trace the turf first",
                                () -> openStep.accept(TRACE))),
                Step.of("Cores", Lines::cores, () -> new CoresStep(session, map::runWalk))
                        .startingWith(results -> lacking(
                                results.zones().isEmpty(),
                                "Cores are spread over the turf, each for the same ground.",
                                "Trace the turf first",
                                () -> openStep.accept(TRACE)))
                        .inHand(() -> CoreTool.IDLE),
                Step.of(
                                LOG,
                                (results, units) -> log.line(results, units),
                                () -> new LogStep(session, log, pages::saveFindings, this::askForPhoto))
                        .startingWith(results -> lacking(
                                !hasWalk(results),
                                "A log says what each planned core showed.",
                                "Plan the cores first",
                                () -> openStep.accept(CORES)))
                        .inHand(() -> CoreTool.IDLE)
                        .under(() -> tables("Log", log.logs())),
                Step.of(SUN, (results, units) -> sun.line(results, units), () -> new SunStep(session, sun))
                        .startingWith(results -> lacking(
                                results.zones().isEmpty(),
                                "Hours of sun are counted on the turf.",
                                "Trace the turf first",
                                () -> openStep.accept(TRACE)))
                        .inHand(Visit::pointer),
                Step.of(
                                WATER,
                                (results, units) -> water.line(results, units),
                                () -> new WaterStep(session, water, map::centreOn, pages::saveCupSheet))
                        .startingWith(results -> lacking(
                                results.yard().all(Head.class).findAny().isEmpty(),
                                "Where water misses follows from the sprinkler heads.",
                                "Draw the heads first",
                                () -> openStep.accept(TRACE)))
                        .inHand(Visit::pointer)
                        .under(() ->
                                new TablesView("Cup readings", water.readings(), this::askForTable, water.valves())),
                Step.of(
                                "Soil",
                                (results, units) -> soil.line(results, units),
                                () -> new SoilStep(session, soil, pages::saveSoil))
                        .inHand(Visit::pointer)
                        .under(() -> tables("Laboratory reports", soil.reports())),
                Step.of(
                                "Season",
                                (results, units) -> season.line(results, units),
                                () -> new SeasonStep(session, season, pages::saveSeason))
                        .startingWith(results -> lacking(
                                results.zones().isEmpty(),
                                "What to spread follows from the turf’s area.",
                                "Trace the turf first",
                                () -> openStep.accept(TRACE)))
                        .inHand(Visit::pointer)
                        .under(() -> new TabbedTables(List.of(
                                tables("Price list", season.products()),
                                tables("Service", season.service()),
                                tables("Targets", season.targets())))),
                Step.of(
                                "Print",
                                Lines::print,
                                () -> new PrintStep(printed, saving, pages.ofSteps(log, sun, water, soil, season)))
                        .startingWith(results -> lacking(
                                !hasWalk(results),
                                "Pages for the walk are made from planned cores.",
                                "Plan the cores first",
                                () -> openStep.accept(CORES)))
                        .inTheMiddle(() -> new PagesView(printed)));
    }

    private static Optional<Start> lacking(boolean lacks, String sentence, String button, Runnable action) {
        return lacks ? Optional.of(new Start(sentence, button, action)) : Optional.empty();
    }

    /** A plan that is being made anew is as good as there. */
    private static boolean hasWalk(Results results) {
        return !results.zones().isEmpty()
                && results.plan().map(plan -> !plan.walks().isEmpty()).orElse(true);
    }

    static Tool pointer() {
        return PointerTool.with(new SnapToOthers());
    }

    /** What a step shows on the ground, where others show cores. */
    Optional<ObservableValue<Found>> found(Step step) {
        return switch (step.title()) {
            case WATER -> Optional.of(water.found());
            case SUN -> Optional.of(sun.found());
            case LOG -> Optional.of(log.onMap());
            default -> Optional.empty();
        };
    }

    /** Tells whenever a step has come to something else though the results are the same. */
    void onNews(Runnable told) {
        List.of(sun.known(), water.known(), soil.known(), season.known(), log.news())
                .forEach(known -> known.addListener((o, before, now) -> told.run()));
    }

    /** Asks where, and saves the walk plan. */
    void saveWalkPlan() {
        saving.walkPlan();
    }

    /** Takes up the tool that cuts the outlines of the selected zone. */
    private void cutZone() {
        String zone = session.selection().get().zone();
        List<String> keys = session.shown()
                .get()
                .all(Turf.class)
                .filter(turf -> turf.zone().equals(zone))
                .map(Turf::key)
                .toList();
        if (!keys.isEmpty()) {
            session.selection().set(Selection.ofFeatures(keys));
        }
        host.take(LineTool.cutting().with(new SnapToOthers()));
        map.requestFocus();
    }

    /** Where the yard's file is. */
    private Optional<Path> folder() {
        return desk.store().path().map(path -> path.toAbsolutePath().getParent());
    }

    private Optional<Path> askForPhoto() {
        return asking.fileToOpen(
                "Attach a photo", new Asking.Sort("Photos", List.of("*.jpg", "*.jpeg", "*.png")), folder());
    }

    private Optional<Path> askForImage() {
        Asking.Sort images = new Asking.Sort("Aerial images", List.of("*.png", "*.jpg", "*.jpeg", "*.tif", "*.tiff"));
        return asking.fileToOpen("Open an aerial image", images, folder());
    }

    private TablesView tables(String title, TablesModel model) {
        return new TablesView(title, model, this::askForTable, new SimpleObjectProperty<>(List.of()));
    }

    private Optional<Path> askForTable() {
        Asking.Sort tables = new Asking.Sort("Tables", List.of("*.csv", "*.tsv", "*.txt"));
        return asking.fileToOpen("Bring in a table", tables, folder());
    }

    private Optional<Path> askWhere(String title, String fileName) {
        String ending = fileName.substring(fileName.lastIndexOf('.'));
        Asking.Sort sort = new Asking.Sort(ending.substring(1).toUpperCase(Locale.ROOT), List.of("*" + ending));
        return asking.fileToSave(title, List.of(sort), Path.of(fileName));
    }
}

package loamline.sheets;

import java.time.LocalDate;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import loamline.account.Account;
import loamline.reference.TurfTables.Grass;
import loamline.season.Mowing;
import loamline.season.Nutrient;
import loamline.season.Purchase;
import loamline.season.Season;
import loamline.season.Task;
import loamline.season.Visit;
import loamline.season.ZoneSeason;
import loamline.soil.Rating;
import loamline.soil.SampleResult;
import loamline.units.Factors;
import loamline.units.UnitSystem;

/** A season in words that a client can read. */
record SeasonWords(Season season, Figures figures) {
    private static final double NOTHING_GM2 = 0.005;
    private static final double G_PER_KG = 1000;
    private static final List<Nutrient> FED = List.of(Nutrient.N, Nutrient.P2O5, Nutrient.K2O);

    /** A tile's words. */
    record TileWords(String label, String value, String under) {}

    List<TileWords> tiles() {
        long days = season.tasks().stream().map(Task::date).distinct().count();
        int bags = season.purchases().stream().mapToInt(Purchase::bags).sum();
        double areaM2 =
                season.zones().stream().mapToDouble(z -> z.ground().netM2()).sum();
        return List.of(
                new TileWords(
                        "Lawn",
                        figures.area(areaM2),
                        Figures.count(season.zones().size(), "part")),
                new TileWords(
                        "Work",
                        Figures.count((int) days, "day"),
                        Figures.count(season.tasks().size(), "task")),
                new TileWords(
                        "To buy",
                        season.isOptimal() ? Figures.count(bags, "bag") : "–",
                        Figures.count(season.purchases().size(), "product")),
                new TileWords(
                        "Bags cost",
                        season.isOptimal() ? money(season.cost()) : "–",
                        season.second().map(s -> "next best " + money(s.cost())).orElse("")));
    }

    private static String money(double amount) {
        return String.format(Locale.ROOT, "%,.2f", amount);
    }

    /** Two or three sentences. */
    String inShort() {
        if (!season.isOptimal()) {
            return "There is no plan of products yet: the next page says what is in the way. What the soil test asks for,"
                    + " and the work that needs no products, stand as they are.";
        }
        List<String> parts = new ArrayList<>();
        List<String> sour = named(z -> needs(z, Nutrient.LIME));
        if (!sour.isEmpty()) {
            parts.add("The soil is too sour in " + join(sour) + "; lime mends that.");
        }
        List<String> fed = named(z -> needs(z, Nutrient.N));
        parts.add(
                fed.isEmpty()
                        ? "The lawn gets enough nitrogen already: no more is planned."
                        : "The grass is fed when it can use it, in small doses: " + join(fed) + ".");
        List<String> over = named(z -> z.surplus(Nutrient.P2O5).orElse(0) > NOTHING_GM2);
        if (!over.isEmpty()) {
            parts.add("The other company brings phosphate that " + join(over) + " " + (over.size() == 1 ? "does" : "do")
                    + " not need; a note to them is on a page of its own.");
        }
        return String.join(" ", parts);
    }

    private List<String> named(Predicate<ZoneSeason> which) {
        return season.zones().stream().filter(which).map(ZoneSeason::name).toList();
    }

    private static boolean needs(ZoneSeason zone, Nutrient nutrient) {
        return zone.remaining(nutrient).orElse(0) > NOTHING_GM2;
    }

    private static String join(List<String> names) {
        return names.size() < 2
                ? String.join("", names)
                : String.join(", ", names.subList(0, names.size() - 1)) + " and " + names.get(names.size() - 1);
    }

    /** A row of the table of zones. */
    List<String> zone(ZoneSeason zone) {
        return List.of(zone.name(), figures.area(zone.ground().netM2()), found(zone), stillNeeds(zone));
    }

    private static String found(ZoneSeason zone) {
        if (zone.sample().isEmpty()) {
            return "No soil sample speaks for this part.";
        }
        SampleResult sample = zone.sample().get();
        List<String> parts = new ArrayList<>();
        sample.waterPh().ifPresent(ph -> parts.add("pH " + SoilWords.number(ph)));
        sample.ratings().stream()
                .filter(r -> r.value().element().isNutrient())
                .filter(r ->
                        r.standing().value().filter(s -> s.band().level() < 0).isPresent())
                .map(SeasonWords::low)
                .forEach(parts::add);
        return String.join("; ", parts) + " (sample " + sample.id() + ").";
    }

    private static String low(Rating rating) {
        String name = SoilWords.name(rating.value().element());
        return "low in " + name.substring(0, Math.max(1, name.indexOf(','))).toLowerCase(Locale.ROOT);
    }

    private String stillNeeds(ZoneSeason zone) {
        List<String> parts = new ArrayList<>();
        for (Nutrient nutrient : Nutrient.values()) {
            OptionalDouble left = zone.remaining(nutrient);
            if (left.isPresent() && left.getAsDouble() > NOTHING_GM2) {
                parts.add(nutrient.word() + " " + figures.dose(left.getAsDouble()));
            }
        }
        List<String> open = FED.stream()
                .filter(n -> zone.remaining(n).isEmpty())
                .map(Nutrient::word)
                .toList();
        String needs = parts.isEmpty() ? "Nothing more." : String.join(", ", parts) + ".";
        return open.isEmpty() ? needs : needs + " Not known yet: " + String.join(", ", open) + ".";
    }

    /** Rows of tasks by month; what is done on one day with one product is a row, with the parts of the lawn below each other. */
    Map<String, List<List<String>>> months() {
        Map<List<Object>, List<Task>> rounds = season.tasks().stream()
                .collect(Collectors.groupingBy(
                        task -> List.of(task.date(), task.action(), task.product()),
                        LinkedHashMap::new,
                        Collectors.toList()));
        Map<String, List<List<String>>> months = new LinkedHashMap<>();
        rounds.values()
                .forEach(tasks -> months.computeIfAbsent(month(tasks.get(0).date()), m -> new ArrayList<>())
                        .addAll(rows(tasks)));
        return months;
    }

    private static String month(LocalDate day) {
        return day.getMonth().getDisplayName(TextStyle.FULL, Locale.ENGLISH) + " " + day.getYear();
    }

    private List<List<String>> rows(List<Task> tasks) {
        List<List<String>> rows = new ArrayList<>();
        for (Task task : tasks) {
            boolean first = rows.isEmpty();
            String day = task.date().getDayOfMonth() + " "
                    + task.date().getMonth().getDisplayName(TextStyle.SHORT, Locale.ENGLISH);
            String what = task.action().title() + (task.product().isEmpty() ? "" : ": " + task.product());
            rows.add(List.of(
                    first ? day : "",
                    first ? what : "",
                    task.zone(),
                    amount(task),
                    task.kg() > 0 ? figures.dose(G_PER_KG * task.kgM2() / task.passes()) : "",
                    task.panG().isPresent()
                            ? String.format(Locale.ROOT, "%.1f g", task.panG().getAsDouble() / task.passes())
                            : ""));
        }
        return rows;
    }

    private String amount(Task task) {
        if (task.kg() > 0) {
            return weight(task.kg());
        }
        return task.volumeM3() > 0
                ? volume(task.volumeM3())
                : task.passes() + (task.passes() == 1 ? " pass" : " passes");
    }

    private String weight(double kg) {
        return figures.units() == UnitSystem.US
                ? String.format(Locale.ROOT, "%,.1f lb", kg / Factors.KG_PER_LB)
                : String.format(Locale.ROOT, "%,.2f kg", kg);
    }

    private String volume(double m3) {
        return figures.units() == UnitSystem.US
                ? String.format(Locale.ROOT, "%,.2f yd³", m3 / Factors.M3_PER_YD3)
                : String.format(Locale.ROOT, "%,.2f m³", m3);
    }

    List<List<String>> shopping() {
        return season.purchases().stream().map(this::bought).toList();
    }

    private List<String> bought(Purchase purchase) {
        if (purchase.bags() == 0) {
            String amount = purchase.volumeM3() > 0 ? volume(purchase.volumeM3()) : weight(purchase.kg());
            return List.of(purchase.name(), amount, amount, "", "");
        }
        String bag = weight(purchase.kg() / purchase.bags());
        return List.of(
                purchase.name(),
                Figures.count(purchase.bags(), "bag") + " of " + bag,
                weight(purchase.usedKg()),
                weight(purchase.leftoverKg()),
                money(purchase.cost()));
    }

    String money() {
        String second = season.second()
                .map(s -> " The next best way costs " + money(s.cost()) + ": "
                        + s.bags().entrySet().stream()
                                .map(e -> Figures.count(e.getValue(), "bag") + " " + e.getKey())
                                .collect(Collectors.joining(", "))
                        + ".")
                .orElse("");
        return season.isOptimal()
                ? "Bags in all " + money(season.cost()) + ", by the price list; seed and compost by your dealer."
                        + second
                : "";
    }

    /** What to know for the work. */
    List<String> hints() {
        return Stream.of(
                        Stream.of(
                                "“Each way”: set the spreader to this half rate, go over the lawn one way, then again across"
                                        + " it. “Pan”: what a pan of one square foot catches each way; adjust until it is within"
                                        + " 5 %."),
                        mowing().stream(),
                        season.tasks().stream().flatMap(t -> t.cautions().stream()))
                .flatMap(hints -> hints)
                .distinct()
                .toList();
    }

    /** Heights of the mower in a sentence; empty if none is held for the zones' grasses. */
    private Optional<String> mowing() {
        Map<String, Mowing> byGrass = new LinkedHashMap<>();
        for (ZoneSeason zone : season.zones()) {
            Mowing.of(zone, season.inputs()).ifPresent(m -> byGrass.put(grass(zone, m), m));
        }
        String heights = byGrass.entrySet().stream()
                .map(e -> e.getKey() + " at "
                        + range(e.getValue().lowM(), e.getValue().highM())
                        + (e.getValue().words().isEmpty()
                                ? ""
                                : ", " + e.getValue().words()))
                .collect(Collectors.joining("; "));
        String sources = byGrass.values().stream()
                .map(m -> m.origin().source().citation())
                .distinct()
                .collect(Collectors.joining("; "));
        return byGrass.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        "Mow " + heights + ". Cut before it stands half as high again: no more than a third at a time ("
                                + sources + ").");
    }

    private static String grass(ZoneSeason zone, Mowing mowing) {
        return zone.grass().map(Grass::name).orElse("grass") + (mowing.shaded() ? " in shade" : "");
    }

    private String range(double lowM, double highM) {
        return lowM == highM ? figures.small(lowM) : figures.small(lowM) + " to " + figures.small(highM);
    }

    /** A number of the plan and how it came about. */
    record Reckoned(String number, Account account) {}

    /**
     * Every number once, with all parts of the lawn for which it came about in the same way; lime, sulfur and gypsum only
     * where some is needed.
     */
    List<Reckoned> reckoned() {
        Map<List<Object>, List<String>> parts = new LinkedHashMap<>();
        for (ZoneSeason zone : season.zones()) {
            zone.accounts().forEach((nutrient, account) -> {
                if (FED.contains(nutrient) || zone.need().getOrDefault(nutrient, 0.0) > 0) {
                    parts.computeIfAbsent(List.of(nutrient.word(), account), key -> new ArrayList<>())
                            .add(zone.name());
                }
            });
        }
        List<Reckoned> all = new ArrayList<>();
        parts.forEach((key, zones) -> all.add(new Reckoned(key.get(0) + ": " + join(zones), (Account) key.get(1))));
        for (int i = 0; i < season.purchases().size(); i++) {
            String name = "bags of " + season.purchases().get(i).name();
            Optional.ofNullable(season.accounts().get("/products/" + i + "/bags"))
                    .ifPresent(account -> all.add(new Reckoned(name, account)));
        }
        Optional.ofNullable(season.accounts().get("/cost"))
                .ifPresent(account -> all.add(new Reckoned("cost of the bags", account)));
        return all;
    }

    /** The values put into a formula, such as {@code low = 2; high = 3}. */
    static String values(Account account) {
        return account.inputs().entrySet().stream()
                .map(input -> input.getKey().replace('_', ' ') + " = "
                        + (input.getValue() instanceof Double number
                                ? SoilWords.number(number)
                                : input.getValue().toString()))
                .collect(Collectors.joining("; "));
    }

    String noteLead() {
        return "We look after the soil of this lawn, and you fertilize it. So that the two fit together, here is what the"
                + " soil test asks for beside what your visits bring, as far as we know them.";
    }

    List<List<String>> ledger() {
        List<List<String>> rows = new ArrayList<>();
        for (ZoneSeason zone : season.zones()) {
            for (Nutrient nutrient : FED) {
                Optional.ofNullable(zone.need().get(nutrient))
                        .ifPresent(need -> rows.add(ledger(zone, nutrient, need)));
            }
        }
        return rows;
    }

    private List<String> ledger(ZoneSeason zone, Nutrient nutrient, double need) {
        double brought = zone.service().getOrDefault(nutrient, 0.0);
        double over = zone.surplus(nutrient).orElse(0);
        double compost = zone.compostGM2(nutrient);
        String so = over > NOTHING_GM2
                ? figures.dose(over) + " more than it needs"
                : needs(zone, nutrient)
                        ? "we add " + figures.dose(zone.remaining(nutrient).orElse(0))
                        : compost > NOTHING_GM2 ? "our compost brings " + figures.dose(compost) : "enough";
        return List.of(zone.name(), nutrient.word(), figures.dose(need), figures.dose(brought), so);
    }

    List<String> requests() {
        List<String> asks = new ArrayList<>();
        List<String> phosphate = named(z -> z.surplus(Nutrient.P2O5).orElse(0) > NOTHING_GM2);
        if (!phosphate.isEmpty()) {
            asks.add("Please use a product without phosphate on " + join(phosphate)
                    + ": the soil test shows no need beyond what is there, and a state’s law may bar it.");
        }
        List<String> nitrogen = named(z -> z.surplus(Nutrient.N).orElse(0) > NOTHING_GM2);
        if (!nitrogen.isEmpty()) {
            asks.add("Please leave out a visit with nitrogen on " + join(nitrogen) + ", or halve it.");
        }
        season.problems().stream()
                .filter(problem -> problem.code().equals("SERVICE_OFF_SEASON"))
                .map(problem -> "Please move it: " + problem.message() + ".")
                .forEach(asks::add);
        season.inputs().visits().stream()
                .filter(visit -> FED.stream().anyMatch(n -> visit.gM2(n).isEmpty()))
                .map(SeasonWords::unknown)
                .forEach(asks::add);
        asks.add("Please tell us before you change product, rate or date, and send the label and the weight used after"
                + " each visit.");
        return asks;
    }

    private static String unknown(Visit visit) {
        return "Please send product, analysis, weight and area of the visit of "
                + visit.date().map(Figures::day).orElse("which we have no date") + ".";
    }
}

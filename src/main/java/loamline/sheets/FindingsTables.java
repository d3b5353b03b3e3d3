package loamline.sheets;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import loamline.account.Account;
import loamline.findings.AreaFinding;
import loamline.findings.BagBalance;
import loamline.findings.Comparison;
import loamline.findings.Evidence;
import loamline.findings.Findings;
import loamline.findings.LoggedCore;
import loamline.findings.Meaning;
import loamline.findings.Quantity;
import loamline.findings.RankedCause;
import loamline.findings.Surface;
import loamline.findings.ZoneSummary;
import loamline.scene.Role;
import loamline.scene.Type;

/** Why each part struggles, then bags, readings by core and by zone, and sources. */
record FindingsTables(Findings findings, Figures figures, Blocks blocks) {
    private static final double ROW_MM = 4.4;
    private static final double SECTION_MM = 4.2;
    private static final double DENSE_PT = 7.5;
    private static final double CORES_PT = 6.8;
    private static final int CAUSES_TOLD = 4;
    private static final Type CONCLUSION = Type.bold(11);
    private static final String NONE = "–";

    List<Page> pages(loamline.scene.PaperRect paper, String title, String caution) {
        Column column = new Column();
        findings.areas().forEach(area -> area(column, area));
        if (findings.areas().isEmpty()) {
            column.add(
                    0,
                    blocks.paragraph(
                            "No part of the lawn was drawn or logged as poor: there is nothing to explain.",
                            Blocks.SECOND,
                            Role.INK));
        }
        bags(column);
        cores(column);
        waterWords(column);
        photos(column);
        zones(column);
        meanings(column);
        surfaces(column);
        Citations citations = new Citations();
        findings.areas().stream()
                .flatMap(area -> told(area).stream())
                .flatMap(cause -> Stream.concat(
                        Stream.of(cause.cause().source()),
                        cause.evidence().stream().map(e -> e.sign().source())))
                .forEach(citations::number);
        findings.accounts().values().stream()
                .map(Account::sources)
                .flatMap(List::stream)
                .filter(source -> !source.id().equals("common-practice"))
                .forEach(citations::number);
        column.add(SECTION_MM, heading("Sources"), citations.lines(blocks));
        return column.pages(paper, title, caution);
    }

    private Block heading(String words) {
        return blocks.paragraph(words, Blocks.HEAD, Role.INK);
    }

    private void area(Column column, AreaFinding area) {
        List<Block> head = new ArrayList<>();
        String where = area.cores().isEmpty() ? "" : ": cores " + String.join(", ", area.cores());
        head.add(heading(capital(area.name()) + (area.spot().isPresent() ? where : "")));
        Role role = area.likely().isPresent() ? Role.ACCENT : Role.WARN;
        head.add(blocks.barred(
                role,
                Blocks.stack(
                        0.6,
                        List.of(
                                blocks.paragraph(area.title(), CONCLUSION, role),
                                blocks.paragraph(area.words(figures.units()), Blocks.SECOND, Role.INK)))));
        column.add(SECTION_MM, Blocks.stack(1.6, head));
        area.likely().ifPresent(likely -> column.add(1.6, doing(likely)));
        compared(column, area);
        List<RankedCause> told = told(area);
        if (!told.isEmpty()) {
            Table table = causeTable();
            column.add(
                    2.4,
                    table.head(),
                    told.stream().map(this::words).map(table::row).toList());
        }
    }

    private Block doing(RankedCause likely) {
        return Blocks.stack(
                0.8,
                List.of(
                        line("Confirm", likely.cause().confirm()),
                        line("Do", likely.cause().action()),
                        line("Beware", likely.cause().caution())));
    }

    private Block line(String mark, String words) {
        return blocks.hanging(mark, 15, blocks.paragraph(words, Blocks.SECOND, Role.INK), Blocks.SECOND);
    }

    /** What is likely or not ruled out, and what nobody looked for. */
    private static List<RankedCause> told(AreaFinding area) {
        return area.causes().stream()
                .filter(cause -> cause.standing() != RankedCause.Standing.UNLIKELY)
                .limit(CAUSES_TOLD)
                .toList();
    }

    private Table causeTable() {
        return table(
                Table.Field.words("may be", 34).strong(),
                Table.Field.words("stands", 16),
                Table.Field.words("for", 52).sized(DENSE_PT),
                Table.Field.words("against", 46).sized(DENSE_PT),
                Table.Field.words("not looked at", 38).sized(DENSE_PT));
    }

    private List<String> words(RankedCause cause) {
        return List.of(
                cause.cause().title(),
                cause.standing().word(),
                joined(cause, Evidence.Stand.FOR),
                joined(cause, Evidence.Stand.AGAINST),
                joined(cause, Evidence.Stand.MISSING));
    }

    private String joined(RankedCause cause, Evidence.Stand stand) {
        String words = cause.evidence(stand).stream()
                .map(evidence -> evidence.words(figures.units()))
                .filter(w -> !w.isEmpty())
                .collect(Collectors.joining("; "));
        return words.isEmpty() ? NONE : words;
    }

    private void compared(Column column, AreaFinding area) {
        if (area.comparisons().isEmpty()) {
            return;
        }
        Table table = table(
                Table.Field.words("against the rest", 46).strong(),
                Table.Field.number("here", 28),
                Table.Field.number("elsewhere", 28),
                Table.Field.number("cores", 20),
                Table.Field.number("effect", 20),
                Table.Field.number("p, exact", 22),
                Table.Field.number("p, corrected", 24));
        column.add(
                2.4,
                table.head(),
                area.comparisons().stream().map(c -> table.row(words(c))).toList());
    }

    private List<String> words(Comparison c) {
        return List.of(
                title(c.quantity()) + (c.isClear() ? ": differs" : ""),
                value(c.quantity(), c.areaMean()),
                value(c.quantity(), c.restMean()),
                c.areaN() + " / " + c.restN(),
                String.format(Locale.ROOT, "%+.2f", c.effect()),
                String.format(Locale.ROOT, "%.3f", c.p()),
                String.format(Locale.ROOT, "%.3f", c.holmP()));
    }

    private void bags(Column column) {
        Table table = table(
                Table.Field.words("bag", 12).strong(),
                Table.Field.number("in it", 16),
                Table.Field.words("stood in for", 50).sized(DENSE_PT),
                Table.Field.words("still to do", 80).sized(DENSE_PT));
        column.add(
                SECTION_MM,
                Blocks.stack(0.6, List.of(heading("Bags"), table.head())),
                findings.log().bags().stream().map(bag -> table.row(words(bag))).toList());
    }

    private static List<String> words(BagBalance bag) {
        String replaced = bag.replaced().entrySet().stream()
                .map(e -> e.getValue() + " for " + e.getKey())
                .collect(Collectors.joining(", "));
        List<String> due = new ArrayList<>();
        add(due, "take", bag.next());
        add(due, "nothing stands for", bag.missing());
        add(due, "not logged:", bag.notLogged());
        add(due, "keep out of the bag:", bag.surplus());
        return List.of(
                bag.composite(),
                bag.inBag().size() + " of " + bag.planned(),
                replaced.isEmpty() ? NONE : replaced,
                due.isEmpty() ? "nothing: every part counts once" : String.join("; ", due));
    }

    private static void add(List<String> words, String what, List<String> ids) {
        if (!ids.isEmpty()) {
            words.add(what + " " + String.join(", ", ids));
        }
    }

    private void cores(Column column) {
        List<Quantity> read = Stream.of(Quantity.values())
                .filter(q ->
                        findings.cores().stream().anyMatch(core -> core.value(q).isPresent()))
                .toList();
        List<Table.Field> fields =
                new ArrayList<>(List.of(Table.Field.words("core", 12).strong()));
        read.forEach(q -> fields.add(Table.Field.number(brief(q), 18).sized(CORES_PT)));
        fields.add(Table.Field.words("remarks", 34).sized(CORES_PT));
        Table table = new Table(blocks, fields, ROW_MM, false);
        column.add(
                SECTION_MM,
                Blocks.stack(0.6, List.of(heading("Cores"), table.head())),
                findings.cores().stream()
                        .map(core -> table.row(words(core, read)))
                        .toList());
    }

    /** A title for a narrow column. */
    private static String brief(Quantity quantity) {
        return switch (quantity) {
            case DEPTH -> "depth";
            case ROOT -> "roots";
            case MOISTURE -> "feel";
            case VWC -> "meter";
            case DROP -> "drop";
            case QUALITY -> "quality";
            case SUN -> "sun";
            case WATER -> "water";
            default -> quantity.title();
        };
    }

    /** Water is measured at some cores, if there are cups. */
    private String title(Quantity quantity) {
        boolean measured = quantity == Quantity.WATER && measured() > 0;
        return measured ? measured() < known() ? "water, cups first" : "water, by cups" : quantity.title();
    }

    private long measured() {
        return findings.cores().stream().filter(LoggedCore::waterMeasured).count();
    }

    private long known() {
        return findings.cores().stream()
                .filter(core -> core.value(Quantity.WATER).isPresent())
                .count();
    }

    /** Which of the water is measured. */
    private void waterWords(Column column) {
        if (measured() > 0) {
            String at = findings.cores().stream()
                    .filter(LoggedCore::waterMeasured)
                    .map(LoggedCore::id)
                    .collect(Collectors.joining(", "));
            String words = "Water at " + at + " as the cups of valve "
                    + String.join(", ", findings.known().tested()) + " caught it, which beats what is mapped"
                    + (measured() < known() ? "; at the others as mapped, without wind." : ".");
            column.add(1.6, blocks.paragraph(words, Blocks.SECOND, Role.SOFT));
        }
    }

    private List<String> words(LoggedCore core, List<Quantity> read) {
        List<String> words = new ArrayList<>(List.of(core.id()));
        read.forEach(q ->
                words.add(core.value(q).isPresent() ? value(q, core.value(q).getAsDouble()) : NONE));
        words.add(Stream.concat(
                        core.refusal().map(r -> r.equals("refused") ? r : "refused: " + r).stream(),
                        core.words().stream())
                .collect(Collectors.joining("; ")));
        return words;
    }

    /** The photos by their names. */
    private void photos(Column column) {
        String named = findings.cores().stream()
                .filter(core -> !core.photos().isEmpty())
                .map(core -> core.id() + " " + String.join(", ", core.photos()))
                .collect(Collectors.joining("; "));
        if (!named.isEmpty()) {
            column.add(1.6, blocks.paragraph("Photos, by file name: " + named + ".", Blocks.SECOND, Role.SOFT));
        }
    }

    /** A row a zone: the mean of each reading, and its standard deviation where several cores have it. */
    private void zones(Column column) {
        List<Quantity> read = findings.zones().stream()
                .map(ZoneSummary::quantity)
                .distinct()
                .sorted()
                .toList();
        List<Table.Field> fields = new ArrayList<>(List.of(
                Table.Field.words("zone", 30).strong(),
                Table.Field.number("cores", 11).sized(CORES_PT)));
        read.forEach(q -> fields.add(Table.Field.number(brief(q), 21).sized(CORES_PT)));
        Table table = new Table(blocks, fields, ROW_MM, false);
        column.add(
                SECTION_MM,
                Blocks.stack(0.6, List.of(heading("Zones: means, ± standard deviation"), table.head())),
                findings.zones().stream()
                        .map(ZoneSummary::zone)
                        .distinct()
                        .map(zone -> table.row(words(zone, read)))
                        .toList());
    }

    /** What the means say by published thresholds, a paragraph a zone. */
    private void meanings(Column column) {
        Map<String, List<String>> byZone = new LinkedHashMap<>();
        for (ZoneSummary z : findings.zones()) {
            Meaning.of(z, findings.zones())
                    .ifPresent(meaning -> byZone.computeIfAbsent(z.zone(), key -> new ArrayList<>())
                            .add(z.quantity().title() + " " + meaning.name()
                                    + (meaning.action().isEmpty() ? "" : ", " + meaning.action())));
        }
        byZone.forEach((zone, says) -> column.add(
                1.2, blocks.paragraph(zone + ": " + String.join("; ", says) + ".", Blocks.SECOND, Role.INK)));
    }

    private List<String> words(String zone, List<Quantity> read) {
        List<ZoneSummary> own =
                findings.zones().stream().filter(z -> z.zone().equals(zone)).toList();
        List<String> words = new ArrayList<>(List.of(
                zone,
                Integer.toString(own.stream().mapToInt(ZoneSummary::n).max().orElse(0))));
        read.forEach(q -> words.add(own.stream()
                .filter(z -> z.quantity() == q)
                .findFirst()
                .map(this::spread)
                .orElse(NONE)));
        return words;
    }

    /** Two values of one unit, the unit once. */
    private String spread(ZoneSummary z) {
        String mean = value(z.quantity(), z.mean());
        if (z.sd().isEmpty() || z.quantity() == Quantity.MOISTURE) {
            return mean;
        }
        String sd = value(z.quantity(), z.sd().getAsDouble());
        int unit = mean.indexOf(' ');
        boolean isShared = unit > 0 && sd.endsWith(mean.substring(unit));
        return (isShared ? mean.substring(0, unit) : mean) + " ± " + sd;
    }

    private void surfaces(Column column) {
        List<Block> lines = findings.surfaces().stream()
                .map(s -> blocks.paragraph(words(s), Blocks.SECOND, Role.INK))
                .toList();
        if (!lines.isEmpty()) {
            column.add(SECTION_MM, heading("Between the cores: each told from the others"), lines);
        }
    }

    private String words(Surface s) {
        String reach = s.method() == Surface.Method.NONE ? "" : ", no farther than " + figures.length(s.reachM());
        return capital(s.quantity().title()) + ": " + s.method().words() + reach
                + String.format(
                        Locale.ROOT,
                        "; off by %.0f %% of what the mean alone is, %s.",
                        100 * s.rmse() / s.meanRmse(),
                        Figures.count(s.n(), "core"));
    }

    private String value(Quantity quantity, double value) {
        return quantity.words(value, figures.units());
    }

    private Table table(Table.Field... fields) {
        return new Table(blocks, List.of(fields), ROW_MM, false);
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}

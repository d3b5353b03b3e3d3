package loamline.sheets;

import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import loamline.account.Account;
import loamline.account.Severity;
import loamline.account.Source;
import loamline.scene.PaperRect;
import loamline.scene.Role;
import loamline.scene.Type;
import loamline.water.Uniformity;
import loamline.water.cups.Cup;
import loamline.water.cups.CupTest;
import loamline.water.cups.HeadFinding;
import loamline.water.need.MonthRunTime;

/** The tables behind the map of a cup test: heads, run times, readings, doubts, formulas and sources. */
record CupTables(CupTest test, Figures figures, Blocks blocks) {
    private static final double ROW_MM = 4.6;
    private static final double SECTION_MM = 3.8;
    private static final double DENSE_PT = 7.5;

    List<Page> pages(PaperRect paper, String title, String caution) {
        Column column = new Column();
        section(
                column,
                "Heads, the most suspected first",
                headTable(),
                test.findings().heads(),
                this::words);
        section(column, "Run times", runTable(), test.runTimes(), this::words);
        section(column, "Readings", cupTable(), pairs(), this::words);
        doubts(column);
        evenness(column);
        formulas(column);
        return column.pages(paper, title, caution);
    }

    private Block heading(String words) {
        return blocks.paragraph(words, Blocks.HEAD, Role.INK);
    }

    private <T> void section(
            Column column, String title, Table table, List<T> things, Function<T, List<String>> words) {
        if (!things.isEmpty()) {
            Block head = Blocks.stack(0.6, List.of(heading(title), table.head()));
            column.add(
                    SECTION_MM, head, things.stream().map(words).map(table::row).toList());
        }
    }

    private Table table(Table.Field... fields) {
        return new Table(blocks, List.of(fields), ROW_MM, false);
    }

    private Table headTable() {
        return table(
                Table.Field.words("head", 12).strong(),
                Table.Field.words("verdict", 15).strong(),
                Table.Field.number("gives", 13),
                Table.Field.number("95 % interval", 24),
                Table.Field.number("at fault", 16),
                Table.Field.words("cups", 30).sized(DENSE_PT),
                Table.Field.words("what to do", 80).sized(DENSE_PT));
    }

    private List<String> words(HeadFinding head) {
        return List.of(
                head.head(),
                head.verdict().word(),
                Figures.percent(head.factor(), 0),
                Figures.percent(head.low(), 0) + " to " + Figures.percent(head.high(), 0),
                Figures.sure(head.sure()),
                head.verdict().isFault() ? String.join(", ", head.cups()) : head.reachedCups() + " in its throw",
                head.words());
    }

    private Table runTable() {
        return table(
                Table.Field.words("month", 26).strong(),
                Table.Field.number("ETo a day", 22),
                Table.Field.number("need a watering", 26),
                Table.Field.number("minutes", 20),
                Table.Field.number("every", 22),
                Table.Field.number("cycles", 22),
                Table.Field.number("soak between", 26));
    }

    private List<String> words(MonthRunTime month) {
        String name = month.month().getDisplayName(TextStyle.FULL, Locale.ENGLISH);
        String eto = figures.depth(month.etoMmDay());
        if (month.waterings() == 0) {
            return List.of(name, eto, "–", "none", "–", "–", "–");
        }
        return List.of(
                name,
                eto,
                figures.depth(month.needMm()),
                minutes(month.minutes()),
                Figures.count(month.intervalDays(), "day"),
                month.cycles() <= 1 ? "1" : month.cycles() + " × " + minutes(month.minutes() / month.cycles()),
                month.cycles() <= 1 ? "–" : minutes(Math.ceil(month.soakMin())));
    }

    private static String minutes(double minutes) {
        return String.format(Locale.ROOT, "%.0f min", minutes);
    }

    /** Two cups to a row. */
    private record Pair(Cup left, List<Cup> right) {}

    private List<Pair> pairs() {
        List<Cup> cups = test.cups();
        int rows = (cups.size() + 1) / 2;
        List<Pair> pairs = new ArrayList<>();
        for (int i = 0; i < rows; i++) {
            pairs.add(new Pair(cups.get(i), i + rows < cups.size() ? List.of(cups.get(i + rows)) : List.of()));
        }
        return pairs;
    }

    private Table cupTable() {
        List<Table.Field> fields = new ArrayList<>();
        for (int i = 0; i < 2; i++) {
            fields.add(Table.Field.words("cup", 16).strong());
            fields.add(Table.Field.number("caught", 22));
            fields.add(Table.Field.number("rate", 26));
            fields.add(Table.Field.number("of the mean", 24));
        }
        return new Table(blocks, fields, ROW_MM, false);
    }

    private List<String> words(Pair pair) {
        List<String> words = new ArrayList<>(words(pair.left()));
        pair.right().forEach(cup -> words.addAll(words(cup)));
        return words;
    }

    private List<String> words(Cup cup) {
        double mean = test.meanMmH().orElse(0);
        return List.of(
                cup.name(),
                String.format(Locale.ROOT, "%.1f ml", cup.ml()),
                figures.rate(cup.rateMmH()),
                mean > 0 ? Figures.percent(cup.rateMmH() / mean, 0) : "–");
    }

    private void doubts(Column column) {
        List<Block> doubts = test.problems().stream()
                .filter(problem -> problem.severity() != Severity.INFO)
                .map(problem -> blocks.paragraph(
                        problem.severity().word() + ": " + problem.message(), Blocks.SECOND, Role.WARN))
                .toList();
        if (!doubts.isEmpty()) {
            column.add(SECTION_MM, heading("Worth knowing"), doubts);
        }
    }

    private void evenness(Column column) {
        test.uniformity()
                .ifPresent(even -> column.add(
                        SECTION_MM,
                        heading("Evenness"),
                        List.of(blocks.paragraph(
                                "Low quarter " + Figures.percent(even.duLq(), 1) + ", low half "
                                        + Figures.percent(even.duLh(), 1) + ", Christiansen "
                                        + Figures.percent(even.cu(), 1) + ", coefficient of variation "
                                        + Figures.percent(even.cv(), 1) + ", driest cup over mean "
                                        + Figures.percent(even.minRatio(), 1) + ", scheduling coefficient "
                                        + test.schedulingWords() + ". " + capital(Uniformity.RULE)
                                        + ". Readings scatter by "
                                        + Figures.percent(test.findings().noiseShare(), 0)
                                        + " about what the heads as found throw; the valve brings "
                                        + Figures.percent(test.findings().scale(), 0) + " of the mapped flow.",
                                Blocks.SECOND,
                                Role.INK))));
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    private void formulas(Column column) {
        Map<String, Account> once = new LinkedHashMap<>();
        test.accounts().forEach((pointer, account) -> once.putIfAbsent(account.formula(), account));
        List<String> citations = once.values().stream()
                .flatMap(account -> account.sources().stream())
                .map(Source::citation)
                .distinct()
                .toList();
        Table table = table(
                new Table.Field("formula", 84, Blocks.Side.LEFT, Type.oblique(DENSE_PT), Role.INK),
                Table.Field.words("what it says", 94).sized(DENSE_PT),
                Table.Field.words("source", 14).soft());
        section(
                column,
                "How these numbers came about",
                table,
                List.copyOf(once.values()),
                account -> List.of(
                        account.formula(),
                        account.note(),
                        account.sources().stream()
                                .map(source -> "[" + (citations.indexOf(source.citation()) + 1) + "]")
                                .collect(Collectors.joining(" "))));
        List<Block> sources = new ArrayList<>();
        for (String citation : citations) {
            Block words = blocks.paragraph(citation, Blocks.SMALL, Role.INK);
            sources.add(blocks.hanging("[" + (sources.size() + 1) + "]", 6, words, Blocks.SMALL));
        }
        column.add(SECTION_MM, heading("Sources"), sources);
    }
}

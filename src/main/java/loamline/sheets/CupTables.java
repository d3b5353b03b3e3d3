package loamline.sheets;

import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import loamline.account.Account;
import loamline.scene.PaperRect;
import loamline.scene.Role;
import loamline.water.Uniformity;
import loamline.water.cups.Cup;
import loamline.water.cups.CupTest;
import loamline.water.cups.HeadFinding;
import loamline.water.need.MonthRunTime;

/** The tables behind the map of a cup test: heads, run times, readings, doubts, formulas and sources. */
record CupTables(CupTest test, Figures figures, Blocks blocks) {
    private static final double ROW_MM = 4.6;
    private static final double SECTION_MM = 3.8;

    List<Page> pages(PaperRect paper, String title, String caution) {
        Sections sections = new Sections(blocks, new Column(), SECTION_MM, ROW_MM);
        sections.table(
                "Heads, the most suspected first", headTable(), test.findings().heads(), this::words);
        sections.table("Run times", runTable(), test.runTimes(), this::words);
        sections.table("Readings", cupTable(), pairs(), this::words);
        sections.doubts(test.problems());
        evenness(sections);
        formulas(sections);
        return sections.column().pages(paper, title, caution);
    }

    private List<Table.Field> headTable() {
        return List.of(
                Table.Field.words("head", 12).strong(),
                Table.Field.words("verdict", 15).strong(),
                Table.Field.number("gives", 13),
                Table.Field.number("95 % interval", 24),
                Table.Field.number("at fault", 16),
                Table.Field.words("cups", 30).sized(Sections.DENSE_PT),
                Table.Field.words("what to do", 80).sized(Sections.DENSE_PT));
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

    private List<Table.Field> runTable() {
        return List.of(
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

    private List<Table.Field> cupTable() {
        List<Table.Field> fields = new ArrayList<>();
        for (int i = 0; i < 2; i++) {
            fields.add(Table.Field.words("cup", 16).strong());
            fields.add(Table.Field.number("caught", 22));
            fields.add(Table.Field.number("rate", 26));
            fields.add(Table.Field.number("of the mean", 24));
        }
        return List.copyOf(fields);
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

    private void evenness(Sections sections) {
        test.uniformity()
                .ifPresent(even -> sections.part(
                        "Evenness",
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

    private void formulas(Sections sections) {
        Map<String, Account> once = new LinkedHashMap<>();
        test.accounts().forEach((pointer, account) -> once.putIfAbsent(account.formula(), account));
        Citations citations = new Citations();
        sections.table(
                "How these numbers came about",
                List.of(
                        Sections.formula(84),
                        Table.Field.words("what it says", 94).sized(Sections.DENSE_PT),
                        Table.Field.words("source", 14).soft()),
                List.copyOf(once.values()),
                account -> List.of(account.formula(), account.note(), citations.marks(account.sources())));
        sections.sources(citations);
    }
}

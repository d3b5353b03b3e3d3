package loamline.files;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import loamline.account.Problem;
import loamline.season.Target;

/**
 * What zones are to become, a zone a row: {@code zone,grass,region,use,n_g_m2,seed_mix,overseed,topdress_mm}, and where they
 * are known {@code clippings,age_years,shade,core,wetting_agent,purity_pct,germination_pct,compost_p_pct,compost_dry_pct,
 * compost_kg_m3}.
 *
 * <p>{@code seed_mix} reads like {@code tall fescue 90 + Kentucky bluegrass 10}, per cent of weight. {@code overseed} is
 * {@code no}, {@code yes}, {@code new} or the bare share of the ground in per cent.
 *
 * @param targets the sound rows, in order
 * @param problems of the text, the header and the rows
 */
public record TargetFile(List<Target> targets, List<Problem> problems) {
    private static final double MIX_ROUNDING_PCT = 0.5;
    private static final Pattern PART = Pattern.compile("(.+?)\\s+(\\d{1,3}(?:\\.\\d+)?)\\s*%?");
    private static final CsvColumn<String> ZONE = CsvColumn.text("zone").required();
    private static final CsvColumn<String> GRASS = CsvColumn.text("grass");
    private static final CsvColumn<String> REGION = CsvColumn.text("region");
    private static final CsvColumn<String> USE = CsvColumn.of(
            "use",
            "low, medium or high",
            text -> Optional.of(text.toLowerCase(java.util.Locale.ROOT))
                    .filter(List.of("low", "medium", "high")::contains));
    private static final CsvColumn<Double> N = CsvColumn.number("n_g_m2", 0, 50);
    private static final CsvColumn<List<Target.Part>> MIX = CsvColumn.of(
            "seed_mix", "grasses with per cents, such as tall fescue 90 + Kentucky bluegrass 10", TargetFile::mix);
    private static final CsvColumn<OptionalDouble> OVERSEED =
            CsvColumn.of("overseed", "no, yes, new or the bare share in per cent", TargetFile::bareShare);
    private static final CsvColumn<Double> TOPDRESS = CsvColumn.number("topdress_mm", 0, 50);
    private static final CsvColumn<Boolean> CLIPPINGS = yes("clippings");
    private static final CsvColumn<Double> AGE = CsvColumn.number("age_years", 0, 300);
    private static final CsvColumn<Boolean> SHADE = yes("shade");
    private static final CsvColumn<Boolean> CORE = yes("core");
    private static final CsvColumn<String> WETTING = CsvColumn.text("wetting_agent");
    private static final CsvColumn<Double> PURITY = CsvColumn.number("purity_pct", 1, 100);
    private static final CsvColumn<Double> GERMINATION = CsvColumn.number("germination_pct", 1, 100);
    private static final CsvColumn<Double> COMPOST_P = CsvColumn.number("compost_p_pct", 0, 10);
    private static final CsvColumn<Double> COMPOST_DRY = CsvColumn.number("compost_dry_pct", 1, 100);
    private static final CsvColumn<Double> COMPOST_KG = CsvColumn.number("compost_kg_m3", 100, 2000);
    private static final List<CsvColumn<?>> COLUMNS = List.of(
            ZONE,
            GRASS,
            REGION,
            USE,
            N,
            MIX,
            OVERSEED,
            TOPDRESS,
            CLIPPINGS,
            AGE,
            SHADE,
            CORE,
            WETTING,
            PURITY,
            GERMINATION,
            COMPOST_P,
            COMPOST_DRY,
            COMPOST_KG);

    public TargetFile {
        targets = List.copyOf(targets);
        problems = List.copyOf(problems);
    }

    private static CsvColumn<Boolean> yes(String name) {
        return CsvColumn.of(name, "yes or no", text -> switch (text.toLowerCase(java.util.Locale.ROOT)) {
            case "yes", "y", "true" -> Optional.of(true);
            case "no", "n", "false" -> Optional.of(false);
            default -> Optional.empty();
        });
    }

    private static Optional<List<Target.Part>> mix(String text) {
        List<Target.Part> parts = new ArrayList<>();
        for (String part : Arrays.stream(text.split("[+|]")).map(String::strip).toList()) {
            Matcher matcher = PART.matcher(part);
            boolean alone = !text.contains("+") && !text.contains("|");
            if (matcher.matches()) {
                parts.add(new Target.Part(matcher.group(1), Double.parseDouble(matcher.group(2))));
            } else if (alone && !part.isEmpty()) {
                parts.add(new Target.Part(part, 100));
            } else {
                return Optional.empty();
            }
        }
        return Optional.of(parts);
    }

    private static Optional<OptionalDouble> bareShare(String text) {
        String word = text.toLowerCase(java.util.Locale.ROOT).replace("%", "").strip();
        return switch (word) {
            case "no", "0" -> Optional.of(OptionalDouble.empty());
            case "yes" -> Optional.of(OptionalDouble.of(0));
            case "new" -> Optional.of(OptionalDouble.of(1));
            default ->
                word.matches("\\d{1,2}(\\.\\d+)?|100")
                        ? Optional.of(OptionalDouble.of(Double.parseDouble(word) / 100))
                        : Optional.empty();
        };
    }

    /** Reads a file; every failure is among the problems. */
    public static TargetFile read(Path file) {
        return of(CsvTable.read(file, COLUMNS));
    }

    /** Reads text as it was typed or pasted. */
    public static TargetFile parse(String text) {
        return parse(text.getBytes(StandardCharsets.UTF_8));
    }

    /** Reads the content of a file. */
    public static TargetFile parse(byte[] content) {
        return of(CsvTable.parse(content, COLUMNS));
    }

    private static TargetFile of(CsvTable table) {
        List<Problem> problems = new ArrayList<>(table.problems());
        List<Target> targets = new ArrayList<>();
        for (CsvRow row : table.rows()) {
            double sum = row.get(MIX).stream()
                    .flatMap(List::stream)
                    .mapToDouble(Target.Part::pct)
                    .sum();
            if (row.get(MIX).isPresent() && Math.abs(sum - 100) > MIX_ROUNDING_PCT) {
                problems.add(Problem.error(
                        "SEED_MIX_SUM",
                        row.where(),
                        "the parts of seed_mix sum to " + JsonText.number(sum) + " %, not 100: correct them"));
            } else if (targets.stream().anyMatch(t -> t.zone().equalsIgnoreCase(row.need(ZONE)))) {
                problems.add(Problem.error(
                        "TARGET_TWICE",
                        row.where(),
                        "“" + row.need(ZONE) + "” has a target already: the first counts"));
            } else {
                targets.add(target(row));
            }
        }
        return new TargetFile(targets, problems);
    }

    private static Target target(CsvRow row) {
        return new Target(
                row.need(ZONE),
                row.get(GRASS).orElse(""),
                row.get(REGION).orElse(""),
                row.get(USE).orElse("medium"),
                number(row, N),
                new Target.Seed(
                        row.get(MIX).orElse(List.of()),
                        row.get(OVERSEED).orElse(OptionalDouble.empty()),
                        number(row, PURITY),
                        number(row, GERMINATION)),
                row.get(TOPDRESS).orElse(0.0),
                new Target.Keeping(
                        row.get(CLIPPINGS).orElse(false),
                        number(row, AGE),
                        row.get(SHADE),
                        row.get(CORE).orElse(false),
                        row.get(WETTING).orElse("")),
                new Target.Compost(number(row, COMPOST_P), number(row, COMPOST_DRY), number(row, COMPOST_KG)),
                row.line());
    }

    private static OptionalDouble number(CsvRow row, CsvColumn<Double> column) {
        return row.get(column).stream().mapToDouble(Double::doubleValue).findFirst();
    }
}

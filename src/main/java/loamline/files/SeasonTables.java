package loamline.files;

import java.time.Month;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import loamline.account.Problem;
import loamline.season.Product;
import loamline.season.Target;
import loamline.season.Visit;
import loamline.soil.LabValue;
import loamline.water.need.MonthClimate;
import loamline.yard.Attachment;
import loamline.yard.Attachment.Sort;
import loamline.yard.Yard;

/**
 * What the tables that a yard carries say for its soil and season; rows that cannot be used are left out.
 *
 * @param meanC usual mean temperature of months, °C
 * @param problems by the name of the table
 */
public record SeasonTables(
        List<LabValue> lab,
        List<Product> products,
        List<Visit> visits,
        List<Target> targets,
        Map<Month, Double> meanC,
        Map<String, List<Problem>> problems) {
    public static SeasonTables of(Yard yard) {
        Map<String, List<Problem>> problems = new LinkedHashMap<>();
        return new SeasonTables(
                rows(yard, Sort.LAB, LabFile::parse, LabFile::values, LabFile::problems, problems),
                rows(yard, Sort.PRODUCTS, ProductFile::parse, ProductFile::products, ProductFile::problems, problems),
                rows(yard, Sort.SERVICE, ServiceFile::parse, ServiceFile::visits, ServiceFile::problems, problems),
                rows(yard, Sort.TARGETS, TargetFile::parse, TargetFile::targets, TargetFile::problems, problems),
                meanC(rows(
                        yard,
                        Sort.CLIMATE,
                        ClimateFile::parse,
                        r -> r.value().orElse(List.of()),
                        Read::problems,
                        problems)),
                Collections.unmodifiableMap(problems));
    }

    private static <F, R> List<R> rows(
            Yard yard,
            Sort sort,
            Function<String, F> parse,
            Function<F, List<R>> rows,
            Function<F, List<Problem>> wrong,
            Map<String, List<Problem>> problems) {
        List<R> all = new ArrayList<>();
        for (Attachment table : yard.attached(sort)) {
            F file = parse.apply(table.text());
            all.addAll(rows.apply(file));
            problems.computeIfAbsent(table.name(), name -> new ArrayList<>()).addAll(wrong.apply(file));
        }
        return List.copyOf(all);
    }

    /** Usual mean temperatures, °C: the middle between a day's least and most. */
    public static Map<Month, Double> meanC(List<MonthClimate> year) {
        Map<Month, Double> means = new EnumMap<>(Month.class);
        year.forEach(month -> month.temperature().ifPresent(t -> means.put(month.month(), (t.minC() + t.maxC()) / 2)));
        return means;
    }
}

package loamline.files;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import loamline.account.Problem;
import loamline.season.Product;

/**
 * A price list, a product a row: {@code
 * name,n,p2o5,k2o,ca,mg,s,fe,cce,slow_n_pct,form,bag_kg,price,salt_index,density_kg_l,label_g_m2}. Percentages are of
 * weight; blank ones count as 0, as on a label.
 *
 * @param products the sound rows, in order
 * @param problems of the text, the header and the rows
 */
public record ProductFile(List<Product> products, List<Problem> problems) {
    private static final CsvColumn<String> NAME = CsvColumn.text("name").required();
    private static final CsvColumn<Double> N = pct("n");
    private static final CsvColumn<Double> P2O5 = pct("p2o5");
    private static final CsvColumn<Double> K2O = pct("k2o");
    private static final CsvColumn<Double> CA = pct("ca");
    private static final CsvColumn<Double> MG = pct("mg");
    private static final CsvColumn<Double> S = pct("s");
    private static final CsvColumn<Double> FE = pct("fe");
    /** Magnesium oxide, the strongest liming material, has 248. */
    private static final CsvColumn<Double> CCE = CsvColumn.number("cce", 0, 250);

    private static final CsvColumn<Double> SLOW = pct("slow_n_pct");
    private static final CsvColumn<String> FORM = CsvColumn.text("form");
    private static final CsvColumn<Double> BAG = CsvColumn.amount("bag_kg").required();
    private static final CsvColumn<Double> PRICE = CsvColumn.amount("price").required();
    private static final CsvColumn<Double> SALT = CsvColumn.number("salt_index", 0, 200);
    private static final CsvColumn<Double> DENSITY = CsvColumn.number("density_kg_l", 0.1, 3);
    private static final CsvColumn<Double> LABEL = CsvColumn.amount("label_g_m2");
    private static final List<CsvColumn<?>> COLUMNS =
            List.of(NAME, N, P2O5, K2O, CA, MG, S, FE, CCE, SLOW, FORM, BAG, PRICE, SALT, DENSITY, LABEL);

    public ProductFile {
        products = List.copyOf(products);
        problems = List.copyOf(problems);
    }

    private static CsvColumn<Double> pct(String name) {
        return CsvColumn.number(name, 0, 100);
    }

    /** Reads a file; every failure is among the problems. */
    public static ProductFile read(Path file) {
        return of(CsvTable.read(file, COLUMNS));
    }

    /** Reads text as it was typed or pasted. */
    public static ProductFile parse(String text) {
        return parse(text.getBytes(StandardCharsets.UTF_8));
    }

    /** Reads the content of a file. */
    public static ProductFile parse(byte[] content) {
        return of(CsvTable.parse(content, COLUMNS));
    }

    private static ProductFile of(CsvTable table) {
        List<Problem> problems = new ArrayList<>(table.problems());
        List<Product> products = new ArrayList<>();
        for (CsvRow row : table.rows()) {
            List<Problem> wrong = wrong(row, products);
            problems.addAll(wrong);
            if (wrong.isEmpty()) {
                products.add(product(row));
            }
        }
        return new ProductFile(products, problems);
    }

    private static List<Problem> wrong(CsvRow row, List<Product> before) {
        List<Problem> wrong = new ArrayList<>();
        if (row.need(PRICE) == 0) {
            wrong.add(Problem.error("PRODUCT_PRICE", row.where(), "the price is 0: fill in what a bag costs"));
        }
        if (row.need(BAG) == 0) {
            wrong.add(Problem.error("PRODUCT_BAG", row.where(), "bag_kg is 0: fill in the net weight of a bag"));
        }
        double sum = DoubleStream.of(
                        zero(row, N),
                        zero(row, P2O5),
                        zero(row, K2O),
                        zero(row, CA),
                        zero(row, MG),
                        zero(row, S),
                        zero(row, FE))
                .sum();
        if (sum > 100) {
            wrong.add(Problem.error(
                    "PRODUCT_PERCENT",
                    row.where(),
                    "the analysis sums to " + JsonText.number(sum) + " %: correct it from the label"));
        }
        if (before.stream().anyMatch(p -> p.name().equalsIgnoreCase(row.need(NAME)))) {
            wrong.add(Problem.error(
                    "PRODUCT_TWICE",
                    row.where(),
                    "“" + row.need(NAME) + "” is on the list already: give each size of bag a name of its own"));
        }
        return wrong;
    }

    private static double zero(CsvRow row, CsvColumn<Double> column) {
        return row.get(column).orElse(0.0);
    }

    private static OptionalDouble number(CsvRow row, CsvColumn<Double> column) {
        return row.get(column).stream().mapToDouble(Double::doubleValue).findFirst();
    }

    private static Product product(CsvRow row) {
        return new Product(
                row.need(NAME),
                new Product.Percent(
                        zero(row, N),
                        zero(row, P2O5),
                        zero(row, K2O),
                        zero(row, CA),
                        zero(row, MG),
                        zero(row, S),
                        zero(row, FE),
                        zero(row, CCE)),
                zero(row, SLOW),
                row.get(FORM).orElse(""),
                row.need(BAG),
                row.need(PRICE),
                number(row, SALT),
                number(row, DENSITY),
                number(row, LABEL),
                row.line());
    }
}

package loamline.season;

import java.util.OptionalDouble;

/** Invented products. */
final class Products {
    private Products() {}

    static Product of(String name, double n, double p2o5, double k2o) {
        return of(name, n, p2o5, k2o, 0, 0);
    }

    static Product of(String name, double n, double p2o5, double k2o, double slowPct, double cce) {
        return new Product(
                name,
                new Product.Percent(n, p2o5, k2o, 0, 0, 0, 0, cce),
                slowPct,
                "granular",
                20,
                20 + n,
                OptionalDouble.of(n + k2o),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                2);
    }
}

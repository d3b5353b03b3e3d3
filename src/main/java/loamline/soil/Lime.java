package loamline.soil;

import java.util.List;
import java.util.OptionalDouble;
import loamline.account.Account;

/**
 * Lime for a sample; none at all where the pH has reached its target.
 *
 * @param method how the need was read, in words
 * @param cceKgM2 need as pure CaCO₃
 * @param productKgM2 need as the material that is spread
 * @param dosesKgM2 dressings of the material; less than the need where a new test must come between
 * @param monthsBetween least time from one dressing to the next; 0 where there is one at most
 * @param basisDepthM depth that the method is made for; empty where it is made for turf as it stands
 * @param product how the material's weight came about
 * @param cautions what to know before spreading
 */
public record Lime(
        String method,
        double cceKgM2,
        double productKgM2,
        List<Double> dosesKgM2,
        int monthsBetween,
        OptionalDouble basisDepthM,
        Account product,
        List<String> cautions) {
    public Lime {
        dosesKgM2 = List.copyOf(dosesKgM2);
        cautions = List.copyOf(cautions);
    }
}

package loamline.sampling;

import java.util.List;
import loamline.account.Account;
import loamline.reference.Variability;

/**
 * How far a bag's mean may be off because cores differ.
 *
 * @param element as labs name it
 * @param cvPct published standard deviation between cores over their mean, per cent
 * @param halfWidthPct half-width of the 90 % interval, per cent of the mean
 * @param account how it came about
 */
public record ExpectedError(String element, double cvPct, double halfWidthPct, Account account) {
    /** The errors of a bag of so many cores, by element; none for fewer than two, which have no interval. */
    public static List<ExpectedError> of(int cores) {
        return cores < 2
                ? List.of()
                : Variability.published().stream().map(row -> of(row, cores)).toList();
    }

    private static ExpectedError of(Variability row, int cores) {
        Account account = Account.of(
                        "E = t(n − 1) · CV / √n",
                        "Between cores only; the lab adds its own error.",
                        SampleSize.SOURCE,
                        row.source())
                .with("cv_pct", row.cvPct())
                .with("n", cores)
                .with("confidence", SampleSize.USUAL_CONFIDENCE);
        double halfWidthPct = SampleSize.halfWidthPct(row.cvPct(), cores, SampleSize.USUAL_CONFIDENCE);
        return new ExpectedError(row.element(), row.cvPct(), halfWidthPct, account);
    }
}

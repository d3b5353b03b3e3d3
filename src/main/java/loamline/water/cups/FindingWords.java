package loamline.water.cups;

import java.util.Locale;
import loamline.water.cups.OutputFit.Factor;

/** What is told of a head, in a sentence. */
final class FindingWords {
    private FindingWords() {}

    static String of(Suspicion suspicion, Verdict verdict, Factor factor, int reached) {
        if (reached < HeadFindings.LEAST_CUPS_A_HEAD) {
            return (reached == 0 ? "No cup stands" : reached == 1 ? "Only 1 cup stands" : "Only 2 cups stand")
                    + " in its throw: too few to judge it. Set three or more there.";
        }
        if (suspicion.named() && verdict == Verdict.UNSURE) {
            return "A single cup speaks against it. See whether that cup stood straight, and test again.";
        }
        return switch (verdict) {
            case OK -> "Nothing in the cups speaks against it.";
            case UNSURE -> "The cups can neither clear it nor name it. More cups in its throw would tell.";
            case WEAK ->
                "It gives " + percent(factor.factor()) + " of its share (" + percent(factor.low()) + " to "
                        + percent(factor.high()) + "). Look for a clogged filter or nozzle, a head that does not rise,"
                        + " or something in its way.";
            case STRONG ->
                "It gives " + percent(factor.factor()) + " of its share (" + percent(factor.low()) + " to "
                        + percent(factor.high()) + "). Look for a worn, missing or too large nozzle.";
            case TURNED -> arc(suspicion.fault().orElseThrow());
        };
    }

    private static String arc(Fault fault) {
        if (fault instanceof Fault.Turned turned) {
            return String.format(
                    Locale.ROOT,
                    "Its arc seems to be turned about %.0f° %s of where the map has it. Set it back, or correct the map.",
                    Math.abs(turned.deg()),
                    turned.deg() > 0 ? "clockwise" : "anticlockwise");
        }
        Fault.ShortArc part = (Fault.ShortArc) fault;
        return String.format(
                Locale.ROOT,
                "Its arc seems to end short: only about %.0f %% of it gets water, on the side of its %s edge. Open the"
                        + " arc, or clear what stands in the way.",
                100 * part.share(),
                part.atFirstEdge() ? "first (left)" : "second (right)");
    }

    private static String percent(double ratio) {
        return String.format(Locale.ROOT, "%.0f %%", 100 * ratio);
    }
}

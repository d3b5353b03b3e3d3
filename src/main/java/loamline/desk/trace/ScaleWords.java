package loamline.desk.trace;

import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import loamline.units.Formatting;
import loamline.units.Measure;
import loamline.units.UnitSystem;
import loamline.yard.Backdrop;
import loamline.yard.ImageEdits;
import loamline.yard.KnownDistance;
import loamline.yard.ScaleFit;
import loamline.yard.Yard;

/**
 * The scale of an image in words.
 *
 * @param line how well it is known
 * @param rows the known distances
 * @param warning what does not fit, and what to do; blank if all is well
 */
record ScaleWords(String line, List<Row> rows, String warning) {
    /**
     * A known distance.
     *
     * @param length as measured
     * @param residual how much longer it is on the image
     * @param isOff whether that is worth a warning
     */
    record Row(String length, String residual, boolean isOff) {}

    static ScaleWords of(Yard yard, Backdrop image, UnitSystem units) {
        boolean byHand = ImageEdits.isScaledByHand(yard);
        if (image.knownDistances().isEmpty()) {
            return new ScaleWords(withoutDistances(image), List.of(), "");
        }
        ScaleFit fit = byHand ? ScaleFit.of(image) : ScaleFit.check(image);
        List<Row> rows = IntStream.range(0, image.knownDistances().size())
                .mapToObj(i ->
                        row(image.knownDistances().get(i), fit.residualsRel().get(i), units))
                .toList();
        String line = byHand ? measured(image) : "Scale from the image, checked";
        return new ScaleWords(line, rows, fit.isOff() ? warning(fit, rows, byHand) : "");
    }

    private static String withoutDistances(Backdrop image) {
        return image.isScaleSet() ? "Scale and place from the image" : "Scale not set: measure a distance you know";
    }

    private static String measured(Backdrop image) {
        int n = image.knownDistances().size();
        return String.format(
                Locale.ROOT,
                "Scale from %s, ± %.1f %%",
                n == 1 ? "one distance" : n + " distances",
                100 * image.scaleErrorRel());
    }

    private static Row row(KnownDistance known, double residualRel, UnitSystem units) {
        return new Row(
                Formatting.format(Measure.LENGTH, known.lengthM(), units).text(),
                percent(residualRel),
                Math.abs(residualRel) > ScaleFit.WARN_REL);
    }

    private static String percent(double share) {
        String text = String.format(Locale.ROOT, "%+.1f %%", 100 * share).replace('-', '−');
        return text.equals("+0.0 %") || text.equals("−0.0 %") ? "0.0 %" : text;
    }

    private static String warning(ScaleFit fit, List<Row> rows, boolean byHand) {
        Row worst = rows.get(fit.worst());
        if (!byHand) {
            return "The image says " + worst.residual() + " for " + worst.length() + ": check the ends and the length.";
        }
        if (rows.size() == 2) {
            return "The two distances do not agree: measure a third to see which is off.";
        }
        return worst.length() + " is off most, by " + worst.residual() + ": check its ends and its length.";
    }
}

package loamline.desk.trace;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import loamline.account.Account;
import loamline.desk.session.Results;
import loamline.desk.tool.AssistTool;
import loamline.desk.tool.Tool;
import loamline.units.UnitSystem;
import loamline.yard.Backdrop;
import loamline.yard.ImageEdits;
import loamline.yard.ScaleFit;
import loamline.yard.Yard;

/**
 * What the Trace step shows.
 *
 * @param isEmpty whether there is neither an image nor anything drawn
 * @param result the step's line
 * @param image the image, if there is one
 * @param assist the settings of the assisted tool while it is in hand
 * @param doubts what is doubtful about the outline that it shows
 */
record TraceState(
        boolean isEmpty,
        String result,
        Optional<Image> image,
        Optional<AssistTool.Settings> assist,
        List<String> doubts) {
    /**
     * An image and how it is placed.
     *
     * @param words its name and size
     * @param scale its scale in words
     * @param needsScale whether nobody has measured it yet
     * @param canTurn whether north is to be set by hand
     * @param canTakeAlong whether what is drawn can go along when it is scaled or turned
     * @param why how its scale came about; empty without known distances
     */
    record Image(
            String words,
            double opacity,
            ScaleWords scale,
            boolean needsScale,
            boolean canTurn,
            boolean canTakeAlong,
            Optional<Account> why) {
        private static Image of(Yard yard, Backdrop backdrop, UnitSystem units) {
            boolean byHand = ImageEdits.isScaledByHand(yard);
            return new Image(
                    words(backdrop),
                    backdrop.opacity(),
                    ScaleWords.of(yard, backdrop, units),
                    !backdrop.isScaleSet(),
                    byHand,
                    ImageEdits.canTakeDrawnAlong(yard),
                    byHand && !backdrop.knownDistances().isEmpty()
                            ? Optional.of(ScaleFit.account(backdrop))
                            : Optional.empty());
        }

        private static String words(Backdrop backdrop) {
            return String.format(
                    Locale.ROOT, "%s, %,d × %,d px", name(backdrop.file()), backdrop.widthPx(), backdrop.heightPx());
        }

        private static String name(String file) {
            try {
                return String.valueOf(Path.of(file).getFileName());
            } catch (InvalidPathException e) {
                return file; // written on another system
            }
        }
    }

    static TraceState of(Yard yard, Optional<Results> results, Tool tool, UnitSystem units) {
        Optional<AssistTool> assist = tool instanceof AssistTool t ? Optional.of(t) : Optional.empty();
        return new TraceState(
                yard.backdrop().isEmpty() && yard.features().isEmpty(),
                TraceResult.of(results.map(Results::zones).orElse(List.of()), units),
                yard.backdrop().map(backdrop -> Image.of(yard, backdrop, units)),
                assist.map(AssistTool::settings),
                assist.flatMap(AssistTool::found)
                        .map(answer -> answer.found().doubts())
                        .orElse(List.of()));
    }
}

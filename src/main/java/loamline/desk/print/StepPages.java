package loamline.desk.print;

import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import loamline.sheets.SheetOptions;

/**
 * Pages of another step, which can be saved where all pages are.
 *
 * @param title such as {@code Water map}
 * @param fileName to offer, after the yard's
 * @param lack why there are none, as a sentence
 * @param made what makes them as they stand now, not on the screen's thread; empty if there are none
 */
public record StepPages(
        String title, String fileName, String lack, Supplier<Optional<Function<SheetOptions, byte[]>>> made) {}

package loamline.sheets;

import java.time.LocalDate;
import java.util.Optional;
import loamline.scene.Palette;
import loamline.units.UnitSystem;

/**
 * How pages are made.
 *
 * @param units how quantities are told
 * @param date the day the pages are for; without one there is a line to fill in
 * @param program name and version of the program, for the foot
 * @param palette colours; {@link Palette#PRINT} or its grey
 */
public record SheetOptions(Paper paper, UnitSystem units, Optional<LocalDate> date, String program, Palette palette) {
    /** Pages in colour without a date. */
    public static SheetOptions usual(Paper paper, UnitSystem units, String program) {
        return new SheetOptions(paper, units, Optional.empty(), program, Palette.PRINT);
    }

    public SheetOptions with(LocalDate day) {
        return new SheetOptions(paper, units, Optional.of(day), program, palette);
    }

    public SheetOptions with(Palette changed) {
        return new SheetOptions(paper, units, date, program, changed);
    }
}

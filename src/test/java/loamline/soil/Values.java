package loamline.soil;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Laboratory values for tests: sample A, 4 in deep, of 2026, unless a test says otherwise. */
final class Values {
    static final double FOUR_INCHES_M = 0.1016;

    private Values() {}

    static LabValue of(String element, double value, String unit, String test) {
        Element measured = Element.of(element).orElseThrow();
        LabValue.Made made = LabValue.Made.of(
                measured,
                unit,
                measured.isNutrient() ? test : "",
                measured.isNutrient() ? "" : test,
                OptionalDouble.of(FOUR_INCHES_M));
        return new LabValue("A", List.of(), measured, value, made, "lab", Optional.of(LocalDate.of(2026, 4, 1)), 2);
    }

    static LabValue withScoop(LabValue value, double gCm3) {
        return with(value, value.made().with(OptionalDouble.empty(), OptionalDouble.of(gCm3)));
    }

    static LabValue deep(LabValue value, double depthM, double gCm3) {
        return with(
                value, deep(value, OptionalDouble.of(depthM)).with(OptionalDouble.of(gCm3), OptionalDouble.empty()));
    }

    static LabValue deep(LabValue value, double depthM) {
        return with(value, deep(value, OptionalDouble.of(depthM)));
    }

    static LabValue withoutDepth(LabValue value) {
        return with(value, deep(value, OptionalDouble.empty()));
    }

    private static LabValue.Made deep(LabValue value, OptionalDouble depthM) {
        LabValue.Made made = value.made();
        return LabValue.Made.of(value.element(), made.unitText(), made.extractantText(), made.methodText(), depthM);
    }

    static LabValue on(LabValue value, LocalDate date) {
        return new LabValue(
                value.sample(),
                value.zones(),
                value.element(),
                value.value(),
                value.made(),
                value.lab(),
                Optional.of(date),
                value.line());
    }

    private static LabValue with(LabValue value, LabValue.Made made) {
        return new LabValue(
                value.sample(),
                value.zones(),
                value.element(),
                value.value(),
                made,
                value.lab(),
                value.date(),
                value.line());
    }
}

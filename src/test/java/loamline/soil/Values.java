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
        LabValue.Made made = new LabValue.Made(
                unit,
                measured.isNutrient() ? test : "",
                measured.isNutrient() ? "" : test,
                OptionalDouble.of(FOUR_INCHES_M),
                OptionalDouble.empty(),
                OptionalDouble.empty());
        return new LabValue("A", List.of(), measured, value, made, "lab", Optional.of(LocalDate.of(2026, 4, 1)), 2);
    }

    static LabValue withScoop(LabValue value, double gCm3) {
        LabValue.Made made = value.made();
        return with(
                value,
                new LabValue.Made(
                        made.unitText(),
                        made.extractantText(),
                        made.methodText(),
                        made.depthM(),
                        made.bulkDensityGCm3(),
                        OptionalDouble.of(gCm3)));
    }

    static LabValue deep(LabValue value, double depthM, double gCm3) {
        LabValue.Made made = value.made();
        return with(
                value,
                new LabValue.Made(
                        made.unitText(),
                        made.extractantText(),
                        made.methodText(),
                        OptionalDouble.of(depthM),
                        OptionalDouble.of(gCm3),
                        made.scoopDensityGCm3()));
    }

    static LabValue withoutDepth(LabValue value) {
        LabValue.Made made = value.made();
        return with(
                value,
                new LabValue.Made(
                        made.unitText(),
                        made.extractantText(),
                        made.methodText(),
                        OptionalDouble.empty(),
                        made.bulkDensityGCm3(),
                        made.scoopDensityGCm3()));
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

package loamline.soil;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loamline.account.Where;

/**
 * A value as a laboratory gave it.
 *
 * @param sample the sample's name
 * @param zones zones of the yard that the sample stands for; may be empty
 * @param value in the unit of {@code made}
 * @param made how it was measured
 * @param lab may be empty
 * @param line line of the file, counted from 1
 */
public record LabValue(
        String sample,
        List<String> zones,
        Element element,
        double value,
        Made made,
        String lab,
        Optional<LocalDate> date,
        int line) {

    public LabValue {
        zones = List.copyOf(zones);
    }

    /**
     * How a value was made, in the words of the file; empty texts where it does not say.
     *
     * @param depthM depth of the sample, m, above 0
     * @param bulkDensityGCm3 of the soil in place
     * @param scoopDensityGCm3 of the soil in the laboratory's scoop, to turn volumes into weights
     */
    public record Made(
            String unitText,
            String extractantText,
            String methodText,
            OptionalDouble depthM,
            OptionalDouble bulkDensityGCm3,
            OptionalDouble scoopDensityGCm3) {}

    /** The unit; pH needs none, conductivity and shares do. */
    public Optional<LabUnit> unit() {
        return made.unitText().isEmpty() && element.kind() == Element.Kind.PH
                ? Optional.of(LabUnit.PH)
                : LabUnit.of(made.unitText());
    }

    public Optional<Extractant> extractant() {
        return Extractant.of(made.extractantText());
    }

    public Optional<LabMethod> method() {
        return LabMethod.of(made.methodText(), element);
    }

    /** What a range must be made for to fit: the extractant, or the method of pH and conductivity; empty if unknown. */
    public Optional<String> test() {
        return switch (element) {
            case OM -> Optional.of("any");
            case PH, EC -> method().map(LabMethod::label);
            default -> extractant().map(Extractant::label);
        };
    }

    public Where where() {
        return Where.line(line);
    }
}

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
     * How a value was made: the words of the file, and what they mean where they mean something here.
     *
     * @param depthM depth of the sample, m
     * @param bulkDensityGCm3 of the soil in place
     * @param scoopDensityGCm3 of the soil in the laboratory's scoop, to turn volumes into weights
     */
    public record Made(
            String unitText,
            Optional<LabUnit> unit,
            String extractantText,
            Optional<Extractant> extractant,
            String methodText,
            Optional<LabMethod> method,
            OptionalDouble depthM,
            OptionalDouble bulkDensityGCm3,
            OptionalDouble scoopDensityGCm3) {

        /** From the words of a file; pH needs no unit. */
        public static Made of(Element element, String unit, String extractant, String method, OptionalDouble depthM) {
            boolean bare = unit.isEmpty() && element.kind() == Element.Kind.PH;
            return new Made(
                    unit,
                    bare ? Optional.of(LabUnit.PH) : LabUnit.of(unit),
                    extractant,
                    Extractant.of(extractant),
                    method,
                    LabMethod.of(method, element),
                    depthM,
                    OptionalDouble.empty(),
                    OptionalDouble.empty());
        }

        /** The same with densities, g/cm³. */
        public Made with(OptionalDouble bulkGCm3, OptionalDouble scoopGCm3) {
            return new Made(
                    unitText, unit, extractantText, extractant, methodText, method, depthM, bulkGCm3, scoopGCm3);
        }
    }

    public Optional<LabUnit> unit() {
        return made.unit();
    }

    public Optional<Extractant> extractant() {
        return made.extractant();
    }

    public Optional<LabMethod> method() {
        return made.method();
    }

    /** Whether it is in a unit. */
    boolean isIn(LabUnit unit) {
        return made.unit().filter(unit::equals).isPresent();
    }

    /** Whether it was taken out with an extractant. */
    boolean isBy(Extractant extractant) {
        return made.extractant().filter(extractant::equals).isPresent();
    }

    /** Whether it was measured by a method. */
    boolean isBy(LabMethod method) {
        return made.method().filter(method::equals).isPresent();
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

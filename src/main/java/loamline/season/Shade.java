package loamline.season;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loamline.account.Source;
import loamline.reference.LightClass;

/**
 * Whether turf stands in shade, and who says so: the list of targets before the sun study.
 *
 * @param words a sentence for the account
 * @param sunHours direct sun a day, where the study decided
 * @param source of the hours below which turf stands in shade, where the study decided
 */
record Shade(boolean isShaded, String words, OptionalDouble sunHours, Optional<Source> source) {
    /** Turf of darker classes than this one counts as shaded. */
    private static final String LIGHT_ENOUGH = "light shade";

    static Shade of(Target target, OptionalDouble sunHours) {
        if (target.keeping().shaded().isPresent()) {
            boolean told = target.keeping().shaded().get();
            String words = "The list of targets says that it stands " + (told ? "in shade." : "in no shade.");
            return new Shade(told, words, OptionalDouble.empty(), Optional.empty());
        }
        if (sunHours.isEmpty()) {
            return new Shade(false, "Nothing is told of shade.", sunHours, Optional.empty());
        }
        List<LightClass> classes = LightClass.published();
        LightClass here = classes.get(LightClass.of(sunHours.getAsDouble(), classes));
        LightClass enough = classes.stream()
                .filter(light -> light.name().equals(LIGHT_ENOUGH))
                .findFirst()
                .orElseThrow();
        return new Shade(
                here.fromHours() < enough.fromHours(),
                "By the sun study it stands in " + here.name() + "; less than " + Math.round(enough.fromHours())
                        + " h of direct sun a day count as shade.",
                sunHours,
                Optional.of(enough.source()));
    }
}

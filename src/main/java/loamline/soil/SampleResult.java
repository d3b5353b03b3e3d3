package loamline.soil;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What the newest test of a sample means.
 *
 * @param id the sample's name
 * @param zones zones of the yard that it stands for; may be empty
 * @param labs laboratories of the newest test, in the order of the file; blank ones left out
 * @param date of the newest test; empty if none of its values has one
 * @param ratings every value of the newest test, in the order of the file
 * @param texture from sand, silt and clay; empty if not known
 * @param saturations shares of the exchange for which a range is published; none where the exchange is refused
 * @param needs phosphorus and potassium to spread in the season
 * @param recommended what the laboratory itself recommends
 * @param cautions what to know before acting, in sentences
 */
public record SampleResult(
        String id,
        List<String> zones,
        List<String> labs,
        Optional<LocalDate> date,
        List<Rating> ratings,
        Optional<Texture> texture,
        Advice<Exchange> exchange,
        List<Saturation> saturations,
        Sodium sodium,
        Advice<Lime> lime,
        Advice<Sulfur> sulfur,
        Advice<Gypsum> gypsum,
        Needs needs,
        Recommended recommended,
        List<String> cautions) {
    public SampleResult {
        zones = List.copyOf(zones);
        labs = List.copyOf(labs);
        ratings = List.copyOf(ratings);
        saturations = List.copyOf(saturations);
        cautions = List.copyOf(cautions);
    }

    /** pH in water; empty if the test has none that is sound. */
    public Optional<Double> waterPh() {
        return ratings.stream()
                .filter(r -> r.value().element() == Element.PH && r.value().isBy(LabMethod.WATER))
                .flatMap(r -> r.standing().value().stream())
                .map(Rating.Standing::value)
                .findFirst();
    }
}

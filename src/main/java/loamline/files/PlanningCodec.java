package loamline.files;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import loamline.yard.Extras;
import loamline.yard.PlanOptions;
import loamline.yard.PlanOptions.Place;
import loamline.yard.PlanOptions.Rounds;
import loamline.yard.Probe;
import org.jspecify.annotations.Nullable;

/**
 * How cores are to be planned, as it stands in files. What is missing is as usual; so is what is out of its range,
 * which is reported.
 */
final class PlanningCodec {
    private static final JsonNames NAMES = JsonNames.of(
            "kits",
            "cores",
            "edgeBufferM",
            "edgeBufferFt",
            "trunkBufferM",
            "trunkBufferFt",
            "headBufferM",
            "headBufferFt",
            "place",
            "spares",
            "seed",
            "bags",
            "probeDiameterM",
            "probeDiameterFt",
            "probeDepthM",
            "probeDepthFt");

    private PlanningCodec() {}

    static PlanOptions read(JsonMembers p) {
        PlanOptions usual = PlanOptions.USUAL;
        Probe probe = usual.probe();
        return new PlanOptions(
                whole(p, "kits", 1, Integer.MAX_VALUE),
                whole(p, "cores", 1, PlanOptions.MOST_CORES).orElse(usual.coresPerComposite()),
                length(p, "edgeBuffer", 0).orElse(usual.edgeBufferM()),
                length(p, "trunkBuffer", 0).orElse(usual.trunkBufferM()),
                length(p, "headBuffer", 0).orElse(usual.headBufferM()),
                p.word("place", word -> named(Place.values(), word), "centre or random")
                        .orElse(usual.place()),
                whole(p, "spares", 0, PlanOptions.MOST_SPARES).orElse(usual.sparesPerStratum()),
                seed(p),
                p.word("bags", word -> named(Rounds.values(), word), "one or all")
                        .orElse(usual.walk()),
                new Probe(
                        length(p, "probeDiameter", Double.MIN_VALUE).orElse(probe.diameterM()),
                        length(p, "probeDepth", Double.MIN_VALUE).orElse(probe.depthM())),
                new Extras(p.others(NAMES)));
    }

    private static OptionalInt whole(JsonMembers p, String name, int least, int most) {
        OptionalInt value = p.whole(name);
        if (value.isEmpty() || (value.getAsInt() >= least && value.getAsInt() <= most)) {
            return value;
        }
        p.wrong(name, "a whole number from " + least + (most == Integer.MAX_VALUE ? " on" : " to " + most));
        return OptionalInt.empty();
    }

    private static OptionalDouble length(JsonMembers p, String stem, double leastM) {
        OptionalDouble value = p.lengthM(stem);
        if (value.isEmpty() || value.getAsDouble() >= leastM) {
            return value;
        }
        p.wrong(stem + "M", leastM > 0 ? "a length above 0" : "a length of 0 or more");
        return OptionalDouble.empty();
    }

    /** Seeds use all bits of a long, which a double has not. */
    private static long seed(JsonMembers p) {
        Object value = p.members().get("seed");
        if (value instanceof Long seed) {
            return seed;
        }
        if (value != null) {
            p.wrong("seed", "a whole number");
        }
        return PlanOptions.USUAL.seed();
    }

    private static <E extends Enum<E>> Optional<E> named(E[] values, String word) {
        return Arrays.stream(values)
                .filter(value -> value.name().equalsIgnoreCase(word.strip()))
                .findFirst();
    }

    static Map<String, @Nullable Object> written(PlanOptions options) {
        Map<String, @Nullable Object> members = new LinkedHashMap<>();
        options.kits().ifPresent(kits -> members.put("kits", kits));
        members.put("cores", options.coresPerComposite());
        members.put("edgeBufferM", options.edgeBufferM());
        members.put("trunkBufferM", options.trunkBufferM());
        members.put("headBufferM", options.headBufferM());
        members.put("place", options.place().name().toLowerCase(Locale.ROOT));
        members.put("spares", options.sparesPerStratum());
        members.put("seed", options.seed());
        members.put("bags", options.walk().name().toLowerCase(Locale.ROOT));
        members.put("probeDiameterM", options.probe().diameterM());
        members.put("probeDepthM", options.probe().depthM());
        NAMES.addOthers(options.extras().members(), members);
        return members;
    }
}

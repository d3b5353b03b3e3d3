package loamline.yard;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A core that the yard itself holds, with the spares that stand in for it. A spare is known by its id: that of a core
 * of the same bag, an s, and a number if it is not the first.
 *
 * @param core the core
 * @param spares first choice first, as listed
 */
public record OwnCore(Core core, List<Core> spares) {
    private static final Pattern SPARE = Pattern.compile("(.+)s\\d*");

    public OwnCore {
        spares = List.copyOf(spares);
    }

    /** The cores of a yard, in their order. */
    public static List<OwnCore> of(Yard yard) {
        Map<String, Core> byId = new LinkedHashMap<>();
        yard.all(Core.class).forEach(core -> byId.putIfAbsent(address(core.composite(), core.id()), core));
        return yard.all(Core.class)
                .filter(core -> standsInFor(core, byId).isEmpty())
                .map(core -> new OwnCore(
                        core,
                        yard.all(Core.class)
                                .filter(spare -> standsInFor(spare, byId)
                                        .filter(core::equals)
                                        .isPresent())
                                .toList()))
                .toList();
    }

    private static Optional<Core> standsInFor(Core spare, Map<String, Core> byId) {
        Matcher id = SPARE.matcher(spare.id());
        return id.matches() ? Optional.ofNullable(byId.get(address(spare.composite(), id.group(1)))) : Optional.empty();
    }

    private static String address(String composite, String id) {
        return composite + "\n" + id;
    }
}

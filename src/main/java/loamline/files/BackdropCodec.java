package loamline.files;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import loamline.yard.Backdrop;
import loamline.yard.Backdrop.Placement;
import loamline.yard.Extras;
import org.jspecify.annotations.Nullable;

/** The image under the outlines, as it stands in files; the placement as its six numbers a to f. */
final class BackdropCodec {
    private static final JsonNames NAMES =
            JsonNames.of("file", "widthPx", "heightPx", "placement", "scaleErrorRel", "opacity");

    private BackdropCodec() {}

    /** Empty, and reported, if the file, its size or its placement is missing: an image is nothing without them. */
    static Optional<Backdrop> read(JsonMembers backdrop) {
        Optional<String> file = backdrop.text("file");
        OptionalInt widthPx = backdrop.whole("widthPx");
        OptionalInt heightPx = backdrop.whole("heightPx");
        Optional<Placement> placement = placement(backdrop);
        if (file.isEmpty() || widthPx.isEmpty() || heightPx.isEmpty() || placement.isEmpty()) {
            backdrop.log()
                    .error(
                            "BACKDROP_INCOMPLETE",
                            backdrop.pointer(),
                            "needs “file”, “widthPx”, “heightPx” and “placement” (six numbers): open the image again");
            return Optional.empty();
        }
        return Optional.of(new Backdrop(
                file.get(),
                widthPx.getAsInt(),
                heightPx.getAsInt(),
                placement.get(),
                backdrop.number("scaleErrorRel", 0),
                backdrop.number("opacity", 1),
                new Extras(backdrop.others(NAMES))));
    }

    private static Optional<Placement> placement(JsonMembers backdrop) {
        double[] n = backdrop.list("placement").stream()
                .mapToDouble(v -> v instanceof Number number ? number.doubleValue() : Double.NaN)
                .filter(Double::isFinite)
                .toArray();
        return n.length == 6 ? Optional.of(new Placement(n[0], n[1], n[2], n[3], n[4], n[5])) : Optional.empty();
    }

    static Map<String, @Nullable Object> written(Backdrop backdrop) {
        Placement p = backdrop.placement();
        Map<String, @Nullable Object> members = new LinkedHashMap<>();
        members.put("file", backdrop.file());
        members.put("widthPx", backdrop.widthPx());
        members.put("heightPx", backdrop.heightPx());
        members.put("placement", List.of(p.a(), p.b(), p.c(), p.d(), p.e(), p.f()));
        members.put("scaleErrorRel", backdrop.scaleErrorRel());
        members.put("opacity", backdrop.opacity());
        NAMES.addOthers(backdrop.extras().members(), members);
        return members;
    }
}

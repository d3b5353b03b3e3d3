package loamline.files;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import loamline.geometry.Point;
import loamline.geometry.Shape;
import loamline.yard.Feature;
import loamline.yard.Kind;
import loamline.yard.Unknown;
import org.jspecify.annotations.Nullable;

/**
 * One feature of a file, read as far as it can be without knowing where the yard lies.
 *
 * @param pointer where it stands
 * @param key its key, if it has one
 * @param asRead all of it but the key, as it stands in the file that it first came from
 * @param content what it says; empty if that is not understood, and reported why
 */
record FeatureRead(
        String pointer, Optional<String> key, Map<String, @Nullable Object> asRead, Optional<Content> content) {
    /** A feature of a known kind with a shape that this kind can have; the shape in the file's coordinates. */
    record Content(
            Kind kind, JsonMembers feature, JsonMembers properties, FeatureLayout.Drawing drawing, JsonNames names) {
        private Content withProperty(String name, String value) {
            Map<Object, @Nullable Object> more = new LinkedHashMap<>(properties.members());
            more.put(name, value);
            return new Content(
                    kind, feature, new JsonMembers(more, properties.pointer(), properties.log()), drawing, names);
        }

        private Feature feature(String key, UnaryOperator<Point> toYard) {
            FeatureCodec<?, ?> codec = FeatureCodecs.of(kind);
            FeatureExtras extras =
                    new FeatureExtras(feature.others(names), properties.others(codec.names()), drawing.others());
            return codec.read(kind, key, drawing.drawn(toYard), properties, extras.joined());
        }
    }

    static FeatureRead of(@Nullable Object raw, String pointer, FeatureLayout layout, ProblemLog log) {
        if (!(raw instanceof Map<?, ?> members)) {
            log.error("WRONG_TYPE", pointer, "a feature must be an object in { }, not " + JsonText.excerpt(raw, 40));
            Map<String, @Nullable Object> value = new LinkedHashMap<>();
            value.put("value", raw);
            return new FeatureRead(pointer, Optional.empty(), value, Optional.empty());
        }
        JsonMembers feature = new JsonMembers(members, pointer, log);
        Optional<String> key = feature.text(layout.keyName()).filter(text -> !text.isEmpty());
        return new FeatureRead(pointer, key, asRead(members, layout), content(feature, layout));
    }

    /** The features of a yard, as many and in the same order, each under a key of its own. */
    static List<Feature> features(List<FeatureRead> read, UnaryOperator<Point> toYard, ProblemLog log) {
        Keys keys = new Keys(read.stream().flatMap(f -> f.key().stream()).toList());
        return read.stream()
                .map(f -> f.feature(keys.next(f.key(), f.pointer(), log), toYard, log))
                .toList();
    }

    private static Map<String, @Nullable Object> asRead(Map<?, ?> raw, FeatureLayout layout) {
        Map<?, ?> first = raw.get(layout.asReadName()) instanceof Map<?, ?> inner ? inner : raw;
        Map<String, @Nullable Object> members = new LinkedHashMap<>();
        first.forEach((name, value) -> members.put(String.valueOf(name), value));
        if (first == raw) {
            members.remove(layout.keyName());
        }
        return members;
    }

    private static Optional<Content> content(JsonMembers feature, FeatureLayout layout) {
        if (feature.members().containsKey(layout.asReadName())) {
            feature.log()
                    .infoOnce(
                            "UNKNOWN_FEATURE",
                            "",
                            feature.pointer(),
                            "this was not understood when it was first read; it is kept as it was but not used");
            return Optional.empty();
        }
        if (!layout.isFeature(feature)) {
            return Optional.empty();
        }
        JsonMembers properties = feature.object("properties")
                .orElseGet(() -> new JsonMembers(Map.of(), feature.at("properties"), feature.log()));
        return kind(layout.kindHolder(feature, properties))
                .flatMap(kind -> drawing(feature, kind, layout)
                        .map(drawing -> new Content(kind, feature, properties, drawing, layout.names())));
    }

    private static Optional<Kind> kind(JsonMembers holder) {
        String word = holder.text("kind", "");
        Optional<Kind> kind = Kind.of(word);
        if (word.isBlank()) {
            holder.log()
                    .warning(
                            "KIND_MISSING",
                            holder.at("kind"),
                            "nothing says what this is; it is kept but not used: give “kind”, as in turf or building");
        } else if (kind.isEmpty()) {
            holder.log()
                    .infoOnce(
                            "UNKNOWN_KIND",
                            word,
                            holder.at("kind"),
                            "the kind “" + word + "” is not known here; it is kept as it is but not used");
        }
        return kind;
    }

    private static Optional<? extends FeatureLayout.Drawing> drawing(
            JsonMembers feature, Kind kind, FeatureLayout layout) {
        FeatureCodec<?, ?> codec = FeatureCodecs.of(kind);
        Optional<? extends FeatureLayout.Drawing> drawing = layout.drawing(feature);
        if (drawing.isPresent() && !codec.takes(drawing.get().shape())) {
            feature.log()
                    .error(
                            "GEOMETRY_TYPE",
                            feature.pointer(),
                            "a " + kind.word() + " must be " + codec.drawnAs()
                                    + ": draw it again, or correct its kind");
            return Optional.empty();
        }
        return drawing;
    }

    /** The shape in the file's coordinates, if the content is understood. */
    Optional<Shape> shape() {
        return content.map(c -> c.drawing().shape());
    }

    /** The same, kept but not used. */
    FeatureRead setAside() {
        return new FeatureRead(pointer, key, asRead, Optional.empty());
    }

    /** A property as it stands, if the content is understood. */
    Optional<Object> property(String name) {
        return content.flatMap(c -> Optional.ofNullable(c.properties().members().get(name)));
    }

    boolean is(Kind kind) {
        return content.isPresent() && content.get().kind() == kind;
    }

    /** The same with a property more, if the content is understood. */
    FeatureRead withProperty(String name, String value) {
        return new FeatureRead(pointer, key, asRead, content.map(c -> c.withProperty(name, value)));
    }

    /** The feature of the yard; what is not understood is kept as it stands. */
    private Feature feature(String newKey, UnaryOperator<Point> toYard, ProblemLog log) {
        return content.<Feature>map(c -> c.feature(newKey, toYard))
                .orElseGet(() -> new Unknown(newKey, Kept.extras(asRead, pointer, log)));
    }
}

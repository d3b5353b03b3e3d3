package loamline.desk.store;

import java.io.IOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import loamline.files.JsonFile;
import loamline.units.UnitSystem;
import org.jspecify.annotations.Nullable;

/**
 * What the user chose for the window, whatever yard is open.
 *
 * @param units shown
 * @param theme light or dark
 * @param textPx size of body text, from {@link #LEAST_TEXT_PX} to {@link #MOST_TEXT_PX}
 * @param folders the folder used last, by what for (as in "yards", "images")
 * @param folded names of the facts that are folded away
 * @param welcomed whether the welcome was dismissed
 */
public record Settings(
        UnitSystem units, Theme theme, int textPx, Map<String, Path> folders, List<String> folded, boolean welcomed) {
    /** The window's colours. */
    public enum Theme {
        LIGHT,
        DARK
    }

    public static final int LEAST_TEXT_PX = 11;
    public static final int MOST_TEXT_PX = 20;

    /** What holds before anything was chosen. */
    public static final Settings USUAL = new Settings(UnitSystem.US, Theme.LIGHT, 13, Map.of(), List.of(), false);

    public Settings {
        textPx = Math.max(LEAST_TEXT_PX, Math.min(MOST_TEXT_PX, textPx));
        folders = Map.copyOf(folders);
        folded = List.copyOf(new TreeSet<>(folded));
    }

    public Settings withUnits(UnitSystem changed) {
        return new Settings(changed, theme, textPx, folders, folded, welcomed);
    }

    public Settings withTheme(Theme changed) {
        return new Settings(units, changed, textPx, folders, folded, welcomed);
    }

    public Settings withTextPx(int changed) {
        return new Settings(units, theme, changed, folders, folded, welcomed);
    }

    public Settings withFolder(String purpose, Path folder) {
        Map<String, Path> changed = new LinkedHashMap<>(folders);
        changed.put(purpose, folder);
        return new Settings(units, theme, textPx, changed, folded, welcomed);
    }

    public Settings withFolded(List<String> changed) {
        return new Settings(units, theme, textPx, folders, changed, welcomed);
    }

    public Settings welcomedNow() {
        return new Settings(units, theme, textPx, folders, folded, true);
    }

    /** The settings in a file; what is missing, damaged or unknown there is as in {@link #USUAL}. */
    static Settings read(Path file) {
        Map<String, @Nullable Object> members = JsonFile.read(file).orElse(Map.of());
        Map<String, Path> folders = new LinkedHashMap<>();
        if (members.get("folders") instanceof Map<?, ?> map) {
            map.forEach((purpose, folder) -> path(folder).ifPresent(p -> folders.put(String.valueOf(purpose), p)));
        }
        return new Settings(
                choice(UnitSystem.values(), members.get("units"), USUAL.units()),
                choice(Theme.values(), members.get("theme"), USUAL.theme()),
                members.get("textPx") instanceof Number px ? px.intValue() : USUAL.textPx(),
                folders,
                members.get("folded") instanceof List<?> list ? texts(list) : List.of(),
                Boolean.TRUE.equals(members.get("welcomed")));
    }

    void write(Path file) throws IOException {
        Map<String, @Nullable Object> members = new LinkedHashMap<>();
        members.put("units", units.name());
        members.put("theme", theme.name());
        members.put("textPx", textPx);
        Map<String, @Nullable Object> places = new LinkedHashMap<>();
        folders.keySet().stream()
                .sorted()
                .forEach(purpose -> places.put(purpose, String.valueOf(folders.get(purpose))));
        members.put("folders", places);
        members.put("folded", folded);
        members.put("welcomed", welcomed);
        JsonFile.write(file, members);
    }

    private static <E extends Enum<E>> E choice(E[] all, @Nullable Object name, E usual) {
        return Arrays.stream(all).filter(e -> e.name().equals(name)).findFirst().orElse(usual);
    }

    static List<String> texts(List<?> list) {
        return list.stream()
                .filter(String.class::isInstance)
                .map(String.class::cast)
                .toList();
    }

    /** A path as written in JSON; empty for anything that is none on this system. */
    static Optional<Path> path(@Nullable Object text) {
        try {
            return text instanceof String s && !s.isBlank() ? Optional.of(Path.of(s)) : Optional.empty();
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }
}

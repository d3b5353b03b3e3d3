package loamline.desk.store;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The program's own folders in the user's home.
 *
 * @param config what the user chose, kept for good
 * @param state what the program remembers from one run to the next
 */
public record Home(Path config, Path state) {
    /** The system property that puts both folders into another one. */
    public static final String PROPERTY = "loamline.home";

    private static final String NAME = "loamline";

    /** The folders of whoever runs the program. */
    public static Home ofUser() {
        return Optional.ofNullable(System.getProperty(PROPERTY))
                .map(folder -> in(Path.of(folder)))
                .orElseGet(() -> of(
                        System.getProperty("os.name", ""),
                        Path.of(System.getProperty("user.home", ".")),
                        name -> System.getenv(name)));
    }

    /** Both folders inside another. */
    public static Home in(Path folder) {
        return new Home(folder.resolve("config"), folder.resolve("state"));
    }

    /**
     * The folders by each system's custom: the XDG base directories on Linux, {@code Library} on macOS, AppData on
     * Windows.
     *
     * @param environment a variable's value, or null
     */
    static Home of(String system, Path user, Environment environment) {
        String lower = system.toLowerCase(Locale.ROOT);
        if (lower.startsWith("windows")) {
            return new Home(
                    folder(environment, "APPDATA", user.resolve("AppData/Roaming"))
                            .resolve(NAME),
                    folder(environment, "LOCALAPPDATA", user.resolve("AppData/Local"))
                            .resolve(NAME));
        }
        if (lower.startsWith("mac")) {
            Path support = user.resolve("Library/Application Support").resolve(NAME);
            return new Home(support, support.resolve("state"));
        }
        return new Home(
                folder(environment, "XDG_CONFIG_HOME", user.resolve(".config")).resolve(NAME),
                folder(environment, "XDG_STATE_HOME", user.resolve(".local/state"))
                        .resolve(NAME));
    }

    /** Looks up variables of the environment. */
    @FunctionalInterface
    interface Environment {
        @Nullable
        String value(String name);
    }

    /** A variable's folder; a relative one does not count, as the XDG base directory specification has it. */
    private static Path folder(Environment environment, String variable, Path usual) {
        return Optional.ofNullable(environment.value(variable))
                .filter(value -> !value.isBlank())
                .map(Path::of)
                .filter(Path::isAbsolute)
                .orElse(usual);
    }
}

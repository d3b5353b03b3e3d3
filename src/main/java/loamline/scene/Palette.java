package loamline.scene;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * A colour for every role.
 *
 * @param inks one for each {@link Role}
 */
public record Palette(Map<Role, Ink> inks) {
    private static final List<Role> TINTS = List.of(Role.TINT_1, Role.TINT_2, Role.TINT_3, Role.TINT_4);

    public static final Palette LIGHT = filled(Role::light);
    public static final Palette DARK = filled(Role::dark);
    /** Light on white paper; every sign keeps its shape and its step of grey without colour. */
    public static final Palette PRINT = LIGHT.with(Role.PAPER, Role.PANEL.light());

    /** @throws IllegalArgumentException if a role has no colour */
    public Palette {
        EnumMap<Role, Ink> copy = new EnumMap<>(inks);
        for (Role role : Role.values()) {
            if (!copy.containsKey(role)) {
                throw new IllegalArgumentException("no colour for " + role);
            }
        }
        inks = Collections.unmodifiableMap(copy);
    }

    private static Palette filled(Function<Role, Ink> ink) {
        EnumMap<Role, Ink> inks = new EnumMap<>(Role.class);
        for (Role role : Role.values()) {
            inks.put(role, ink.apply(role));
        }
        return new Palette(inks);
    }

    public Ink of(Role role) {
        Ink ink = inks.get(role);
        if (ink == null) {
            throw new IllegalStateException("a palette holds every role: " + role);
        }
        return ink;
    }

    /** The edge tint of the zone at a position of the list, in turn. */
    public Ink tint(int zone) {
        return of(TINTS.get(zone % TINTS.size()));
    }

    /** The same palette with one colour replaced. */
    public Palette with(Role role, Ink ink) {
        return filled(each -> each == role ? ink : of(each));
    }

    /** Whether no colour has a hue. */
    public boolean isGrey() {
        return inks.values().stream().allMatch(ink -> ink.equals(ink.grey()));
    }

    /** The same palette as a grey printer shows it. */
    public Palette grey() {
        return filled(each -> of(each).grey());
    }
}

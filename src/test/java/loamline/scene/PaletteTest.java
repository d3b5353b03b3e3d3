package loamline.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Contrast by WCAG 2.1, "relative luminance" and "contrast ratio". */
class PaletteTest {
    private static final List<Role> TEXT = List.of(Role.INK, Role.SOFT, Role.ACCENT, Role.WARN, Role.ERROR, Role.INFO);
    private static final List<Role> GROUND = List.of(Role.PAPER, Role.PANEL);

    private static double contrast(Ink a, Ink b) {
        double lighter = Math.max(luminance(a), luminance(b));
        double darker = Math.min(luminance(a), luminance(b));
        return (lighter + 0.05) / (darker + 0.05);
    }

    private static double luminance(Ink ink) {
        return 0.2126 * linear(ink.red()) + 0.7152 * linear(ink.green()) + 0.0722 * linear(ink.blue());
    }

    private static double linear(int channel) {
        double c = channel / 255.0;
        return c <= 0.03928 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    }

    @Test
    void wordsReadWellOnPaperAndPanel() {
        for (Role ground : GROUND) {
            for (Role text : TEXT) {
                assertThat(contrast(Palette.LIGHT.of(text), Palette.LIGHT.of(ground)))
                        .as("light, " + text + " on " + ground)
                        .isGreaterThanOrEqualTo(5.8);
                assertThat(contrast(Palette.DARK.of(text), Palette.DARK.of(ground)))
                        .as("dark, " + text + " on " + ground)
                        .isGreaterThanOrEqualTo(6.6);
            }
        }
    }

    @Test
    void theNumberOfACoreReadsWellWithoutColour() {
        for (Palette palette : List.of(Palette.PRINT.grey(), Palette.DARK.grey())) {
            assertThat(contrast(palette.of(Role.INK), palette.of(Role.PANEL))).isGreaterThan(12);
        }
    }

    @Test
    void edgesStandOffTheirWashWithoutColour() {
        Map<Role, Role> edges = Map.of(
                Role.TURF_EDGE, Role.TURF,
                Role.BED_MARK, Role.BED,
                Role.GRAVEL_MARK, Role.GRAVEL,
                Role.DECK_MARK, Role.DECK,
                Role.WATER_MARK, Role.WATER,
                Role.BUILDING_EDGE, Role.BUILDING,
                Role.CROWN_EDGE, Role.CROWN,
                Role.STRATA, Role.TURF);
        Palette grey = Palette.PRINT.grey();
        edges.forEach((edge, wash) -> assertThat(contrast(grey.of(edge), grey.of(wash)))
                .as(edge + " on " + wash)
                .isGreaterThan(2));
    }

    @Test
    void greyHasNoColour() {
        for (Role role : Role.values()) {
            Ink ink = Palette.PRINT.grey().of(role);
            assertThat(ink.red()).isEqualTo(ink.green()).isEqualTo(ink.blue());
        }
    }

    @Test
    void aPaletteHoldsEveryRole() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Palette(Map.of(Role.INK, Ink.of(0))))
                .withMessageContaining("PAPER");
    }
}

package loamline.desk.theme;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Contrast as WCAG 2.1 defines it (success criteria 1.4.3 and 1.4.11). */
class ContrastTest {
    private static final double TEXT = 4.5;
    private static final double SIGN = 3.0;

    private static final List<String> GROUNDS = List.of("paper", "panel", "tint");
    private static final List<String> LETTERS = List.of("ink", "soft", "accent", "warn", "error", "info");

    private static final Pattern RULE = Pattern.compile("([^{}]+)\\{([^{}]*)}");
    private static final Pattern TEXT_FILL = Pattern.compile("-fx-(?:prompt-)?text-fill: -([\\w-]+);");
    private static final Pattern GROUND = Pattern.compile("-fx-background-color: -([\\w-]+);");

    private static final String CSS = css();

    private static String css() {
        try (InputStream in = ContrastTest.class.getResourceAsStream("/loamline/desk/desk.css")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).replaceAll("(?s)/\\*.*?\\*/", "");
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static Map<String, Integer> colours(String theme) {
        Matcher block = Pattern.compile("\\.desk\\." + theme + " \\{([^}]*)}").matcher(CSS);
        assertThat(block.find()).isTrue();
        Map<String, Integer> colours = new LinkedHashMap<>();
        Matcher token = Pattern.compile("-([\\w-]+): #([0-9A-Fa-f]{6});").matcher(block.group(1));
        while (token.find()) {
            colours.put(token.group(1), Integer.parseInt(token.group(2), 16));
        }
        return colours;
    }

    private static double contrast(int a, int b) {
        double lighter = Math.max(luminance(a), luminance(b));
        double darker = Math.min(luminance(a), luminance(b));
        return (lighter + 0.05) / (darker + 0.05);
    }

    private static double luminance(int rgb) {
        return 0.2126 * linear(rgb >> 16 & 255) + 0.7152 * linear(rgb >> 8 & 255) + 0.0722 * linear(rgb & 255);
    }

    private static double linear(int channel) {
        double c = channel / 255.0;
        return c <= 0.03928 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    }

    @Test
    void blackOnWhiteIsTwentyOneToOne() {
        assertThat(contrast(0x000000, 0xFFFFFF)).isEqualTo(21);
    }

    @ParameterizedTest
    @ValueSource(strings = {"light", "dark"})
    void textCanBeReadOnEveryGround(String theme) {
        Map<String, Integer> colours = colours(theme);
        for (String ground : GROUNDS) {
            for (String letters : LETTERS) {
                assertThat(contrast(colours.get(letters), colours.get(ground)))
                        .as(letters + " on " + ground)
                        .isGreaterThanOrEqualTo(TEXT);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"light", "dark"})
    void whereARuleSetsBothColoursTheTextCanBeRead(String theme) {
        Map<String, Integer> colours = colours(theme);
        int pairs = 0;
        Matcher rule = RULE.matcher(CSS);
        while (rule.find()) {
            Matcher ground = GROUND.matcher(rule.group(2));
            Matcher letters = TEXT_FILL.matcher(rule.group(2));
            while (ground.find() && letters.find()) {
                assertThat(contrast(colours.get(letters.group(1)), colours.get(ground.group(1))))
                        .as(rule.group(1).strip())
                        .isGreaterThanOrEqualTo(TEXT);
                pairs++;
            }
        }
        assertThat(pairs).isGreaterThan(3);
    }

    @ParameterizedTest
    @ValueSource(strings = {"light", "dark"})
    void theFocusRingCanBeSeen(String theme) {
        Map<String, Integer> colours = colours(theme);
        GROUNDS.forEach(ground ->
                assertThat(contrast(colours.get("select"), colours.get(ground))).isGreaterThanOrEqualTo(SIGN));
    }

    @Test
    void everyColourThatIsUsedIsDefinedInBothThemes() {
        Matcher used =
                Pattern.compile("[: ]-((?!fx-|color-)[a-z][\\w-]*)(?=[;, ])").matcher(CSS);
        assertThat(colours("dark").keySet()).isEqualTo(colours("light").keySet());
        while (used.find()) {
            assertThat(colours("light")).containsKey(used.group(1));
        }
    }
}

package loamline.desk.foot;

import java.util.Locale;
import loamline.account.Severity;
import loamline.desk.theme.Icons;
import org.kordamp.ikonli.feather.Feather;
import org.kordamp.ikonli.javafx.FontIcon;

/** An octagon, a triangle or a ring in the severity's colour; words stand beside it. */
final class SeveritySign {
    private SeveritySign() {}

    static FontIcon of(Severity severity) {
        FontIcon sign = Icons.of(
                switch (severity) {
                    case ERROR -> Feather.ALERT_OCTAGON;
                    case WARNING -> Feather.ALERT_TRIANGLE;
                    case INFO -> Feather.INFO;
                });
        sign.getStyleClass().add("severity-" + severity.name().toLowerCase(Locale.ROOT));
        return sign;
    }
}

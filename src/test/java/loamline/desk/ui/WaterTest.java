package loamline.desk.ui;

import static loamline.desk.WindowDriver.onScreen;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import javafx.scene.input.KeyCode;
import loamline.cli.Demo;
import loamline.desk.WindowDriver;
import loamline.desk.session.Selection;
import loamline.yard.Attachment;
import loamline.yard.Attachment.Sort;
import loamline.yard.Head;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Holes and cups of the demo yard, as somebody at the Water step meets them. */
@Tag("window")
class WaterTest {
    private WindowDriver window;

    @BeforeEach
    void open() throws IOException {
        window = WindowDriver.open(Demo.yard());
        window.keys(KeyCode.SHORTCUT, KeyCode.DIGIT6).settle();
    }

    @AfterEach
    void close() {
        window.close();
    }

    @Test
    void theHoleAndTheHeadAtFaultAreNamed() {
        assertThat(window.reads("1 hole, 103 ft²")).isTrue();
        assertThat(window.reads("cup test due on valve 3")).isTrue();
        assertThat(window.reads("Head h10")).isTrue();
    }

    @Test
    void aLargerThrowClosesTheHole() {
        onScreen(() -> {
            List<String> round = window.session()
                    .shown()
                    .get()
                    .all(Head.class)
                    .filter(head -> head.valve().equals("2"))
                    .map(Head::key)
                    .toList();
            window.session().selection().set(Selection.ofFeatures(round));
            return round;
        });
        window.fill("Radius", "30 ft").settle();
        window.until("the hole to close", () -> window.reads("No holes"));
        onScreen(() -> {
            window.map().requestFocus();
            return window;
        });
        window.keys(KeyCode.SHORTCUT, KeyCode.Z).settle();
        window.until("the hole to come back", () -> window.reads("1 hole, 103 ft²"));
    }

    @Test
    void aReadingThatIsNoNumberIsToldWithItsLine() {
        onScreen(() -> {
            var session = window.session();
            Attachment readings = session.shown().get().attached(Sort.READINGS).get(0);
            Attachment wrong = Attachment.of(
                    Sort.READINGS,
                    readings.name(),
                    readings.about(),
                    readings.text().replaceFirst(",18,", ",much,"));
            session.edit("type", session.shown().get().attaching(wrong));
            return session;
        });
        window.settle();
        window.until("the line to be named", () -> window.reads("Line 2: Ml should be"));
    }
}

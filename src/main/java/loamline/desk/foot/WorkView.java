package loamline.desk.foot;

import java.util.ArrayList;
import java.util.List;
import javafx.beans.InvalidationListener;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import loamline.desk.session.Job;
import loamline.desk.session.Work;

/** The foot's part for background work: what runs, with a bar and Cancel; what stopped, with a way to do it again. */
final class WorkView extends HBox {
    private final Work work;

    WorkView(Work work) {
        super(12);
        this.work = work;
        InvalidationListener change = o -> show();
        work.running().addListener(change);
        work.stopped().addListener(change);
        show();
    }

    private void show() {
        List<Node> parts = new ArrayList<>();
        work.stopped().get().forEach(stopped -> parts.add(stopped(stopped)));
        work.running().get().forEach(job -> parts.add(running(job)));
        getChildren().setAll(parts);
    }

    private Node running(Job job) {
        ProgressBar bar = new ProgressBar(job.share().orElse(ProgressBar.INDETERMINATE_PROGRESS));
        bar.setAccessibleText(job.words());
        return line(job.words(), bar, button("Cancel", "Cancel: " + job.words(), () -> work.cancel(job.sort())));
    }

    private Node stopped(Job.Stopped stopped) {
        return line(
                "▲ " + stopped.words(),
                button(stopped.again(), stopped.words(), stopped.redo()),
                button("Dismiss", "Dismiss: " + stopped.words(), () -> work.dismiss(stopped.sort())));
    }

    private static Node line(String words, Node... more) {
        HBox line = new HBox(8, words(words));
        line.getStyleClass().add("work");
        line.getChildren().addAll(more);
        return line;
    }

    private static Label words(String text) {
        Label label = new Label(text);
        label.setMinWidth(0);
        label.setTooltip(new Tooltip(text));
        return label;
    }

    private static Button button(String text, String help, Runnable action) {
        Button button = new Button(text);
        button.setMinWidth(USE_PREF_SIZE);
        button.setAccessibleHelp(help);
        button.setOnAction(e -> action.run());
        return button;
    }
}

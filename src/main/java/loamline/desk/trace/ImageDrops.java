package loamline.desk.trace;

import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.input.DragEvent;
import javafx.scene.input.TransferMode;

/** Opens the aerial image that is dropped on something. */
public final class ImageDrops {
    private ImageDrops() {}

    /** Files that are no images stay with whoever else takes drops. */
    public static void takeOn(Node target, TraceModel model) {
        target.addEventHandler(DragEvent.DRAG_OVER, e -> {
            if (images(e).findAny().isPresent()) {
                e.acceptTransferModes(TransferMode.COPY);
                e.consume();
            }
        });
        target.addEventHandler(DragEvent.DRAG_DROPPED, e -> {
            Optional<Path> dropped = images(e).findFirst();
            dropped.ifPresent(model::open);
            if (dropped.isPresent()) {
                e.setDropCompleted(true);
                e.consume();
            }
        });
    }

    private static Stream<Path> images(DragEvent e) {
        return e.getDragboard().getFiles().stream().map(file -> file.toPath()).filter(TraceModel::isImage);
    }
}

package loamline.desk.print;

import java.awt.image.BufferedImage;
import java.util.List;
import javafx.beans.binding.Bindings;
import javafx.geometry.Bounds;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.StackPane;

/** The pages one by one, as they will come out; stands in the map's place while the Print step is open. */
public final class PagesView extends BorderPane {
    private static final double MARGIN_PX = 24;

    /** Least width at which the small print of a page can be read. */
    private static final double LEGIBLE_PX = 660;

    private final PrintModel model;
    private final ImageView page = new ImageView();
    private final Label count = new Label();
    private final Button back = new Button("Previous page");
    private final Button on = new Button("Next page");
    private final Label empty = new Label();
    private int shown;

    public PagesView(PrintModel model) {
        this.model = model;
        getStyleClass().add("pages");
        page.setPreserveRatio(true);
        page.setSmooth(true);
        StackPane paper = new StackPane(empty, page);
        paper.getStyleClass().add("pages-desk");
        ScrollPane scroll = new ScrollPane(paper);
        scroll.setFitToWidth(true);
        scroll.setFitToHeight(true);
        scroll.setAccessibleText("Page preview");
        page.fitWidthProperty()
                .bind(Bindings.createDoubleBinding(
                        () -> pageWidth(scroll.getViewportBounds()),
                        scroll.viewportBoundsProperty(),
                        page.imageProperty()));
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        setCenter(scroll);
        back.setOnAction(e -> turn(-1));
        on.setOnAction(e -> turn(1));
        HBox bar = new HBox(12, back, count, on);
        bar.setAlignment(Pos.CENTER);
        bar.getStyleClass().add("pages-bar");
        setBottom(bar);
        addEventFilter(KeyEvent.KEY_PRESSED, this::keyed);
        model.pages().addListener((o, before, now) -> turn(0));
        sceneProperty().addListener((o, before, now) -> {
            model.look(now != null);
            turn(0);
        });
    }

    /** The whole page if it can be read so, else a page as wide as it takes, of which a part is seen. */
    private double pageWidth(Bounds room) {
        double height = Math.max(1, room.getHeight() - 2 * MARGIN_PX);
        Image drawn = page.getImage();
        double whole = drawn == null ? height : height * drawn.getWidth() / drawn.getHeight();
        return Math.max(1, Math.min(room.getWidth() - 2 * MARGIN_PX, Math.max(whole, LEGIBLE_PX)));
    }

    private void keyed(KeyEvent e) {
        if (e.getCode() == KeyCode.PAGE_DOWN || e.getCode() == KeyCode.PAGE_UP) {
            turn(e.getCode() == KeyCode.PAGE_DOWN ? 1 : -1);
            e.consume();
        }
    }

    private void turn(int by) {
        List<BufferedImage> pages = model.pages().get();
        shown = Math.max(0, Math.min(pages.size() - 1, shown + by));
        back.setDisable(shown == 0);
        on.setDisable(shown >= pages.size() - 1);
        empty.setVisible(pages.isEmpty());
        empty.setText(
                model.printable().isPresent()
                        ? "The pages are being drawn …"
                        : "Pages appear here once the cores are planned.");
        page.setVisible(!pages.isEmpty());
        count.setText(pages.isEmpty() ? "" : "Page " + (shown + 1) + " of " + pages.size());
        if (!pages.isEmpty()) {
            page.setImage(image(pages.get(shown)));
            page.setAccessibleText(count.getText());
        }
    }

    private static WritableImage image(BufferedImage drawn) {
        int width = drawn.getWidth();
        int height = drawn.getHeight();
        WritableImage image = new WritableImage(width, height);
        int[] argb = drawn.getRGB(0, 0, width, height, null, 0, width);
        image.getPixelWriter().setPixels(0, 0, width, height, PixelFormat.getIntArgbInstance(), argb, 0, width);
        return image;
    }
}

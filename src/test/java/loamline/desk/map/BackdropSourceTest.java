package loamline.desk.map;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.imageio.ImageIO;
import loamline.desk.session.AtOnce;
import loamline.desk.session.Session;
import loamline.yard.Backdrop;
import loamline.yard.Extras;
import loamline.yard.Yard;
import loamline.yard.YardFixtures;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BackdropSourceTest {
    @TempDir
    private Path folder;

    private static Session session(String image) {
        Backdrop backdrop = new Backdrop(
                image, 30, 20, new Backdrop.Placement(0.1, 0, 0, 0, -0.1, 0), 0, 1, List.of(), Extras.NONE);
        Yard yard = YardFixtures.yard().withBackdrop(Optional.of(backdrop));
        return new Session(yard, AtOnce.work());
    }

    private BackdropSource source(Session session) {
        BackdropSource source = new BackdropSource(session);
        source.folder().set(Optional.of(folder));
        return source;
    }

    private void write(String name) throws IOException {
        ImageIO.write(
                new BufferedImage(30, 20, BufferedImage.TYPE_INT_RGB),
                "png",
                folder.resolve(name).toFile());
    }

    @Test
    void anImageIsFoundBesideTheYardsFile() throws IOException {
        write("air.png");
        BackdropSource source = source(session("air.png"));
        assertThat(source.state().get().trouble()).isEmpty();
        assertThat(source.state().get().pixels())
                .hasValueSatisfying(pixels -> assertThat(pixels.widthPx()).isEqualTo(30));
    }

    @Test
    void aMissingImageIsToldWithItsPathAndFoundAgain() throws IOException {
        BackdropSource source = source(session("air.png"));
        assertThat(source.state().get().pixels()).isEmpty();
        assertThat(source.state().get().trouble())
                .isEqualTo("The image air.png is not there: " + folder.resolve("air.png"));
        write("air.png");
        source.again();
        assertThat(source.state().get().trouble()).isEmpty();
        assertThat(source.state().get().pixels()).isPresent();
    }

    @Test
    void aFileThatIsNoImageIsTold() throws IOException {
        Files.writeString(folder.resolve("air.png"), "no image");
        assertThat(source(session("air.png")).state().get().trouble())
                .startsWith("The image air.png is no image that can be shown");
    }

    @Test
    void anEditThatLeavesTheImageAloneDoesNotReadItAgain() throws IOException {
        write("air.png");
        Session session = session("air.png");
        BackdropSource source = source(session);
        var before = source.state().get();
        session.edit("rename", session.history().get().now().withName("other"));
        assertThat(source.state().get()).isSameAs(before);
        session.edit("no image", session.history().get().now().withBackdrop(Optional.empty()));
        assertThat(source.state().get().pixels()).isEmpty();
        assertThat(source.state().get().trouble()).isEmpty();
    }

    @Test
    void aNameThatIsNoPathIsNoImage() {
        assertThat(BackdropSource.resolved(Optional.of(folder), "a\0b")).isEmpty();
        assertThat(BackdropSource.resolved(Optional.of(folder), "../b.png"))
                .contains(folder.getParent().resolve("b.png"));
    }
}

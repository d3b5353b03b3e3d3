package loamline.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Arrays;
import java.util.Optional;
import javax.imageio.ImageIO;
import loamline.geometry.Box;
import loamline.geometry.Point;
import loamline.scene.Ink;
import loamline.scene.Palette;
import loamline.scene.Role;
import loamline.scene.SamplePlan;
import loamline.scene.SampleYard;
import loamline.scene.Scene;
import loamline.scene.SceneOptions;
import loamline.scene.View;
import loamline.scene.YardScene;
import loamline.yard.Yard;
import loamline.yard.Zones;
import org.junit.jupiter.api.Test;

class ImagePainterTest {
    private static final int DPI = 127; // 5 pixels to the millimetre
    private static final int PIXELS_PER_MM = 5;
    private static final Fonts FONTS = new Fonts();
    private static final View VIEW = View.of(new Box(-2, -2, 32, 47), 200);

    private static Scene scene() {
        Yard yard = SampleYard.yard();
        return YardScene.of(yard, Zones.of(yard), Optional.of(SamplePlan.twoBags()), SceneOptions.usual(VIEW, FONTS));
    }

    private static ImagePainter painter() {
        return new ImagePainter(FONTS, DPI, Palette.LIGHT.of(Role.PAPER));
    }

    private static Ink at(BufferedImage image, double xM, double yM) {
        Point mm = VIEW.onPaper(new Point(xM, yM));
        return Ink.of(image.getRGB((int) (mm.x() * PIXELS_PER_MM), (int) (mm.y() * PIXELS_PER_MM)) & 0xFFFFFF);
    }

    @Test
    void thePictureShowsTheYardWhereItIs() {
        BufferedImage image = painter().image(scene());
        Palette light = Palette.LIGHT;
        assertThat(at(image, -1, -1)).isEqualTo(light.of(Role.PAPER));
        assertThat(at(image, 27, 15)).isEqualTo(light.of(Role.LOT));
        assertThat(at(image, 17, 5)).isEqualTo(light.of(Role.TURF));
        assertThat(at(image, 9, 25.5)).isEqualTo(light.of(Role.PAVING));
        assertThat(at(image, 8.5, 33)).isEqualTo(light.of(Role.WATER));
    }

    @Test
    void aLoggedCoreIsDark() {
        Yard yard = SampleYard.yard();
        SceneOptions logged =
                SceneOptions.usual(VIEW, FONTS).with(java.util.Map.of("A9", loamline.scene.CoreState.LOGGED));
        Scene scene = YardScene.of(yard, Zones.of(yard), Optional.of(SamplePlan.twoBags()), logged);
        double besideTheNumberM = 0.4; // 2 mm on paper, inside the disc
        assertThat(at(painter().image(scene), 3.1 - besideTheNumberM, 37.2)).isEqualTo(Palette.LIGHT.of(Role.INK));
        assertThat(at(painter().image(scene()), 3.1 - besideTheNumberM, 37.2)).isEqualTo(Palette.LIGHT.of(Role.PANEL));
    }

    @Test
    void thePngHasTheSizeOfThePaperAndTheSameBytesEveryTime() throws IOException {
        byte[] png = painter().png(scene());
        BufferedImage read = ImageIO.read(new ByteArrayInputStream(png));
        assertThat(read.getWidth()).isEqualTo(34 * 5 * PIXELS_PER_MM);
        assertThat(read.getHeight()).isEqualTo(49 * 5 * PIXELS_PER_MM);
        assertThat(painter().png(scene())).isEqualTo(png);
    }

    @Test
    void thePngKnowsItsResolution() {
        byte[] png = painter().png(scene());
        int at = new String(png, java.nio.charset.StandardCharsets.ISO_8859_1).indexOf("pHYs") + 4;
        byte[] pixelsPerMetre = Arrays.copyOfRange(png, at, at + 4);
        assertThat(java.nio.ByteBuffer.wrap(pixelsPerMetre).getInt()).isEqualTo(1000 * PIXELS_PER_MM);
    }
}

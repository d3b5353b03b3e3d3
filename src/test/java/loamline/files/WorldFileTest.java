package loamline.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import loamline.place.Affine;
import loamline.place.PlaceException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WorldFileTest {
    @Test
    void theLastTwoNumbersAreTheMiddleOfTheFirstPixel() throws Exception {
        assertThat(WorldFile.parse("2\n0\n0\n-4\n101\n198\n")).isEqualTo(new Affine(2, 0, 100, 0, -4, 200));
    }

    @Test
    void theSecondNumberBelongsToTheColumnsAndTheThirdToTheRows() throws Exception {
        Affine turned = WorldFile.parse("2 1 0.5 -4 100 200");
        assertThat(turned).isEqualTo(new Affine(2, 0.5, 98.75, 1, -4, 201.5));
        assertThat(turned.x(0.5, 0.5)).isEqualTo(100);
        assertThat(turned.y(0.5, 0.5)).isEqualTo(200);
    }

    @Test
    void blanksCarriageReturnsExponentsAndCommasAreUnderstood() throws Exception {
        assertThat(WorldFile.parse("  2,0 \r\n0\r\n0\r\n-2.5e-1\r\n1\r\n2\r\n"))
                .isEqualTo(new Affine(2, 0, 0, 0, -0.25, 2.125));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "1 2 3 4 5", "1 0 0 NaN 5 6", "1 0 0 x 5 6", "0 0 0 0 5 6", "1 0 0 1e999 5 6", "1f 0 0 1 5 6"
            })
    void whatAreNotSixNumbersIsRefused(String text) {
        assertThatThrownBy(() -> WorldFile.parse(text)).isInstanceOf(PlaceException.class);
    }

    @Test
    void itsNameFollowsTheImages() {
        assertThat(WorldFile.namesBeside(Path.of("maps", "yard.front.JPEG")))
                .extracting(path -> String.valueOf(path.getFileName()))
                .containsExactly(
                        "yard.front.jgw",
                        "yard.front.JGW",
                        "yard.front.jpegw",
                        "yard.front.JPEGW",
                        "yard.front.wld",
                        "yard.front.WLD");
    }
}

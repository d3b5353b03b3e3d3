package loamline.desk.map;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import loamline.geometry.Point;
import org.junit.jupiter.api.Test;

class SightTest {
    @Test
    void whatIsKeptComesBack() {
        Sight sight = new Sight(new Point(12.5, -3), 0.04);
        assertThat(Sight.of(sight.numbers())).contains(sight);
    }

    @Test
    void whatIsNoSightIsNone() {
        assertThat(Sight.of("here")).isEmpty();
        assertThat(Sight.of(List.of(1, 2))).isEmpty();
        assertThat(Sight.of(List.of(1, 2, "far"))).isEmpty();
        assertThat(Sight.of(List.of(1, 2, 0))).isEmpty();
        assertThat(Sight.of(List.of(1, Double.NaN, 1))).isEmpty();
    }
}

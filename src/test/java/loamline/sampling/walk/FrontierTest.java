package loamline.sampling.walk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;

class FrontierTest {
    @Test
    void theNearestIsTakenFirstEvenAfterItsDistanceFell() {
        Random random = new Random(1);
        double[] distanceM = random.doubles(500, 10, 20).toArray();
        Frontier frontier = new Frontier(distanceM);
        for (int sector = 0; sector < distanceM.length; sector++) {
            frontier.raise(sector);
        }
        for (int i = 0; i < 200; i++) {
            int sector = random.nextInt(distanceM.length);
            distanceM[sector] *= random.nextDouble();
            frontier.raise(sector);
        }
        double last = 0;
        int taken = 0;
        for (; !frontier.isEmpty(); taken++) {
            double next = distanceM[frontier.takeNearest()];
            assertThat(next).isGreaterThanOrEqualTo(last);
            last = next;
        }
        assertThat(taken).isEqualTo(distanceM.length);
    }
}

package loamline.bench;

import static org.assertj.core.api.Assertions.assertThat;

import loamline.sampling.CorePlan;
import loamline.sampling.CorePlanner;
import org.junit.jupiter.api.Test;

class LargeYardTest {
    @Test
    void isPlannedWithoutTrouble() {
        CorePlan plan = CorePlanner.plan(LargeYard.make(), LargeYard.options());
        assertThat(plan.problems()).isEmpty();
        assertThat(plan.mainCores()).hasSize(72);
        assertThat(plan.walks()).hasSize(6).allMatch(CorePlan.Walk::proven);
    }
}

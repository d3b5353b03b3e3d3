package loamline.demo;

import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import loamline.account.Where;
import loamline.geometry.Point;
import loamline.water.HeadPattern;
import loamline.water.cups.CupPlan;
import loamline.water.cups.CupPlanner;
import loamline.yard.Head;
import loamline.yard.Yard;

/** Invented readings of a cup test: the yard's heads, one of them weak, on low pressure and with noise. */
final class CupReadings {
    static final String VALVE = "2";
    static final String WEAK = "h10";

    private static final double LEFT = 0.45;
    private static final double PRESSURE = 0.92;
    private static final double NOISE = 0.10;
    private static final double THROAT_CM2 = 107.1;
    private static final long SEED = 20270519;

    private CupReadings() {}

    /** The list as {@code loamline cups} reads it. */
    static String of(Yard yard) {
        CupPlan plan = CupPlanner.of(yard, VALVE, List.of(), THROAT_CM2);
        List<HeadPattern> heads = yard.all(Head.class)
                .filter(head -> head.valve().equals(VALVE))
                .map(head -> HeadPattern.of(head, Where.WHOLE)
                        .pattern()
                        .orElseThrow()
                        .withOutput(head.id().equals(WEAK) ? LEFT * PRESSURE : PRESSURE))
                .toList();
        SplittableRandom random = new SplittableRandom(SEED);
        StringBuilder list = new StringBuilder("cup,x_m,y_m,ml,throat_cm2,minutes\n");
        for (int i = 0; i < plan.cups().size(); i++) {
            Point at = plan.cups().get(i);
            double rate = heads.stream()
                    .mapToDouble(head -> head.rateMmH(at.x(), at.y()))
                    .sum();
            double ml = rate * (1 + NOISE * normal(random)) * THROAT_CM2 * plan.minutes() / 600;
            list.append(String.format(
                    Locale.ROOT,
                    "%d,%.2f,%.2f,%.0f,%.1f,%d\n",
                    i + 1,
                    at.x(),
                    at.y(),
                    Math.max(0, ml),
                    THROAT_CM2,
                    plan.minutes()));
        }
        return list.toString();
    }

    /** Box and Muller. */
    private static double normal(SplittableRandom random) {
        double u = 1 - random.nextDouble();
        return Math.sqrt(-2 * Math.log(u)) * Math.cos(2 * Math.PI * random.nextDouble());
    }
}

package loamline.season.blend;

public class BagSolverSpeedProbe {
    public static void main(String[] a) {
        for (long seed = 1; seed <= 30; seed++) {
            Blend b = Blends.random(seed, 8, 12, 10);
            var th = java.lang.management.ManagementFactory.getThreadMXBean();
            long t = th.getCurrentThreadCpuTime();
            if (!Blocking.of(b).isEmpty()) {
                System.out.println(
                        seed + " blocked " + Blocking.of(b).get(0) + (th.getCurrentThreadCpuTime() - t) / 1000000);
                continue;
            }
            var s = new BagSolver(b);
            var bags = s.cheapest();
            long t2 = th.getCurrentThreadCpuTime();
            var plan = DoseSpreader.spread(b, bags);
            long t3 = th.getCurrentThreadCpuTime();
            var sec = s.secondBest(bags);
            long t4 = th.getCurrentThreadCpuTime();
            System.out.println(seed + " " + bags + " cost " + s.cost(bags) + " " + (t2 - t) / 1000000 + " ms, spread "
                    + (t3 - t2) / 1000000 + " ms, second " + sec.map(x -> s.cost(x)) + " " + (t4 - t3) / 1000000
                    + " ms doses " + plan.doses().size() + " " + BlendCheck.broken(b, plan));
        }
    }
}

package loamline.sampling.walk;

/** The obvious twin of the solvers: tries every order. */
final class AllRounds {
    private final DistanceMatrix distances;
    private final boolean[] visited;
    private double shortest = Double.POSITIVE_INFINITY;

    private AllRounds(DistanceMatrix distances) {
        this.distances = distances;
        this.visited = new boolean[distances.size()];
    }

    static double shortestM(DistanceMatrix distances) {
        AllRounds rounds = new AllRounds(distances);
        rounds.extend(0, 1, 0);
        return rounds.shortest;
    }

    private void extend(int at, int walked, double lengthM) {
        if (walked == visited.length) {
            shortest = Math.min(shortest, lengthM + distances.betweenM(at, 0));
            return;
        }
        for (int next = 1; next < visited.length; next++) {
            if (!visited[next]) {
                visited[next] = true;
                extend(next, walked + 1, lengthM + distances.betweenM(at, next));
                visited[next] = false;
            }
        }
    }
}

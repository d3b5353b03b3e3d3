package loamline.sampling.walk;

import java.util.Arrays;

/** Sectors that were reached but not left yet, the nearest on top: a binary heap that knows where each one is. */
final class Frontier {
    private final double[] distanceM;
    private final int[] heap;
    private final int[] place;
    private int size;

    /** @param distanceM by sector; read anew each time one is raised */
    Frontier(double[] distanceM) {
        this.distanceM = distanceM;
        heap = new int[distanceM.length];
        place = new int[distanceM.length];
        Arrays.fill(place, -1);
    }

    boolean isEmpty() {
        return size == 0;
    }

    /** Takes in a sector, or moves it up after its distance fell. */
    void raise(int sector) {
        int at = place[sector] < 0 ? size++ : place[sector];
        while (at > 0 && distanceM[sector] < distanceM[heap[(at - 1) / 2]]) {
            put(heap[(at - 1) / 2], at);
            at = (at - 1) / 2;
        }
        put(sector, at);
    }

    /** Removes and returns the nearest. */
    int takeNearest() {
        int nearest = heap[0];
        place[nearest] = -1;
        int last = heap[--size];
        if (size > 0) {
            sink(last);
        }
        return nearest;
    }

    private void sink(int sector) {
        int at = 0;
        for (int child = 1; child < size; child = 2 * at + 1) {
            if (child + 1 < size && distanceM[heap[child + 1]] < distanceM[heap[child]]) {
                child++;
            }
            if (distanceM[heap[child]] >= distanceM[sector]) {
                break;
            }
            put(heap[child], at);
            at = child;
        }
        put(sector, at);
    }

    private void put(int sector, int at) {
        heap[at] = sector;
        place[sector] = at;
    }
}

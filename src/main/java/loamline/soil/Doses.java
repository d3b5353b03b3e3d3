package loamline.soil;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Splits what an area needs into dressings that turf stands. */
public final class Doses {
    /** A total this little above a whole number of caps is rounding, not another dressing. */
    private static final double ROUNDING = 1e-9;
    /** More dressings than this are no plan. */
    static final int MOST = 100;

    private Doses() {}

    /**
     * Equal dressings: as few as the cap allows.
     *
     * @param total 0 or more
     * @param most of one dressing, above 0, in the same unit
     * @throws IllegalArgumentException if it would take more than {@value #MOST}
     */
    public static List<Double> split(double total, double most) {
        if (!(total >= 0 && most > 0 && total / most <= MOST)) {
            throw new IllegalArgumentException("cannot split " + total + " into dressings of " + most);
        }
        if (total == 0) {
            return List.of();
        }
        int count = (int) Math.ceil(total / most - ROUNDING);
        return Collections.nCopies(Math.max(1, count), total / Math.max(1, count));
    }

    /**
     * The year of each dressing, the first being 1, where a year bears no more than so much.
     *
     * @param mostYear at least as much as a dressing
     */
    public static List<Integer> years(List<Double> doses, double mostYear) {
        List<Integer> years = new ArrayList<>();
        int year = 1;
        double given = 0;
        for (double dose : doses) {
            if (given + dose > mostYear * (1 + ROUNDING)) {
                year++;
                given = 0;
            }
            given += dose;
            years.add(year);
        }
        return years;
    }
}

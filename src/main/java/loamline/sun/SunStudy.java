package loamline.sun;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import loamline.account.Problem;
import loamline.account.Where;
import loamline.geometry.Box;
import loamline.geometry.Region;
import loamline.place.LonLat;
import loamline.raster.Grid;
import loamline.raster.GridSpec;
import loamline.raster.Mask;
import loamline.yard.Yard;
import loamline.yard.Zone;
import loamline.yard.Zones;

/** The sun on the turf of a yard. Immutable. */
public final class SunStudy {
    /** Cells of a grid at most: twenty hectares at a tenth of a metre. */
    static final long MOST_CELLS = 20_000_000;

    private final SunRequest request;
    private final SunField field;
    private final List<ZoneSun> zones;
    private final Grid hours;

    /**
     * What came of a question.
     *
     * @param study empty if the yard does not allow an answer; the problems say why
     * @param problems what is missing or doubtful
     */
    public record Answer(Optional<SunStudy> study, List<Problem> problems) {
        public Answer {
            problems = List.copyOf(problems);
        }

        private static Answer refused(String code, String message) {
            return new Answer(Optional.empty(), List.of(Problem.error(code, Where.WHOLE, message)));
        }
    }

    private SunStudy(SunRequest request, SunField field, List<ZoneSun> zones, Grid hours) {
        this.request = request;
        this.field = field;
        this.zones = List.copyOf(zones);
        this.hours = hours;
    }

    /**
     * Hours of direct sun on all turf. Refused without a place on the earth, without turf, and with cells too small for
     * the yard. A zone narrower than a cell is left out with a problem.
     */
    public static Answer of(Yard yard, SunRequest request) {
        if (yard.frame().origin().isEmpty()) {
            return Answer.refused(
                    "SUN_NO_PLACE",
                    "the sun's path needs a latitude, and this yard is not tied to the earth: open an image that has a"
                            + " place, or draw in longitude and latitude");
        }
        List<Zone> turf = Zones.of(yard);
        Optional<Box> box = Region.union(turf.stream().map(Zone::net).toList()).box();
        if (box.isEmpty()) {
            return Answer.refused("SUN_NO_TURF", "there is no turf to look at: trace it first");
        }
        double cells = (box.get().widthM() / request.cellM() + 2) * (box.get().heightM() / request.cellM() + 2);
        if (cells > MOST_CELLS) {
            return Answer.refused(
                    "SUN_CELL_TOO_SMALL",
                    "cells of " + request.cellM() + " m are too many for this yard: choose larger ones");
        }
        GridSpec grid = GridSpec.covering(box.get(), request.cellM());
        return of(yard, turf, yard.frame().origin().get(), grid, request);
    }

    private static Answer of(Yard yard, List<Zone> turf, LonLat place, GridSpec grid, SunRequest request) {
        SunField field = SunField.of(grid, yard, place, request);
        List<Problem> problems = new ArrayList<>(field.problems());
        List<ZoneSun> zones = new ArrayList<>();
        BitSet onTurf = new BitSet(grid.size());
        for (Zone zone : turf) {
            int[] cells = Mask.of(grid, zone.net()).indexes();
            if (cells.length == 0) {
                problems.add(Problem.warning(
                        "SUN_ZONE_TOO_SMALL",
                        Where.WHOLE,
                        "zone “" + zone.name() + "” holds no middle of a cell and is left out: choose smaller cells"));
                continue;
            }
            zones.add(ZoneSun.of(zone.name(), cells, field, request));
            IntStream.of(cells).forEach(onTurf::set);
        }
        Grid hours = Grid.of(
                grid, values -> Arrays.setAll(values, cell -> onTurf.get(cell) ? field.hours(cell) : Double.NaN));
        return new Answer(Optional.of(new SunStudy(request, field, zones, hours)), problems);
    }

    public SunRequest request() {
        return request;
    }

    /** Hours of direct sun a day, cell by cell over the box of all turf; NaN off turf. */
    public Grid hours() {
        return hours;
    }

    /** In the order of the yard's zones. */
    public List<ZoneSun> zones() {
        return zones;
    }

    /** The positions of the sun that were looked at, date by date. */
    public List<SunPosition> positions() {
        return field.positions();
    }
}

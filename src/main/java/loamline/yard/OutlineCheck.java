package loamline.yard;

import java.util.ArrayList;
import java.util.List;
import loamline.account.Problem;
import loamline.account.Where;
import loamline.geometry.Outline;
import loamline.geometry.Region;
import loamline.geometry.Repair;

/** What had to be mended in an outline before it could be measured. */
final class OutlineCheck {
    private final CheckWords words;

    OutlineCheck(CheckWords words) {
        this.words = words;
    }

    /**
     * One outline.
     *
     * @param region the ground it encloses, mended where it had to be
     * @param problems how; one error and nothing else if it encloses none
     */
    record Checked(Region region, List<Problem> problems) {}

    Checked check(int index, Feature feature, Outline outline) {
        Repair.Result repaired = Repair.of(outline);
        List<Problem> problems = new ArrayList<>();
        if (repaired.region().isEmpty()) {
            problems.add(nothing(index, feature, repaired));
        } else {
            repaired.notes().forEach(note -> problems.add(mended(index, feature, outline, note)));
        }
        return new Checked(repaired.region(), problems);
    }

    private static Problem nothing(int index, Feature feature, Repair.Result repaired) {
        List<Repair.Kind> kinds =
                repaired.notes().stream().map(Repair.Note::kind).toList();
        if (kinds.contains(Repair.Kind.TANGLED)) {
            return nothing("OUTLINE_TANGLED", index, feature, "crosses itself thousands of times");
        }
        return kinds.isEmpty() || kinds.contains(Repair.Kind.TOO_FEW_POINTS)
                ? nothing("OUTLINE_TOO_FEW_POINTS", index, feature, "has fewer than three different points")
                : nothing("OUTLINE_NO_AREA", index, feature, "encloses no ground");
    }

    private static Problem nothing(String code, int index, Feature feature, String what) {
        String message = CheckWords.name(feature) + " " + what + " and is left out: draw it again";
        return Problem.error(code, Where.feature(index), message);
    }

    private Problem mended(int index, Feature feature, Outline outline, Repair.Note note) {
        String code = "OUTLINE_" + note.kind();
        String what = CheckWords.name(feature) + " " + words(note) + ", " + words.place(note.where(), outline) + ": "
                + advice(note.kind());
        return note.kind() == Repair.Kind.POINT_REPEATED
                ? Problem.info(code, Where.feature(index), what)
                : Problem.warning(code, Where.feature(index), what);
    }

    private static String words(Repair.Note note) {
        return switch (note.kind()) {
            case POINT_REPEATED ->
                note.count() == 1 ? "gives a point twice in a row" : "repeats " + note.count() + " points, the first";
            case TOO_FEW_POINTS -> "has a ring of fewer than three points";
            case SELF_CROSSING -> "crosses or touches itself";
            case TANGLED -> "has a part that crosses itself thousands of times";
            case HOLE_OUTSIDE -> "has a hole that is not inside it";
            case PARTS_OVERLAP -> "has parts that overlap";
            case NO_AREA -> "encloses no ground";
        };
    }

    private static String advice(Repair.Kind kind) {
        return switch (kind) {
            case POINT_REPEATED -> "it counts once";
            case TOO_FEW_POINTS -> "the ring is left out; take it away or draw it again";
            case SELF_CROSSING -> "every loop counts as its ground; move the corners apart if that is not meant";
            case TANGLED -> "the part is left out; draw it again";
            case HOLE_OUTSIDE -> "the hole is left out; take it away or move it in";
            case PARTS_OVERLAP -> "shared ground counts once; join the parts";
            case NO_AREA -> "draw it again";
        };
    }
}

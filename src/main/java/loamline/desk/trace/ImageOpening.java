package loamline.desk.trace;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import loamline.account.Problem;
import loamline.account.Severity;
import loamline.files.Imagery;
import loamline.files.Read;
import loamline.geometry.Box;
import loamline.geometry.Point;
import loamline.place.Affine;
import loamline.place.Frame;
import loamline.place.ImagePlace;
import loamline.place.PlaceException;
import loamline.yard.Backdrop;
import loamline.yard.Backdrop.Placement;
import loamline.yard.Extras;
import loamline.yard.Yard;

/**
 * Where an image that was opened belongs in a yard.
 *
 * @param placed the yard with the image; empty if it was not placed
 * @param words what was done or is the matter, in a sentence or two; blank if all is as expected
 * @param byScale the yard with the image placed by a scale that is still to be measured, where that is offered instead
 */
record ImageOpening(Optional<Yard> placed, String words, Optional<Yard> byScale) {
    /** How wide an image without a scale is shown, m: a common lot with its street (common practice, no source). */
    static final double PROVISIONAL_WIDTH_M = 40;

    /**
     * Decides.
     *
     * @param file path of the image, as the yard is to call it
     */
    static ImageOpening of(Yard yard, String file, Read<Imagery> read) {
        String trouble = read.problems().stream()
                .filter(Problem::isError)
                .map(problem -> "The image " + problem.message() + ".")
                .collect(Collectors.joining(" "));
        if (read.value().isEmpty() || !trouble.isEmpty()) {
            return refused(trouble.isEmpty() ? "The image cannot be read." : trouble);
        }
        Imagery image = read.value().get();
        if (image.place().isPresent()) {
            return placed(yard, file, image, image.place().get(), warnings(read.problems()));
        }
        return image.unnamed()
                .map(metres -> inMetres(yard, file, image, metres))
                .orElseGet(() -> new ImageOpening(
                        Optional.of(byScale(yard, file, image)),
                        (warnings(read.problems()) + " The scale is not set: measure a distance that you know.")
                                .strip(),
                        Optional.empty()));
    }

    private static ImageOpening refused(String words) {
        return new ImageOpening(Optional.empty(), words, Optional.empty());
    }

    private static String warnings(List<Problem> problems) {
        return problems.stream()
                .filter(problem -> problem.severity() == Severity.WARNING)
                .map(problem -> "The image: " + problem.message() + ".")
                .collect(Collectors.joining(" "));
    }

    private static ImageOpening placed(Yard yard, String file, Imagery image, ImagePlace place, String warnings) {
        boolean local = yard.frame().origin().isEmpty();
        if (local && !yard.features().isEmpty()) {
            return new ImageOpening(
                    Optional.empty(),
                    "The image knows its place on the earth, but this yard is drawn without one. It can be laid under"
                            + " the drawing by a measured distance instead.",
                    Optional.of(byScale(yard, file, image)));
        }
        try {
            Frame frame = local ? Frame.at(place.centre()) : yard.frame();
            Read<Backdrop> under = Imagery.under(frame.origin().orElseThrow(), file, place);
            String words = (warnings + " " + warnings(under.problems())).strip();
            return under.value()
                    .map(backdrop -> new ImageOpening(
                            Optional.of(yard.withFrame(frame).withBackdrop(Optional.of(backdrop))),
                            words,
                            Optional.empty()))
                    .orElseGet(() -> refused(under.problems().get(0).message()));
        } catch (PlaceException e) {
            return refused("The place of the image cannot be used: " + e.getMessage() + ".");
        }
    }

    /** Coordinates in a system that nobody names are taken as metres, and their middle put in the middle of the yard. */
    private static ImageOpening inMetres(Yard yard, String file, Imagery image, Affine metres) {
        Point middle = middle(yard);
        double column = image.widthPx() / 2.0;
        double row = image.heightPx() / 2.0;
        Placement placement = new Placement(
                metres.a(),
                metres.b(),
                middle.x() - metres.a() * column - metres.b() * row,
                metres.d(),
                metres.e(),
                middle.y() - metres.d() * column - metres.e() * row);
        return new ImageOpening(
                Optional.of(yard.withBackdrop(Optional.of(backdrop(file, image, placement, Backdrop.SCALE_NOT_SET)))),
                "The image has coordinates but does not name their system: they are taken as metres. Measure a distance"
                        + " that you know to check, or put its .prj file beside the image and open it again.",
                Optional.empty());
    }

    private static Yard byScale(Yard yard, String file, Imagery image) {
        double pixelM = PROVISIONAL_WIDTH_M / image.widthPx();
        Point middle = middle(yard);
        Placement placement = new Placement(
                pixelM,
                0,
                middle.x() - pixelM * image.widthPx() / 2,
                0,
                -pixelM,
                middle.y() + pixelM * image.heightPx() / 2);
        return yard.withBackdrop(Optional.of(backdrop(file, image, placement, Backdrop.SCALE_NOT_SET)));
    }

    private static Point middle(Yard yard) {
        return yard.box().map(Box::centre).orElse(new Point(0, 0));
    }

    private static Backdrop backdrop(String file, Imagery image, Placement placement, double scaleErrorRel) {
        return new Backdrop(
                file,
                image.widthPx(),
                image.heightPx(),
                placement,
                scaleErrorRel,
                Imagery.OPAQUE,
                List.of(),
                Extras.NONE);
    }
}

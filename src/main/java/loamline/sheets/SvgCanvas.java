package loamline.sheets;

import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import loamline.geometry.Point;
import loamline.scene.Canvas;
import loamline.scene.Ink;
import loamline.scene.Paint;
import loamline.scene.PaperRect;
import loamline.scene.Path;
import loamline.scene.Pen;
import loamline.scene.Pixels;
import loamline.scene.Run;
import loamline.scene.Type;

/** Draws into the body of an SVG whose unit is a millimetre. Letters are text in the reader's own sans-serif. */
final class SvgCanvas implements Canvas {
    private final StringBuilder out;

    SvgCanvas(StringBuilder out) {
        this.out = out;
    }

    @Override
    public void draw(Path path, Paint paint) {
        if (path.isEmpty()) {
            return;
        }
        out.append("<path d=\"");
        path.steps().forEach(this::step);
        out.append("\" fill-rule=\"evenodd\"")
                .append(paint.fill().map(SvgCanvas::fill).orElse(" fill=\"none\""));
        paint.pen().map(SvgCanvas::stroke).ifPresent(out::append);
        out.append("/>\n");
    }

    private void step(Path.Step step) {
        if (step instanceof Path.Move move) {
            out.append('M').append(at(move.to()));
        } else if (step instanceof Path.Line line) {
            out.append('L').append(at(line.to()));
        } else if (step instanceof Path.Curve curve) {
            out.append('C')
                    .append(at(curve.control1()))
                    .append(' ')
                    .append(at(curve.control2()))
                    .append(' ')
                    .append(at(curve.to()));
        } else {
            out.append('Z');
        }
    }

    @Override
    public void write(Run run) {
        String halo = run.halo()
                .map(ink -> stroke(Pen.solid(ink, 2 * Run.HALO_MM)) + " paint-order=\"stroke\"")
                .orElse("");
        String face = switch (run.type().face()) {
            case BOLD -> " font-weight=\"bold\"";
            case OBLIQUE -> " font-style=\"oblique\"";
            default -> "";
        };
        out.append("<text x=\"")
                .append(number(run.at().x()))
                .append("\" y=\"")
                .append(number(run.at().y()))
                .append("\" font-size=\"")
                .append(number(run.type().sizePt() * Type.MM_PER_PT))
                .append('"')
                .append(face)
                .append(fill(run.ink()))
                .append(halo)
                .append('>')
                .append(escaped(run.words()))
                .append("</text>\n");
    }

    /** Maps for a phone carry no colours of amounts. */
    @Override
    public void shade(PaperRect window, Pixels pixels) {
        throw new UnsupportedOperationException("a vector map has no cells");
    }

    /** The view box of the SVG cuts what lies outside. */
    @Override
    public void within(PaperRect window, Consumer<Canvas> drawing) {
        drawing.accept(this);
    }

    private static String fill(Ink ink) {
        return " fill=\"" + hex(ink) + '"' + opacity("fill-opacity", ink);
    }

    private static String stroke(Pen pen) {
        String dashes = pen.dashMm().isEmpty()
                ? ""
                : " stroke-dasharray=\""
                        + pen.dashMm().stream().map(SvgCanvas::number).collect(Collectors.joining(" ")) + '"';
        return " stroke=\"" + hex(pen.ink()) + '"' + opacity("stroke-opacity", pen.ink()) + " stroke-width=\""
                + number(pen.widthMm()) + '"' + dashes;
    }

    private static String hex(Ink ink) {
        return String.format(Locale.ROOT, "#%06X", ink.rgb());
    }

    private static String opacity(String name, Ink ink) {
        return Optional.of(ink.opacity())
                .filter(opacity -> opacity < 1)
                .map(opacity -> " " + name + "=\"" + number(opacity) + '"')
                .orElse("");
    }

    private static String at(Point p) {
        return number(p.x()) + ' ' + number(p.y());
    }

    /** To a hundredth of a millimetre. */
    static String number(double value) {
        String text = String.format(Locale.ROOT, "%.2f", value);
        return text.replaceAll("\\.?0+$", "");
    }

    /** Safe as the text of an element and within double quotes. */
    static String escaped(String words) {
        return words.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}

package loamline.desk.tool;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loamline.geometry.Point;
import loamline.units.Measure;
import loamline.units.ParseResult;
import loamline.units.Parsing;
import loamline.yard.ImageEdits;
import loamline.yard.Yard;

/**
 * Turns the image so that north is up: draw a line on it that points north and press Enter, or any line and type which
 * way it points, in degrees clockwise from north.
 *
 * @param ends places clicked so far, on the ground, the southern one first
 * @param pointer where the pointer is; empty before it moves
 * @param typed the bearing as typed so far
 * @param alongDrawn whether what is drawn turns with the image
 */
public record NorthTool(List<Point> ends, Optional<Point> pointer, String typed, boolean alongDrawn) implements Tool {
    private static final double FULL_DEG = 360;

    public NorthTool {
        ends = List.copyOf(ends);
    }

    /** The tool with nothing clicked. */
    public static NorthTool of(boolean alongDrawn) {
        return new NorthTool(List.of(), Optional.empty(), "", alongDrawn);
    }

    @Override
    public Step on(Input input, Surroundings around) {
        if (input instanceof Input.Press press) {
            return pressed(press.at(), around);
        } else if (input instanceof Input.Move move) {
            return Step.to(new NorthTool(ends, Optional.of(move.at()), typed, alongDrawn));
        } else if (input instanceof Input.Typed character) {
            return typed(character.character());
        } else if (input instanceof Input.Key key) {
            return switch (key.key()) {
                case ENTER -> ends.size() == 2 ? entered(around) : Step.pass(this);
                case BACKSPACE, ESCAPE -> back(key.key() == Input.KeyName.ESCAPE);
                default -> Step.pass(this);
            };
        }
        return Step.pass(this);
    }

    private Step pressed(Point at, Surroundings around) {
        if (!ImageEdits.isScaledByHand(around.yard())) {
            return Step.to(this, new Effect.Say("This image brings its own place: its north is known."));
        }
        if (ends.size() == 2) {
            return Step.to(this, new Effect.Say("Enter if this line points north, or type its bearing first."));
        }
        if (ends.size() == 1 && ends.get(0).distanceTo(at) < around.metresPerPx()) {
            return Step.to(this, new Effect.Say("Both ends are at the same place: click the other end."));
        }
        List<Point> more = new ArrayList<>(ends);
        more.add(at);
        return Step.to(new NorthTool(more, Optional.of(at), "", alongDrawn), new Effect.Say(""));
    }

    private Step typed(char character) {
        if (ends.size() < 2 || Character.isISOControl(character) || typed.length() >= Parsing.MAX_CHARS) {
            return Step.pass(this);
        }
        return Step.to(new NorthTool(ends, pointer, typed + character, alongDrawn));
    }

    private Step back(boolean escape) {
        if (!typed.isEmpty()) {
            String left = escape ? "" : typed.substring(0, typed.length() - 1);
            return Step.to(new NorthTool(ends, pointer, left, alongDrawn));
        } else if (!ends.isEmpty()) {
            return Step.to(new NorthTool(ends.subList(0, ends.size() - 1), pointer, "", alongDrawn));
        }
        return escape ? Step.to(this, new Effect.Done()) : Step.pass(this);
    }

    private Step entered(Surroundings around) {
        ParseResult bearing = Parsing.parse(Measure.ANGLE, typed, around.units());
        if (!typed.isBlank() && bearing.refusal().isPresent()) {
            return Step.to(this, new Effect.Say(bearing.refusal().get().message()));
        }
        double wantedDeg = bearing.value().orElse(0);
        if (Math.abs(wantedDeg) > FULL_DEG) {
            return Step.to(this, new Effect.Say("Type a bearing from 0° to 360°, clockwise from north."));
        }
        Yard after = ImageEdits.turned(around.yard(), wantedDeg - azimuthDeg(), alongDrawn);
        return Step.to(of(alongDrawn), new Effect.Edit("turn north", after), new Effect.Done());
    }

    /** Which way the line points now, degrees clockwise from north. */
    private double azimuthDeg() {
        Point from = ends.get(0);
        Point to = ends.get(1);
        return Math.toDegrees(Math.atan2(to.x() - from.x(), to.y() - from.y()));
    }

    @Override
    public List<Guide> guides(Surroundings around) {
        List<Guide> guides = new ArrayList<>();
        List<Point> line = new ArrayList<>(ends);
        if (ends.size() == 1) {
            pointer.ifPresent(line::add);
        }
        if (line.size() == 2) {
            guides.add(new Guide.Line(line, false, Guide.Style.DRAWN));
            String points = typed.isEmpty() ? "N" : typed.endsWith("°") ? typed : typed + "°";
            guides.add(new Guide.Words(line.get(1), points));
        }
        ends.forEach(end -> guides.add(new Guide.Grip(end, false, true)));
        return guides;
    }

    @Override
    public String hint() {
        return switch (ends.size()) {
            case 0 -> "Click the south end of a line that points north, or any end of a line whose bearing you know";
            case 1 -> "Click its other end";
            default -> "Enter if it points north; else type its bearing, as 35°, then Enter";
        };
    }
}

package loamline.desk.tool;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loamline.geometry.Point;
import loamline.units.Formatting;
import loamline.units.Measure;
import loamline.units.ParseResult;
import loamline.units.Parsing;
import loamline.units.UnitSystem;
import loamline.yard.Backdrop;
import loamline.yard.ImageEdits;
import loamline.yard.KnownDistance;
import loamline.yard.Yard;

/**
 * Sets the scale of the image: click the two ends of a known distance, type its length, Enter; and again for the next.
 *
 * @param ends places clicked so far, in pixels of the image, so that they stay on it when its scale changes
 * @param pointer where the pointer is, in pixels of the image; empty before it moves
 * @param typed the length as typed so far
 * @param alongDrawn whether what is drawn is scaled with the image
 */
public record ScaleTool(List<Point> ends, Optional<Point> pointer, String typed, boolean alongDrawn) implements Tool {
    /** The longest length that is believed, m; no yard has a longer side. */
    private static final double MOST_M = 10_000;

    public ScaleTool {
        ends = List.copyOf(ends);
    }

    /** The tool with nothing clicked. */
    public static ScaleTool of(boolean alongDrawn) {
        return new ScaleTool(List.of(), Optional.empty(), "", alongDrawn);
    }

    @Override
    public Step on(Input input, Surroundings around) {
        Optional<Backdrop> image =
                around.yard().backdrop().filter(b -> b.placement().pixelM() > 0);
        if (image.isEmpty()) {
            return Step.pass(this);
        }
        Backdrop.Placement placement = image.get().placement();
        if (input instanceof Input.Press press) {
            return pressed(placement.pixel(press.at()), around);
        } else if (input instanceof Input.Move move) {
            return Step.to(new ScaleTool(ends, Optional.of(placement.pixel(move.at())), typed, alongDrawn));
        } else if (input instanceof Input.Typed character) {
            return typed(character.character());
        } else if (input instanceof Input.Key key) {
            return keyed(key.key(), around);
        }
        return Step.pass(this);
    }

    private Step pressed(Point pixel, Surroundings around) {
        if (ends.size() == 2) {
            return Step.to(
                    this, new Effect.Say("Type the length of this line, then Enter. Backspace takes an end back."));
        }
        double pixelM = around.yard().backdrop().orElseThrow().placement().pixelM();
        if (ends.size() == 1 && ends.get(0).distanceTo(pixel) * pixelM < around.metresPerPx()) {
            return Step.to(this, new Effect.Say("Both ends are at the same place: click the other end."));
        }
        List<Point> more = new ArrayList<>(ends);
        more.add(pixel);
        return Step.to(new ScaleTool(more, Optional.of(pixel), "", alongDrawn), new Effect.Say(""));
    }

    private Step typed(char character) {
        if (ends.size() < 2 || Character.isISOControl(character) || typed.length() >= Parsing.MAX_CHARS) {
            return Step.pass(this);
        }
        return Step.to(new ScaleTool(ends, pointer, typed + character, alongDrawn));
    }

    private Step keyed(Input.KeyName key, Surroundings around) {
        return switch (key) {
            case ENTER -> ends.size() == 2 ? entered(around) : Step.pass(this);
            case BACKSPACE, ESCAPE -> back(key);
            default -> Step.pass(this);
        };
    }

    /** One step back: the length whole (Esc) or by a character, then an end; Esc with nothing left ends the tool. */
    private Step back(Input.KeyName key) {
        boolean escape = key == Input.KeyName.ESCAPE;
        if (!typed.isEmpty()) {
            String left = escape ? "" : typed.substring(0, typed.length() - 1);
            return Step.to(new ScaleTool(ends, pointer, left, alongDrawn));
        } else if (!ends.isEmpty()) {
            return Step.to(new ScaleTool(ends.subList(0, ends.size() - 1), pointer, "", alongDrawn));
        }
        return escape ? Step.to(this, new Effect.Done()) : Step.pass(this);
    }

    private Step entered(Surroundings around) {
        ParseResult length = Parsing.parse(Measure.LENGTH, typed, around.units());
        if (length.refusal().isPresent()) {
            return Step.to(this, new Effect.Say(length.refusal().get().message()));
        }
        double lengthM = length.value().orElseThrow();
        if (!(lengthM > 0 && lengthM <= MOST_M)) {
            return Step.to(this, new Effect.Say("Type a length above 0 and up to 10 km."));
        }
        KnownDistance known = new KnownDistance(ends.get(0), ends.get(1), lengthM);
        Yard after = ImageEdits.measured(around.yard(), known, alongDrawn);
        String label = ImageEdits.isScaledByHand(around.yard()) ? "set scale" : "check scale";
        return Step.to(of(alongDrawn), new Effect.Edit(label, after), new Effect.Say(""));
    }

    @Override
    public List<Guide> guides(Surroundings around) {
        List<Guide> guides = new ArrayList<>();
        around.yard().backdrop().ifPresent(image -> {
            for (KnownDistance known : image.knownDistances()) {
                addLine(guides, image, List.of(known.from(), known.to()), Guide.Style.HELP);
                guides.add(words(image, known.from(), known.to(), length(known.lengthM(), around.units())));
            }
            List<Point> line = new ArrayList<>(ends);
            if (ends.size() == 1) {
                pointer.ifPresent(line::add);
            }
            addLine(guides, image, line, Guide.Style.DRAWN);
            ends.forEach(end -> guides.add(new Guide.Grip(image.placement().ground(end), false, true)));
            if (ends.size() == 2) {
                guides.add(words(image, ends.get(0), ends.get(1), typed.isEmpty() ? "length?" : typed));
            }
        });
        return guides;
    }

    private static void addLine(List<Guide> guides, Backdrop image, List<Point> pixels, Guide.Style style) {
        if (pixels.size() == 2) {
            guides.add(new Guide.Line(
                    pixels.stream().map(image.placement()::ground).toList(), false, style));
        }
    }

    private static Guide words(Backdrop image, Point from, Point to, String text) {
        return new Guide.Words(image.placement().ground(from.towards(to, 0.5)), text);
    }

    private static String length(double lengthM, UnitSystem units) {
        return Formatting.format(Measure.LENGTH, lengthM, units).text();
    }

    @Override
    public String hint() {
        return switch (ends.size()) {
            case 0 -> "Click one end of a distance that you know on the ground";
            case 1 -> "Click its other end";
            default -> "Type its length, as 34.5 ft, then Enter";
        };
    }
}

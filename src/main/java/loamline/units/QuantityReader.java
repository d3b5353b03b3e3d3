package loamline.units;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import loamline.units.ParseResult.Parsed;
import loamline.units.ParseResult.Reason;
import loamline.units.ParseResult.Refused;

/** One reading of one text, from left to right; the grammar stands at {@link Parsing}. */
final class QuantityReader {
    private static final Pattern SIGN = Pattern.compile("[+-]? ?");
    private static final Pattern BLANK = Pattern.compile(" ?");
    private static final Pattern JOINT = Pattern.compile(" ?[,-]? ?");

    private final Measure measure;
    private final Unit bareUnit;
    private final String typed;
    private final PlainText plain;
    private final String text;

    private int position;
    private double stored;
    private Optional<Unit> last = Optional.empty();

    QuantityReader(Measure measure, String typed, UnitSystem defaultSystem) {
        this.measure = measure;
        this.bareUnit = UnitTable.of(measure).shown(defaultSystem).unit();
        this.typed = typed;
        this.plain = new PlainText(typed);
        this.text = plain.text();
    }

    /** Reads it all, which may be nothing; to be called once. */
    ParseResult read() {
        position = skip(SIGN, 0);
        do {
            Optional<Refused> problem = readPart();
            if (problem.isPresent()) {
                return problem.get();
            }
        } while (position < text.length());
        return new Parsed(text.startsWith("-") ? 0.0 - stored : stored);
    }

    /** Reads a number and its unit, if it has one. Each part takes at least a digit, so that the reading ends. */
    private Optional<Refused> readPart() {
        int start = last.isEmpty() ? position : skip(JOINT, position);
        Matcher stretch = Numeral.STRETCH.matcher(text).region(start, text.length());
        if (!stretch.lookingAt()) {
            return refused(text.isEmpty() ? Reason.EMPTY : Reason.NUMBER_MISSING, start, start);
        }
        OptionalDouble count = Numeral.valueOf(stretch.group());
        if (count.isEmpty()) {
            return refused(Reason.NOT_A_NUMBER, start, stretch.end());
        }
        position = stretch.end();
        Optional<Unit> written = unitAt(position);
        if (written.isEmpty() && position < text.length()) {
            return refused(Reason.NOT_A_UNIT, skip(BLANK, position), text.length());
        }
        position = written.map(unit -> skip(unit.pattern(), position)).orElse(position);
        return add(count.getAsDouble(), written, start);
    }

    private Optional<Refused> add(double count, Optional<Unit> written, int start) {
        if (last.isPresent() && !continues(last.get(), written, start)) {
            return refused(Reason.LEFT_OVER, start, text.length());
        }
        Unit unit = last.flatMap(Unit::smaller).or(() -> written).orElse(bareUnit);
        double addend = count * unit.size();
        if (last.isPresent() && addend >= last.get().size()) {
            return refused(Reason.PART_TOO_LARGE, start, text.length());
        }
        stored += addend;
        last = Optional.of(unit);
        return Optional.empty();
    }

    /** A unit goes on in its smaller one; without a name for that, the number must stand apart: 12'6, but not 12 ft2. */
    private boolean continues(Unit before, Optional<Unit> written, int start) {
        return before.smaller().isPresent()
                && (written.isPresent()
                        ? written.equals(before.smaller())
                        : !Character.isLetter(text.charAt(start - 1)));
    }

    private Optional<Unit> unitAt(int start) {
        return UnitTable.of(measure).units().stream()
                .filter(unit -> skip(unit.pattern(), start) > start)
                .findFirst();
    }

    /** Where the pattern ends if it stands at the start; else the start. */
    private int skip(Pattern pattern, int start) {
        Matcher matcher = pattern.matcher(text).region(start, text.length());
        return matcher.lookingAt() ? matcher.end() : start;
    }

    private Optional<Refused> refused(Reason reason, int start, int end) {
        int from = plain.origin(start);
        String part = start == end ? "" : typed.substring(from, plain.origin(end - 1) + 1);
        return Optional.of(new Refused(reason, from, part, measure));
    }
}

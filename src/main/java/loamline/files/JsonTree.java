package loamline.files;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonFactoryBuilder;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import com.fasterxml.jackson.core.json.JsonReadFeature;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loamline.account.Problem;
import loamline.account.Where;
import org.jspecify.annotations.Nullable;

/**
 * JSON text (RFC 8259, UTF-8 with or without a byte-order mark) as a tree of maps, lists and plain values.
 *
 * <p>Whole numbers become Long, or BigInteger where they are longer; others become Double, or BigDecimal where
 * a double would be written as another number. {@code NaN} and {@code Infinity}, which are not JSON but are
 * written by some programs, become text, so that whoever needs a number there says so. Of members with the
 * same name the last counts.
 *
 * <p>The text is streamed. It is refused at the first byte that goes beyond one of the limits below, so time
 * and memory stay in bounds whatever the input.
 */
final class JsonTree {
    /** Bytes in a file: thousands of times a well-traced yard. */
    static final long MAX_BYTES = 256L << 20;

    /** Levels of brackets: GeoJSON needs 8. */
    static final int MAX_DEPTH = 100;

    /** Tokens in a file, four to a pair of coordinates: 2 million points, some 300 MB in memory. */
    static final long MAX_TOKENS = 8_000_000;

    /** Digits that every double keeps (IEEE 754 binary64: 15). */
    private static final int EXACT_DIGITS = 15;

    private static final JsonFactory FACTORY = new JsonFactoryBuilder()
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxNestingDepth(MAX_DEPTH)
                    .maxTokenCount(MAX_TOKENS)
                    .maxDocumentLength(MAX_BYTES)
                    .build())
            .enable(JsonReadFeature.ALLOW_NON_NUMERIC_NUMBERS)
            .disable(JsonFactory.Feature.INTERN_FIELD_NAMES) // names of a hostile file would stay for ever
            .build();

    private final JsonParser parser;
    private final ProblemLog log;

    private JsonTree(JsonParser parser, ProblemLog log) {
        this.parser = parser;
        this.log = log;
    }

    /**
     * Reads an object to the end of the stream.
     *
     * @return empty, with an error in the log, if the text is not well formed or not an object
     * @throws IOException if the stream cannot be read
     */
    static Optional<Map<String, @Nullable Object>> read(InputStream in, ProblemLog log) throws IOException {
        BufferedInputStream buffered = new BufferedInputStream(in);
        Optional<Problem> odd = Beginning.problem(buffered);
        if (odd.isPresent()) {
            log.add(odd.get());
            return Optional.empty();
        }
        try (JsonParser parser = FACTORY.createParser(buffered)) {
            return new JsonTree(parser, log).whole();
        }
    }

    private Optional<Map<String, @Nullable Object>> whole() throws IOException {
        try {
            JsonToken first = parser.nextToken();
            if (first != JsonToken.START_OBJECT) {
                log.add(first == null ? Beginning.empty() : Beginning.notJson("“" + parser.getText() + "”"));
                return Optional.empty();
            }
            Map<String, @Nullable Object> root = object();
            if (parser.nextToken() == null) {
                return Optional.of(root);
            }
            log.add(malformed("another value follows after the end", parser.currentTokenLocation()));
        } catch (JsonEOFException e) {
            log.add(Problem.error(
                    "JSON_CUT_OFF",
                    line(parser.currentLocation()),
                    "the file ends in the middle; it was cut off in saving or copying: fetch it again"));
        } catch (StreamConstraintsException e) {
            log.add(beyondLimits(e));
        } catch (JsonProcessingException e) {
            JsonLocation at = e.getLocation();
            log.add(malformed(e.getOriginalMessage(), at == null ? parser.currentLocation() : at));
        }
        return Optional.empty();
    }

    private Problem beyondLimits(StreamConstraintsException e) {
        Where where = line(parser.currentLocation());
        if (parser.getParsingContext().getNestingDepth() > MAX_DEPTH) {
            return Problem.error(
                    "JSON_TOO_DEEP",
                    where,
                    "brackets are nested more than " + MAX_DEPTH + " deep, which no yard needs: export it again");
        }
        return Problem.error(
                "JSON_TOO_LARGE",
                where,
                "too much for one yard (" + firstLine(e.getOriginalMessage()) + "): leave out what is not needed");
    }

    private static Problem malformed(String what, JsonLocation at) {
        return Problem.error(
                "JSON_MALFORMED",
                line(at),
                "not well-formed JSON at column " + at.getColumnNr() + ": " + firstLine(what)
                        + "; mend it there, or export the file again as UTF-8 JSON");
    }

    private static String firstLine(String message) {
        return message.lines().findFirst().orElse("");
    }

    private static Where line(JsonLocation at) {
        return Where.line(Math.max(1, at.getLineNr()));
    }

    private @Nullable Object value() throws IOException {
        return switch (parser.currentToken()) {
            case START_OBJECT -> object();
            case START_ARRAY -> list();
            case VALUE_NUMBER_INT -> whole(parser.getText());
            case VALUE_NUMBER_FLOAT -> decimal(parser.getText());
            case VALUE_TRUE -> true;
            case VALUE_FALSE -> false;
            case VALUE_NULL -> null;
            default -> parser.getText();
        };
    }

    private Map<String, @Nullable Object> object() throws IOException {
        Map<String, @Nullable Object> members = new LinkedHashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String name = parser.currentName();
            if (members.containsKey(name)) {
                log.warning(
                        "DUPLICATE_MEMBER",
                        parser.getParsingContext().pathAsPointer().toString(),
                        "“" + name + "” is given more than once in one object; the last one counts: remove the others");
            }
            parser.nextToken();
            members.put(name, value());
        }
        return members;
    }

    private List<@Nullable Object> list() throws IOException {
        List<@Nullable Object> values = new ArrayList<>(2);
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            values.add(value());
        }
        return values;
    }

    private static Number whole(String digits) {
        if (digits.length() <= EXACT_DIGITS) {
            return Long.parseLong(digits);
        }
        BigInteger big = new BigInteger(digits);
        return big.bitLength() < Long.SIZE ? (Number) big.longValue() : big;
    }

    private static Object decimal(String text) {
        if (!Character.isDigit(text.charAt(text.length() - 1))) { // NaN, Infinity, -INF
            return text;
        }
        double nearest = Double.parseDouble(text);
        int signAndPoint = text.charAt(0) == '-' ? 2 : 1;
        if (text.length() - signAndPoint <= EXACT_DIGITS && text.indexOf('e') < 0 && text.indexOf('E') < 0) {
            return nearest;
        }
        BigDecimal exact = new BigDecimal(text);
        if (Double.isFinite(nearest) && exact.compareTo(new BigDecimal(JsonText.number(nearest))) == 0) {
            return nearest;
        }
        return exact.scale() == 0 ? exact.unscaledValue() : exact;
    }
}

package loamline.files;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.Optional;
import loamline.account.Problem;
import loamline.account.Where;

/** The first bytes of a file, which tell what it cannot be. */
final class Beginning {
    private static final int PEEK = 64;
    private static final byte[] UTF8_MARK = {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF};

    private Beginning() {}

    /** Why a stream does not begin as a JSON object in UTF-8; empty if it may. Nothing is taken from it. */
    static Optional<Problem> problem(BufferedInputStream in) throws IOException {
        in.mark(PEEK);
        byte[] bytes = in.readNBytes(PEEK);
        in.reset();
        if (isUtf16(bytes)) {
            return Optional.of(
                    Problem.error("ENCODING_NOT_UTF8", Where.line(1), "the text is UTF-16: save it again as UTF-8"));
        }
        int at = Arrays.mismatch(bytes, UTF8_MARK) == UTF8_MARK.length ? UTF8_MARK.length : 0;
        while (at < bytes.length && (bytes[at] == ' ' || bytes[at] == '\t' || bytes[at] == '\r' || bytes[at] == '\n')) {
            at++;
        }
        if (at == bytes.length) {
            return at < PEEK ? Optional.of(empty()) : Optional.empty();
        }
        return bytes[at] == '{' ? Optional.empty() : Optional.of(notJson(shown(bytes, at)));
    }

    static Problem empty() {
        return Problem.error("FILE_EMPTY", Where.WHOLE, "the file is empty: choose another, or export it again");
    }

    static Problem notJson(String beginning) {
        return Problem.error(
                "NOT_JSON",
                Where.line(1),
                "begins with " + beginning + ", not with {: this is neither a Loamline project nor GeoJSON");
    }

    private static String shown(byte[] bytes, int at) {
        byte[] some = Arrays.copyOfRange(bytes, at, Math.min(at + 4, bytes.length));
        boolean printable = true;
        for (byte b : some) {
            printable &= b >= ' ' && b < 0x7F;
        }
        return printable
                ? "“" + new String(some, StandardCharsets.US_ASCII) + "”"
                : "the bytes " + HexFormat.ofDelimiter(" ").formatHex(some);
    }

    /** A mark of those encodings, or an opening brace of two bytes. */
    private static boolean isUtf16(byte[] bytes) {
        if (bytes.length < 2) {
            return false;
        }
        int pair = (bytes[0] & 0xFF) << 8 | (bytes[1] & 0xFF);
        return pair == 0xFEFF || pair == 0xFFFE || pair == '{' || pair == '{' << 8;
    }
}

package loamline.files;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import loamline.account.Problem;
import loamline.account.Where;

/**
 * Bytes as text: UTF-8, UTF-16 where a byte-order mark says so, and otherwise Windows-1252, which is what spreadsheets
 * write where they do not write UTF-8.
 *
 * @param text without byte-order mark
 * @param problem a warning if it was not UTF-8 or UTF-16
 */
record DecodedText(String text, Optional<Problem> problem) {
    private static final char BYTE_ORDER_MARK = '\uFEFF';

    static DecodedText of(byte[] content) {
        String start = new String(content, 0, Math.min(2, content.length), StandardCharsets.ISO_8859_1);
        boolean utf16 = start.equals("\u00FE\u00FF") || start.equals("\u00FF\u00FE");
        try {
            Charset charset = utf16 ? StandardCharsets.UTF_16 : StandardCharsets.UTF_8;
            String text = charset.newDecoder().decode(ByteBuffer.wrap(content)).toString();
            return new DecodedText(withoutMark(text), Optional.empty());
        } catch (CharacterCodingException e) {
            return new DecodedText(
                    new String(content, Charset.forName("windows-1252")),
                    Optional.of(Problem.warning(
                            "TEXT_NOT_UTF8",
                            Where.WHOLE,
                            "is not UTF-8 and was read as Windows-1252: check letters with accents,"
                                    + " or save the file as UTF-8")));
        }
    }

    private static String withoutMark(String text) {
        return !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text;
    }
}

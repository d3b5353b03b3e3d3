package loamline.files;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * What a file held at one time, to tell later whether somebody changed it.
 *
 * @param sha256 SHA-256 of the bytes, in hexadecimal digits
 */
public record Fingerprint(String sha256) {
    /**
     * Of a file as it is now.
     *
     * @throws IOException if it cannot be read
     */
    public static Fingerprint of(Path file) throws IOException {
        MessageDigest digest = digest();
        try (InputStream in = new DigestInputStream(Files.newInputStream(file), digest)) {
            in.transferTo(OutputStream.nullOutputStream());
        }
        return of(digest);
    }

    static Fingerprint of(byte[] bytes) {
        MessageDigest digest = digest();
        digest.update(bytes);
        return of(digest);
    }

    private static Fingerprint of(MessageDigest digest) {
        return new Fingerprint(HexFormat.of().formatHex(digest.digest()));
    }

    private static MessageDigest digest() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}

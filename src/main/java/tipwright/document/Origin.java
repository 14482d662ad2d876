// SPDX-License-Identifier: Apache-2.0
package tipwright.document;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * Where a design came from, so that a print can be matched to a file.
 *
 * @param file name as given
 * @param hash SHA-256 of the file in hex
 * @param version of the program
 * @param date of the print, as written
 */
public record Origin(String file, String hash, String version, String date) {
    private static final int SHORT = 12;

    /** Of a file with this text. */
    public static Origin of(String file, String text, String version, String date) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return new Origin(file, HexFormat.of().formatHex(digest), version, date);
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    String shortHash() {
        return hash.substring(0, Math.min(SHORT, hash.length()));
    }
}

// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** A file that a design was read from, byte for byte. */
public final class SourceFile {
    private final String name;
    private final boolean shipped;
    private final byte[] bytes;

    SourceFile(String name, boolean shipped, byte[] bytes) {
        this.name = name;
        this.shipped = shipped;
        this.bytes = bytes;
    }

    /** As the design or the command line names it. */
    public String name() {
        return name;
    }

    /** Whether it came with the program, not from the design's folder. */
    public boolean shipped() {
        return shipped;
    }

    /** SHA-256 in hex; worked out when asked for, as most uses of a design do not need it. */
    public String sha256() {
        return sha256(bytes);
    }

    /** SHA-256 of bytes, in hex. */
    public static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}

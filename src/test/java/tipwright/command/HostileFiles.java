// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Random;

/** What no reader should choke on. */
final class HostileFiles {
    private static final int LARGE = 60_000_000;

    private HostileFiles() {}

    /** Files that are no design and no list of parts. */
    static Map<String, byte[]> texts() {
        Map<String, byte[]> all = new LinkedHashMap<>();
        byte[] noise = new byte[200_000];
        new Random(8).nextBytes(noise);
        all.put("empty", new byte[0]);
        all.put("noise", noise);
        all.put("huge", new byte[LARGE]);
        all.put("huge text", "a: b\n".repeat(LARGE / 5).getBytes(StandardCharsets.US_ASCII));
        all.put("one long line", "a".repeat(9_000_000).getBytes(StandardCharsets.US_ASCII));
        all.put("deep", "[{a: ".repeat(1_000_000).getBytes(StandardCharsets.US_ASCII));
        all.put("wide characters", "tipwright: 1".getBytes(StandardCharsets.UTF_16LE));
        all.put("not UTF-8", new byte[] {'n', 'a', 'm', 'e', ':', ' ', (byte) 0xff, (byte) 0xfe});
        all.put("anchors in anchors", anchors().getBytes(StandardCharsets.US_ASCII));
        all.put("tags", "!!javax.script.ScriptEngineManager [!!java.net.URL [x]]".getBytes(StandardCharsets.US_ASCII));
        return all;
    }

    /** Every line names the one before nine times. */
    private static String anchors() {
        StringBuilder text = new StringBuilder("a0: &a0 x\n");
        for (int i = 1; i < 30; i++) {
            String before = "*a" + (i - 1) + ", ";
            text.append("a" + i + ": &a" + i + " [" + before.repeat(8) + "*a" + (i - 1) + "]\n");
        }
        return text.toString();
    }

    /** Files that are no mesh. */
    static Map<String, byte[]> meshes() {
        Map<String, byte[]> all = texts();
        all.put("promises 4 billion triangles", promising(-1));
        all.put("promises one more than it has", promising(2));
        all.put("infinite corner", corner(Float.POSITIVE_INFINITY));
        all.put("no number", corner(Float.NaN));
        all.put("largest number", corner(Float.MAX_VALUE));
        all.put("flat", corner(0));
        return all;
    }

    /** A binary mesh of one triangle that says it has more. */
    private static byte[] promising(int triangles) {
        return ByteBuffer.allocate(84 + 50)
                .order(ByteOrder.LITTLE_ENDIAN)
                .putInt(80, triangles)
                .array();
    }

    private static byte[] corner(float x) {
        ByteBuffer mesh =
                ByteBuffer.allocate(84 + 50).order(ByteOrder.LITTLE_ENDIAN).putInt(80, 1);
        return mesh.putFloat(84 + 12, x).putFloat(84 + 28, 1).array();
    }
}

// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;

/**
 * Reads and writes STL, the triangle mesh file that drawing programs export. Normals in the file are not trusted: the
 * order of a triangle's corners tells its outside.
 *
 * <p>Binary: 80 bytes of header, the number of triangles as 4 bytes, then 50 bytes a triangle (normal and three corners
 * as little-endian floats, 2 spare bytes).
 *
 * <p>Source: 3D Systems, StereoLithography Interface Specification, 1989 (from memory).
 */
public final class Stl {
    private static final int HEADER = 84;
    private static final int RECORD = 50;

    private Stl() {}

    /**
     * Reads a binary or text file; vertices at the same place are joined, nothing else is checked (see {@link
     * MeshCheck}).
     *
     * @param bytes the whole file; not changed
     * @return the mesh in the file's own unit, which STL does not tell
     * @throws StlException if it is not STL, is cut short, or holds a coordinate that is not a number
     */
    public static Mesh read(byte[] bytes) throws StlException {
        if (bytes.length == 0) {
            throw new StlException("the file is empty");
        }
        long promised = promised(bytes);
        // some programs start binary files with 'solid' too, so the size decides first
        boolean binary = promised == bytes.length;
        if (!binary && StlText.looksLike(bytes)) {
            return StlText.read(bytes);
        }
        if (bytes.length < HEADER) {
            throw new StlException(
                    "not an STL file: " + bytes.length + " bytes long, does not start with 'solid', and a "
                            + "binary file has at least " + HEADER + " bytes");
        }
        if (!binary) {
            throw new StlException("not a whole binary STL file: the number at byte 80 promises " + count(bytes)
                    + " triangles in " + promised + " bytes, but there are " + bytes.length
                    + " bytes; export the mesh again");
        }
        return binary(bytes);
    }

    private static long count(byte[] bytes) {
        return buffer(bytes).getInt(80) & 0xffffffffL;
    }

    /** Size that the number of triangles in a binary file asks for, or -1. */
    private static long promised(byte[] bytes) {
        return bytes.length < HEADER ? -1 : HEADER + RECORD * count(bytes);
    }

    private static ByteBuffer buffer(byte[] bytes) {
        return ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
    }

    private static Mesh binary(byte[] bytes) throws StlException {
        ByteBuffer buffer = buffer(bytes);
        // the size of the file has been found to agree with the count
        int n = (bytes.length - HEADER) / RECORD;
        double[] xyz = new double[9 * n];
        for (int t = 0; t < n; t++) {
            int at = HEADER + RECORD * t + 12;
            for (int i = 0; i < 9; i++) {
                double value = buffer.getFloat(at + 4 * i);
                if (!Double.isFinite(value)) {
                    throw new StlException("triangle " + (t + 1) + " has a coordinate that is not a number (" + value
                            + " at byte " + (at + 4 * i) + "); export the mesh again");
                }
                xyz[9 * t + i] = value;
            }
        }
        return loose(xyz);
    }

    /** The mesh of loose triangles, equal vertices joined. */
    static Mesh loose(double[] xyz) throws StlException {
        if (xyz.length == 0) {
            throw new StlException("the file holds no triangles");
        }
        int[] corners = new int[xyz.length / 3];
        for (int i = 0; i < corners.length; i++) {
            corners[i] = i;
        }
        return new Mesh(xyz, corners).welded();
    }

    /**
     * The mesh as a binary file, coordinates rounded to single precision.
     *
     * @param mesh in the unit the file shall have; not changed
     */
    public static byte[] binary(Mesh mesh) {
        byte[] bytes = new byte[HEADER + RECORD * mesh.triangles()];
        ByteBuffer buffer = buffer(bytes);
        buffer.put("binary STL".getBytes(StandardCharsets.US_ASCII));
        buffer.position(80);
        buffer.putInt(mesh.triangles());
        for (int t = 0; t < mesh.corners().length; t += 3) {
            Vec3 a = mesh.vertex(mesh.corners()[t]);
            Vec3 b = mesh.vertex(mesh.corners()[t + 1]);
            Vec3 c = mesh.vertex(mesh.corners()[t + 2]);
            Vec3 cross = b.minus(a).cross(c.minus(a));
            put(buffer, cross.norm() > 0 ? cross.unit() : Vec3.ZERO);
            put(buffer, a);
            put(buffer, b);
            put(buffer, c);
            buffer.putShort((short) 0);
        }
        return bytes;
    }

    private static void put(ByteBuffer buffer, Vec3 p) {
        buffer.putFloat((float) p.x());
        buffer.putFloat((float) p.y());
        buffer.putFloat((float) p.z());
    }
}

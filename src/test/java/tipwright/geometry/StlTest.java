// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class StlTest {
    private static final Mesh TANK = Shapes.tank(5).mesh(0.01);

    private static byte[] text(String content) {
        return content.getBytes(StandardCharsets.US_ASCII);
    }

    private static String asText(Mesh mesh, String newline) {
        StringBuilder out = new StringBuilder("solid a tank of facets" + newline);
        for (int t = 0; t < mesh.corners().length; t += 3) {
            out.append("  facet normal 0 0 0")
                    .append(newline)
                    .append("    outer loop")
                    .append(newline);
            for (int i = t; i < t + 3; i++) {
                Vec3 p = mesh.vertex(mesh.corners()[i]);
                out.append("      vertex\t" + p.x() + " " + p.y() + "  " + p.z())
                        .append(newline);
            }
            out.append("    endloop").append(newline).append("  endfacet").append(newline);
        }
        return out.append("endsolid").append(newline).toString();
    }

    @Test
    void whatWasWrittenIsReadBack() throws StlException {
        Mesh back = Stl.read(Stl.binary(TANK));
        assertThat(back.triangles()).isEqualTo(TANK.triangles());
        assertThat(back.volume()).isCloseTo(TANK.volume(), within(1e-5 * TANK.volume()));
        assertThat(MeshCheck.fault(back)).isNull();
        assertThat(Polyhedron.of(back).convex()).isTrue();
    }

    @Test
    void aBinaryFileMayBeginWithSolid() throws StlException {
        byte[] bytes = Stl.binary(TANK);
        System.arraycopy(text("solid made by some program, units=mm "), 0, bytes, 0, 37);
        assertThat(Stl.read(bytes).triangles()).isEqualTo(TANK.triangles());
        byte[] cut = Arrays.copyOf(bytes, bytes.length - 1);
        assertThatThrownBy(() -> Stl.read(cut))
                .isInstanceOf(StlException.class)
                .hasMessageStartingWith("not a whole binary STL file");
    }

    @ParameterizedTest
    @ValueSource(strings = {"\n", "\r\n", "\r", "\n\n"})
    void textIsReadWhateverItsLineEnds(String newline) throws StlException {
        Mesh back = Stl.read(text(asText(TANK, newline)));
        assertThat(back.triangles()).isEqualTo(TANK.triangles());
        assertThat(back.volume()).isCloseTo(TANK.volume(), within(1e-12));
        assertThat(Stl.read(text(asText(TANK, newline).toUpperCase(java.util.Locale.ROOT)))
                        .volume())
                .isCloseTo(TANK.volume(), within(1e-12));
    }

    @Test
    void absurdCountsAreRefusedBeforeAnythingIsAllocated() {
        byte[] bytes = new byte[84 + 50];
        ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN).putInt(80, -1);
        assertThatThrownBy(() -> Stl.read(bytes))
                .hasMessage("not a whole binary STL file: the number at byte 80 promises 4294967295 triangles in "
                        + "214748364834 bytes, but there are 134 bytes; export the mesh again");
        assertThatThrownBy(() -> Stl.read(new byte[84])).hasMessage("the file holds no triangles");
        assertThatThrownBy(() -> Stl.read(new byte[0])).hasMessage("the file is empty");
        assertThatThrownBy(() -> Stl.read(new byte[20])).hasMessageStartingWith("not an STL file: 20 bytes long");
    }

    @Test
    void coordinatesThatAreNoNumbersAreRefused() {
        byte[] bytes = Stl.binary(TANK);
        ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN).putFloat(84 + 50 * 2 + 16, Float.NaN);
        assertThatThrownBy(() -> Stl.read(bytes))
                .hasMessage(
                        "triangle 3 has a coordinate that is not a number (NaN at byte 200); export the mesh again");
        ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN).putFloat(200, Float.POSITIVE_INFINITY);
        assertThatThrownBy(() -> Stl.read(bytes)).hasMessageContaining("Infinity at byte 200");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "vertex 0 0 NaN | line 4: 'NaN' is not a number",
                "vertex 0 0 1e999 | line 4: '1e999' is not a number",
                "vertex 0 0 1f | line 4: '1f' is not a number",
                "vertex 0 0 0x1 | line 4: '0x1' is not a number",
                "vertex 0 0 1-1 | line 4: '1-1' is not a number",
                "vertex 0 0 | line 4: a vertex has three coordinates; this one has 2",
                "vertex 0 0 0 0 0 | line 4: a vertex has three coordinates; this one has more",
                "endfacet | line 4: a facet has three vertices; this one has 0",
                "facet | line 4: 'facet' inside a facet",
                "endsolid | line 4: 'endsolid' inside a facet",
                "vertices | line 4: 'vertices' is not a word of text STL",
                "endloop | line 4: the file stops before 'endsolid': it is cut short",
            })
    void textFaultsNameTheLine(String line, String message) {
        assertThatThrownBy(() -> Stl.read(text("solid x\nfacet normal 0 0 1\nouter loop\n" + line)))
                .isInstanceOf(StlException.class)
                .hasMessage(message);
    }

    @Test
    void anyCutOrSpoiltFileGivesAMeshOrAStlException() {
        byte[] binary = Stl.binary(Polyhedron.box(new Vec3(1, 1, 1), Vec3.ZERO).mesh(1));
        byte[] text = text(asText(Polyhedron.box(new Vec3(1, 1, 1), Vec3.ZERO).mesh(1), "\n"));
        Random random = new Random(31);
        int refused = 0;
        for (int i = 0; i < 4000; i++) {
            byte[] source = i % 2 == 0 ? binary : text;
            byte[] spoilt = Arrays.copyOf(source, i % 3 == 0 ? random.nextInt(source.length) : source.length);
            for (int k = random.nextInt(4); k > 0 && spoilt.length > 0; k--) {
                spoilt[random.nextInt(spoilt.length)] = (byte) random.nextInt(256);
            }
            try {
                MeshCheck.fault(Stl.read(spoilt));
            } catch (StlException e) {
                assertThat(e.getMessage()).isNotBlank().matches("\\p{ASCII}*");
                refused++;
            }
        }
        assertThat(refused).isBetween(1000, 3999);
    }
}

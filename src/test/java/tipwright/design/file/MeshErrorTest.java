// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import static org.assertj.core.api.Assertions.assertThat;
import static tipwright.Swap.swap;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tipwright.design.tank.Opening;
import tipwright.geometry.Mesh;
import tipwright.geometry.Moments;
import tipwright.geometry.Stl;

/** Mistakes in a mesh interior are told at the line of the design that names the mesh. */
class MeshErrorTest {
    private static final String KEYS = "file: wash-tub.stl, unit: mm, at: [0 mm, 450 mm, 0 mm]";

    private static Reading read(Mesh mesh, String keys) throws IOException {
        return read(Stl.binary(mesh), keys);
    }

    private static Reading read(byte[] file, String keys) throws IOException {
        String text = new String(NamedFiles.shipped().read("wash-tub.yaml", 100_000), StandardCharsets.UTF_8);
        assertThat(text).contains(KEYS);
        NamedFiles files = (name, most) -> {
            if (name.equals("wash-tub.stl")) {
                return file;
            }
            throw new IOException("no such file beside the design");
        };
        return DesignFile.read("tub.yaml", swap(text, KEYS, keys), files);
    }

    private static List<String> told(Reading reading) {
        return reading instanceof Reading.Bad bad
                ? bad.problems().stream().map(Problem::text).toList()
                : List.of();
    }

    private static Mesh without(int triangles) {
        int[] corners = WashTubTest.tub().corners();
        return new Mesh(WashTubTest.tub().xyz(), Arrays.copyOf(corners, corners.length - 3 * triangles));
    }

    @Test
    void aSoundOneIsRead() throws IOException {
        Reading reading = read(WashTubTest.tub(), KEYS);
        assertThat(told(reading)).isEmpty();
        Moments whole =
                ((Reading.Good) reading).design().tank().interior().solid().whole();
        double byHand = WashTubTest.tub().volume() * 1e-9;
        assertThat(whole.volume()).isCloseTo(byHand, Offset.offset(byHand * 1e-6));
        assertThat(whole.centroid().y()).isBetween(0.45 + 0.21, 0.45 + 0.42);
    }

    /** Drawn without its lid and with no opening in the file: it is closed at its rim, which is the opening. */
    @Test
    void anOpenTubHasItsMouth() throws IOException {
        Mesh tub = WashTubTest.tub();
        int top = tub.xyz().length / 6;
        int[] kept = new int[tub.corners().length];
        int k = 0;
        for (int i = 0; i < kept.length; i += 3) {
            if (tub.corners()[i] < top || tub.corners()[i + 1] < top || tub.corners()[i + 2] < top) {
                System.arraycopy(tub.corners(), i, kept, k, 3);
                k += 3;
            }
        }
        byte[] file = Stl.binary(new Mesh(tub.xyz(), Arrays.copyOf(kept, k)));
        String text = new String(NamedFiles.shipped().read("wash-tub.yaml", 100_000), StandardCharsets.UTF_8);
        text = text.replaceAll("(?s)  openings:\n.*?\nslurry:", "slurry:");
        Reading reading = DesignFile.read("tub.yaml", text, (name, most) -> file);
        assertThat(told(reading)).isEmpty();
        Reading.Good good = (Reading.Good) reading;
        assertThat(good.warnings()).isEmpty();
        Opening mouth = good.design().tank().openings().get(0);
        assertThat(mouth.points()).hasSize(top).allSatisfy(p -> assertThat(p.y())
                .isCloseTo(0.87, Offset.offset(1e-6)));
        double byHand = tub.volume() * 1e-9;
        assertThat(good.design().tank().interior().solid().whole().volume())
                .isCloseTo(byHand, Offset.offset(byHand * 1e-6));
        assertThat(good.assumptions()).anySatisfy(a -> assertThat(a.note()).contains("the rim is the opening"));
    }

    @Test
    void notWatertight() throws IOException {
        assertThat(told(read(without(1), KEYS)))
                .singleElement()
                .asString()
                .startsWith(
                        "tub.yaml:7:33: tank.interior.file: 'wash-tub.stl': the mesh is not watertight: 3 edges have a "
                                + "triangle on one side only, the first from (");
    }

    @Test
    void insideOut() throws IOException {
        int[] corners = WashTubTest.tub().corners();
        for (int i = 0; i < corners.length; i += 3) {
            int kept = corners[i];
            corners[i] = corners[i + 1];
            corners[i + 1] = kept;
        }
        assertThat(told(read(new Mesh(WashTubTest.tub().xyz(), corners), KEYS)))
                .containsExactly(
                        "tub.yaml:7:33: tank.interior.file: 'wash-tub.stl': the mesh is inside out: its triangles face inward; reverse "
                                + "their order in the drawing program");
    }

    @Test
    void notAMesh() throws IOException {
        assertThat(told(read(new byte[] {1, 2, 3}, KEYS)))
                .containsExactly(
                        "tub.yaml:7:33: tank.interior.file: 'wash-tub.stl': not an STL file: 3 bytes long, does not start with 'solid', "
                                + "and a binary file has at least 84 bytes");
    }

    @Test
    void notThere() throws IOException {
        assertThat(told(read(WashTubTest.tub(), swap(KEYS, "wash-tub", "tub"))))
                .containsExactly("tub.yaml:7:33: tank.interior.file: 'tub.stl': no such file beside the design");
    }

    @Test
    void largerThanAllowed(@TempDir Path folder) throws IOException {
        try (RandomAccessFile file =
                new RandomAccessFile(folder.resolve("wash-tub.stl").toFile(), "rw")) {
            file.setLength(50_000_001);
        }
        String text = new String(NamedFiles.shipped().read("wash-tub.yaml", 100_000), StandardCharsets.UTF_8);
        assertThat(told(DesignFile.read("tub.yaml", text, NamedFiles.folder(folder))))
                .containsExactly(
                        "tub.yaml:7:33: tank.interior.file: 'wash-tub.stl': is larger than 50 MB, the most for a mesh: a million "
                                + "triangles in binary STL; export it again with fewer triangles (a larger deviation from the "
                                + "true shape), or as binary STL if it is text");
    }

    @Test
    void outsideTheFolder() throws IOException {
        assertThat(told(read(WashTubTest.tub(), swap(KEYS, "wash-tub", "../tub"))))
                .containsExactly(
                        "tub.yaml:7:33: tank.interior.file: '..' in '../tub.stl' is in another folder; copy it into the folder of your design");
    }

    @Test
    void anUnknownUnit() throws IOException {
        assertThat(told(read(WashTubTest.tub(), swap(KEYS, "unit: mm", "unit: nm"))))
                .containsExactly("tub.yaml:7:53: tank.interior.unit: 'nm' is no unit of length; did you mean 'mm'?");
    }

    @Test
    void theWrongUnit() throws IOException {
        assertThat(told(read(WashTubTest.tub(), swap(KEYS, "unit: mm", "unit: m"))))
                .containsExactly(
                        "tub.yaml:7:33: tank.interior.file: 'wash-tub.stl': the mesh is 1100000 mm long in 'm'; is the unit right?");
    }

    @Test
    void everyMistakeAtOnce() throws IOException {
        assertThat(told(read(WashTubTest.tub(), "file: tub.stl, unit: furlong, at: [0, 0 mm, 0 mm]")))
                .containsExactly(
                        "tub.yaml:7:33: tank.interior.file: 'tub.stl': no such file beside the design",
                        "tub.yaml:7:48: tank.interior.unit: 'furlong' is no unit of length; allowed: mm, cm, m, in, ft or yd",
                        "tub.yaml:7:62: tank.interior.at: no unit in '0'; a length is needed; did you mean '0 mm'?");
    }
}

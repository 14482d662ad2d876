// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import tipwright.analysis.CannotComputeException;
import tipwright.check.Checker;
import tipwright.check.Result;
import tipwright.design.Design;
import tipwright.design.file.DesignFile;
import tipwright.design.file.NamedFiles;
import tipwright.design.file.Reading;

/**
 * The shipped wash tub with each of its 108 triangles divided into a square number of them: 218,700 and just under a million.
 *
 * <p>Run: {@code mvn -q -B -Pbench test-compile exec:exec@bench -Djmh.args=LargeMeshBenchmark}
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 1)
@Measurement(iterations = 3)
@Fork(1)
public class LargeMeshBenchmark {
    private static final String MESH = "wash-tub.stl";

    @Param({"45", "96"})
    private int sides;

    private String text = "";
    private byte[] file = new byte[0];
    private Design design;

    @Setup
    public void divide() throws IOException {
        text = new String(NamedFiles.shipped().read("wash-tub.yaml", 100_000), StandardCharsets.UTF_8);
        file = divided(NamedFiles.shipped().read(MESH, 100_000), sides);
        design = reading().design();
    }

    /** A binary STL file with the edges of its triangles divided, corners rounded to 1/64 so that neighbours agree. */
    private static byte[] divided(byte[] stl, int k) throws IOException {
        Mesh mesh;
        try {
            mesh = Stl.read(stl);
        } catch (StlException e) {
            throw new IOException(e);
        }
        double[] xyz = new double[9 * mesh.triangles() * k * k];
        int at = 0;
        for (int t = 0; t < mesh.triangles(); t++) {
            for (int i = 0; i < k; i++) {
                for (int j = 0; j < k - i; j++) {
                    at = put(mesh, t, k, new int[] {i, j, i + 1, j, i, j + 1}, xyz, at);
                    if (i + j < k - 1) {
                        at = put(mesh, t, k, new int[] {i + 1, j, i + 1, j + 1, i, j + 1}, xyz, at);
                    }
                }
            }
        }
        int[] corners = new int[xyz.length / 3];
        for (int i = 0; i < corners.length; i++) {
            corners[i] = i;
        }
        return Stl.binary(new Mesh(xyz, corners));
    }

    private static int put(Mesh mesh, int t, int k, int[] steps, double[] xyz, int at) {
        Vec3 a = mesh.vertex(mesh.corners()[3 * t]);
        Vec3 b = mesh.vertex(mesh.corners()[3 * t + 1]);
        Vec3 c = mesh.vertex(mesh.corners()[3 * t + 2]);
        int to = at;
        for (int s = 0; s < steps.length; s += 2) {
            double u = steps[s];
            double v = steps[s + 1];
            Vec3 p = a.times(k - u - v).plus(b.times(u)).plus(c.times(v)).times(64.0 / k);
            xyz[to++] = Math.rint(p.x()) / 64;
            xyz[to++] = Math.rint(p.y()) / 64;
            xyz[to++] = Math.rint(p.z()) / 64;
        }
        return to;
    }

    @Benchmark
    public Reading.Good reading() {
        NamedFiles files =
                (name, most) -> name.equals(MESH) ? file : NamedFiles.shipped().read(name, most);
        return (Reading.Good) DesignFile.read("tub.yaml", text, files);
    }

    @Benchmark
    public Result check() throws CannotComputeException {
        return Checker.check(design);
    }
}

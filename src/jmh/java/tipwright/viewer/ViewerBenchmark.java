// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import tipwright.analysis.CannotComputeException;
import tipwright.check.Early;
import tipwright.check.StagedCheck;
import tipwright.geometry.Mesh;
import tipwright.geometry.MeshCut;
import tipwright.geometry.Shading;
import tipwright.geometry.Vec2;
import tipwright.viewer.dump.DumpStates;
import tipwright.viewer.dump.MachineState;
import tipwright.viewer.dump.Timeline;
import tipwright.viewer.editor.DesignEditor;
import tipwright.viewer.editor.Handle;

/**
 * What the viewer does between two pictures on the demo: solving anew while a pin is dragged, and one moment of the dump while it
 * plays (linkage, surface for the volume, balances, the body of the liquid and its normals).
 *
 * <p>Run: {@code mvn -q -B -Pbench test-compile exec:exec@bench -Djmh.args=ViewerBenchmark}
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 3, time = 3)
@Fork(1)
public class ViewerBenchmark {
    private DesignEditor editor;
    private DesignEditor typed;
    private Handle pin;
    private DumpStates dump;
    private Mesh inside;
    private int step;

    @Setup
    public void prepare() throws IOException {
        try (InputStream in = ViewerBenchmark.class.getResourceAsStream("/tipwright/geometry/silt-trailer.yaml")) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            editor = new DesignEditor("demo", null, text, null);
            typed = new DesignEditor("demo", null, text, null);
        }
        pin = editor.handles().get(1);
        dump = new DumpStates(editor.solved().analysis());
        inside = dump.contents().solid().mesh(0.0019).welded();
    }

    /** From a new place of the frame pin to all forces and checks. */
    @Benchmark
    public @Nullable String drag() {
        step++;
        return editor.drag(pin, pin.at().plus(new Vec2(0.001 * (step % 40), 0.001 * (step % 17))));
    }

    /** From a fill that is typed to all forces and the quick checks: the text edited, read and solved. */
    @Benchmark
    public List<String> edit() {
        step++;
        return typed.write("slurry.fill", 50 + step % 30 + " %");
    }

    /** The checks of the edit before, ended, so that the next one starts from rest. */
    @State(Scope.Benchmark)
    public static class Rest {
        private @Nullable StagedCheck begun;

        @Setup(Level.Invocation)
        public void end() throws CannotComputeException {
            if (begun != null) {
                begun.inTime();
                begun = null;
            }
        }
    }

    /** From a fill that is typed to what every check finds that needs no time, over all fills: all that the window does but drawing. */
    @Benchmark
    public Early verdictAtRest(Rest rest) throws CannotComputeException {
        step++;
        typed.write("slurry.fill", 50 + step % 30 + " %");
        StagedCheck check = StagedCheck.of(typed.solved().analysis());
        rest.begun = check;
        return check.atRest();
    }

    /** From a time to the mesh of the liquid. */
    @Benchmark
    public float[] frame() {
        step++;
        MachineState now = dump.at("draining", new Timeline.Spot(1, 1e-4 * (step % 10_000), 0.3, 0.01, 1));
        return Shading.normals(MeshCut.below(inside, now.fill().surface()), 0.5);
    }
}

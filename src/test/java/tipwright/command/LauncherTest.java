// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The launcher for sh, with a Java that only says what it is asked. */
class LauncherTest {
    private static final Path DIST = Path.of("src/main/dist");

    @TempDir
    private Path folder;

    private Path app = Path.of("");

    @BeforeEach
    void setUp() throws IOException {
        assumeTrue(Files.isExecutable(Path.of("/bin/sh")), "only where there is an sh");
        app = folder.resolve("a folder, with (blanks) & more/tip wright");
        Files.createDirectories(app.resolve("bin"));
        Path launcher = app.resolve("bin/tipwright");
        Files.copy(DIST.resolve("tipwright"), launcher);
        assertThat(launcher.toFile().setExecutable(true)).isTrue();
    }

    private static void java(Path home, String release, String version) throws IOException {
        Files.createDirectories(home.resolve("bin"));
        if (!release.isEmpty()) {
            Files.writeString(home.resolve("release"), "IMPLEMENTOR=\"-\"\nJAVA_VERSION=\"" + release + "\"\n");
        }
        File java = Files.writeString(
                        home.resolve("bin/java"),
                        "#!/bin/sh\nif [ \"$1\" = -version ]; then echo '" + version + "' >&2; exit 0; fi\n"
                                + "for word in \"$@\"; do echo \"<$word>\"; done\n")
                .toFile();
        assertThat(java.setExecutable(true)).isTrue();
    }

    private Cli.Outcome run(Path launcher, Map<String, String> environment, String... args)
            throws IOException, InterruptedException {
        ProcessBuilder builder = new ProcessBuilder(launcher.toString());
        builder.command().addAll(List.of(args));
        builder.environment().remove("JAVA_HOME");
        builder.environment().putAll(environment);
        File out = folder.resolve("out").toFile();
        File err = folder.resolve("err").toFile();
        int code = builder.redirectOutput(out).redirectError(err).start().waitFor();
        return new Cli.Outcome(
                code,
                Files.readString(out.toPath(), StandardCharsets.UTF_8),
                Files.readString(err.toPath(), StandardCharsets.UTF_8));
    }

    private Cli.Outcome run(Path home, String... args) throws IOException, InterruptedException {
        return run(app.resolve("bin/tipwright"), Map.of("JAVA_HOME", home.toString()), args);
    }

    @Test
    void pathsAndArgumentsWithBlanksStayWhole() throws IOException, InterruptedException {
        Path home = folder.resolve("java home");
        java(home, "17.0.9", "");
        Cli.Outcome ran = run(home, "check", "my tank.yaml", "$(echo no)", "");
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out())
                .endsWith(
                        "<-jar>\n<" + app.toRealPath() + "/tipwright.jar>\n<check>\n<my tank.yaml>\n<$(echo no)>\n<>\n")
                .contains("<-Dtipwright.terminal=false>", "<-XX:TieredStopAtLevel=1>")
                .doesNotContain("SharedArchiveFile");
        assertThat(run(home, "place").out()).contains("<-XX:+TieredCompilation>");
        Files.writeString(app.resolve("tipwright.jsa"), "");
        assertThat(run(home).out())
                .contains("<-XX:SharedArchiveFile=" + app.toRealPath() + "/tipwright.jsa>\n<-Xlog:disable>\n")
                .contains("<-XX:+UnlockDiagnosticVMOptions>\n<-XX:ArchiveRelocationMode=0>\n");
    }

    @Test
    void itIsFoundThroughLinks() throws IOException, InterruptedException {
        java(folder.resolve("jdk"), "25.0.3", "");
        Path near = Files.createSymbolicLink(app.resolve("near"), Path.of("bin/tipwright"));
        Path far = Files.createSymbolicLink(folder.resolve("far"), near);
        Path path = Files.createDirectory(folder.resolve("path"));
        Files.createSymbolicLink(path.resolve("java"), folder.resolve("jdk/bin/java"));
        Cli.Outcome ran = run(far, Map.of("PATH", path + ":/usr/bin:/bin"), "units");
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out()).contains("<" + app.toRealPath() + "/tipwright.jar>");
    }

    @Test
    void itsOwnJavaGoesFirstAndIsNotAsked() throws IOException, InterruptedException {
        java(app.resolve("runtime"), "", "nothing");
        Cli.Outcome ran = run(folder.resolve("none"), "units");
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out()).endsWith("<units>\n");
    }

    @Test
    void aMissingJavaIsTold() throws IOException, InterruptedException {
        Cli.Outcome ran = run(folder.resolve("none"));
        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.err())
                .isEqualTo("tipwright: no Java found at '" + folder
                        + "/none/bin/java'; install Java 17 or later, or set JAVA_HOME " + "to its folder\n");
        // what stands for Java on a system without one and only says so
        Path stub = folder.resolve("stub");
        java(stub, "", "Unable to locate a Java Runtime.");
        assertThat(run(stub).err()).contains("no Java found at '" + stub + "/bin/java'");
    }

    @Test
    void anOldJavaIsTold() throws IOException, InterruptedException {
        Path old = folder.resolve("old");
        java(old, "11.0.2", "");
        Cli.Outcome ran = run(old);
        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err())
                .isEqualTo("tipwright: '" + old
                        + "/bin/java' is Java 11.0.2, too old; install Java 17 or later, or set JAVA_HOME "
                        + "to its folder\n");
        Path older = folder.resolve("older");
        java(older, "", "java version \"1.8.0_301\"\nJava(TM) SE Runtime Environment");
        assertThat(run(older).err()).contains("is Java 1.8.0_301, too old");
        Path fine = folder.resolve("fine");
        java(fine, "", "openjdk version \"21\" 2023-09-19");
        assertThat(run(fine).code()).isZero();
    }
}

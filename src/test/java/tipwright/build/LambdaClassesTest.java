// SPDX-License-Identifier: Apache-2.0
package tipwright.build;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URISyntaxException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Each kind of lambda does as a class of its own what it did before. */
class LambdaClassesTest {
    @TempDir
    Path folder;

    private Path from;
    private Path to;

    @BeforeEach
    void copied() throws Exception {
        from = Files.createDirectories(folder.resolve("from"));
        to = Files.createDirectories(folder.resolve("to"));
        Path here = classes(SomeLambdas.class).resolve("tipwright/build");
        Path there = Files.createDirectories(from.resolve("tipwright/build"));
        try (Stream<Path> all = Files.list(here)) {
            for (Path one : all.filter(p -> p.getFileName().toString().startsWith("SomeLambdas"))
                    .toList()) {
                Files.copy(one, there.resolve(one.getFileName()));
            }
        }
        Files.writeString(from.resolve("a note.txt"), "kept");
        Files.writeString(to.resolve("Old.class"), "of yesterday");
        LambdaClasses.copy(from, to);
    }

    private static Path classes(Class<?> of) throws URISyntaxException {
        return Path.of(of.getProtectionDomain().getCodeSource().getLocation().toURI());
    }

    @Test
    void eachKindOfLambdaGivesTheSame() throws Exception {
        try (URLClassLoader loader = loader()) {
            Class<?> packed = loader.loadClass(SomeLambdas.class.getName());
            assertThat(packed).isNotSameAs(SomeLambdas.class);
            assertThat(packed.getMethod("given").invoke(null)).isEqualTo(SomeLambdas.given());
        }
    }

    /** Java hides the classes that it makes itself; one that takes nothing along is one object however often it is asked for. */
    @Test
    void theyAreClassesOfTheirOwn() throws Exception {
        assertThat(SomeLambdas.objects()).allMatch(o -> o.getClass().isHidden());
        try (URLClassLoader loader = loader()) {
            Class<?> packed = loader.loadClass(SomeLambdas.class.getName());
            List<?> objects = (List<?>) packed.getMethod("objects").invoke(null);
            assertThat(objects).noneMatch(o -> o.getClass().isHidden());
            assertThat(objects.get(2)).isSameAs(objects.get(0));
            assertThat(objects.get(3)).isSameAs(objects.get(1));
            assertThat(packed.getMethod("serializable").invoke(null).getClass().isHidden())
                    .isTrue();
        }
    }

    @Test
    void otherFilesAreCopiedAndOldOnesAreGone() throws IOException {
        assertThat(to.resolve("a note.txt")).hasContent("kept");
        assertThat(to.resolve("Old.class")).doesNotExist();
    }

    @Test
    void twiceTheSame() throws IOException {
        Path again = folder.resolve("again");
        LambdaClasses.copy(from, again);
        try (Stream<Path> all = Files.walk(to)) {
            for (Path one : all.filter(Files::isRegularFile).toList()) {
                assertThat(again.resolve(to.relativize(one).toString())).hasSameBinaryContentAs(one);
            }
        }
    }

    private URLClassLoader loader() throws IOException {
        return new URLClassLoader(new URL[] {to.toUri().toURL()}, ClassLoader.getPlatformClassLoader());
    }
}

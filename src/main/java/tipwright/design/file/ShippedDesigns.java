// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.JarURLConnection;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.stream.Stream;

/** The designs that come with the program. */
public final class ShippedDesigns {
    private static final String FOLDER = "tipwright/geometry/";
    private static final String END = ".yaml";

    /** Always there. */
    private static final String ONE = "silt-trailer";

    private ShippedDesigns() {}

    /** Whether there is one with this name. */
    public static boolean has(String name) {
        return ShippedDesigns.class.getResource("/" + FOLDER + name + END) != null;
    }

    /** Names without ending, sorted. */
    public static List<String> names() {
        URL demo = ShippedDesigns.class.getResource("/" + FOLDER + ONE + END);
        if (demo == null) {
            return List.of();
        }
        try {
            List<String> files = demo.getProtocol().equals("jar") ? inJar(demo) : inFolder(demo.toURI());
            return files.stream()
                    .filter(f -> f.endsWith(END))
                    .map(f -> f.substring(0, f.length() - END.length()))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (URISyntaxException e) {
            throw new IllegalStateException(demo.toString(), e);
        }
    }

    private static List<String> inFolder(URI demo) throws IOException {
        try (Stream<Path> files = Files.list(Path.of(demo).resolveSibling("."))) {
            return files.map(p -> p.getFileName().toString()).toList();
        }
    }

    private static List<String> inJar(URL demo) throws IOException {
        JarURLConnection connection = (JarURLConnection) demo.openConnection();
        connection.setUseCaches(false);
        try (JarFile jar = connection.getJarFile()) {
            return jar.stream()
                    .map(JarEntry::getName)
                    .filter(n -> n.startsWith(FOLDER) && n.indexOf('/', FOLDER.length()) < 0)
                    .map(n -> n.substring(FOLDER.length()))
                    .toList();
        }
    }
}

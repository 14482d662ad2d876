// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.start;

import java.io.File;
import java.io.IOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** The command that starts a Java with the drawing library on its module path and everything else on its class path. */
final class DrawingJava {
    /** A class of each jar of the library, by its file. */
    private static final List<String> MARKS =
            List.of("javafx/scene/control/Button.class", "javafx/stage/Stage.class", "javafx/beans/Observable.class");

    private DrawingJava() {}

    /**
     * The command.
     *
     * @param program class with the main method
     * @param lasts whether it runs longer than a few seconds
     * @throws IOException when the library is not there
     */
    static List<String> command(String program, boolean lasts, List<String> arguments) throws IOException {
        ClassLoader loader = DrawingJava.class.getClassLoader();
        Set<String> modules = new LinkedHashSet<>();
        for (String mark : MARKS) {
            URL found = loader.getResource(mark);
            if (found == null || !found.toString().startsWith("jar:file:")) {
                throw new IOException(
                        "the drawing library JavaFX is missing beside the program; build it again with Maven");
            }
            String url = found.toString();
            modules.add(path(url.substring("jar:".length(), url.indexOf("!/"))));
        }
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.add("-XX:+UseSerialGC");
        if (!lasts) {
            // what ends soon starts sooner with the quick compiler alone; a window lasts long enough for the thorough
            // one
            command.add("-XX:TieredStopAtLevel=1");
        }
        command.add("-Dprism.forceGPU=true");
        // letters in colours for each third of a pixel take three times as long to draw without a graphics card
        command.add("-Dprism.lcdtext=false");
        command.add("-Djava.awt.headless=true");
        command.add("--module-path");
        command.add(String.join(File.pathSeparator, modules));
        command.add("--add-modules");
        command.add("javafx.controls");
        command.addAll(leave(Runtime.version().feature()));
        command.add("-cp");
        command.add(classPath(loader, modules));
        command.add(program);
        command.addAll(arguments);
        return command;
    }

    /**
     * Leave for the library to load its native part and to use memory outside the heap: later Javas warn without, earlier
     * ones do not know the words.
     *
     * @param java its feature number, such as 17
     */
    static List<String> leave(int java) {
        List<String> words = new ArrayList<>();
        if (java >= 22) {
            words.add("--enable-native-access=javafx.graphics");
        }
        if (java >= 23) {
            words.add("--sun-misc-unsafe-memory-access=allow");
        }
        return words;
    }

    /** Where the program's own classes are: as started, or as a build tool's class loader has them. */
    private static String classPath(ClassLoader loader, Set<String> modules) throws IOException {
        if (!(loader instanceof URLClassLoader urls)) {
            return System.getProperty("java.class.path");
        }
        List<String> parts = new ArrayList<>();
        for (URL url : urls.getURLs()) {
            String part = path(url.toString());
            if (!modules.contains(part)) {
                parts.add(part);
            }
        }
        return String.join(File.pathSeparator, parts);
    }

    private static String path(String url) throws IOException {
        try {
            return Path.of(new URI(url)).toString();
        } catch (URISyntaxException e) {
            throw new IOException("the program lies in a folder whose name it cannot use: " + url, e);
        }
    }
}

package lanewright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.jar.JarFile;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.slf4j.Logger;

/**
 * One class, one jar. Where two jars carry the same class, the order of the class path decides
 * which is used, and nobody sees it.
 */
class ClasspathTest {

    private static final Pattern SLF4J_2 = Pattern.compile("slf4j-api-2\\.[0-9.]+\\.jar");

    @Test
    void noClassLiesInTwoJars() throws IOException {
        var twice = new TreeMap<String, TreeSet<String>>();
        for (var found : jarsByClass().entrySet()) {
            List<String> jars = found.getValue();
            if (jars.size() > 1 && !known(found.getKey(), jars)) {
                String packageName =
                        found.getKey().substring(0, found.getKey().lastIndexOf('/') + 1);
                twice.computeIfAbsent(packageName, name -> new TreeSet<>()).addAll(jars);
            }
        }
        assertEquals(Map.of(), twice, "packages with a class in two jars");
    }

    /** The two doubles there are: each with its place, its pair of jars and its reason. */
    private static boolean known(String className, List<String> jars) {
        boolean withWrapper = jars.stream().anyMatch(jar -> jar.startsWith("geotools-wrapper-"));
        if (jars.size() != 2 || !withWrapper) {
            return false;
        }
        // The wrapper carries slf4j-api 1.7 too. Harmless while 2.x comes first.
        if (className.startsWith("org/slf4j/")) {
            return SLF4J_2.matcher(jars.get(0)).matches();
        }
        // Annotations that JUnit reads: only in tests, never in the application folder.
        return className.startsWith("org/apiguardian/api/")
                && jars.stream().anyMatch(jar -> jar.startsWith("apiguardian-api-"));
    }

    @Test
    void loggingIsTheNewOne() {
        Path jar =
                Path.of(Logger.class.getProtectionDomain().getCodeSource().getLocation().getPath());
        String name = String.valueOf(jar.getFileName());
        assertTrue(SLF4J_2.matcher(name).matches(), () -> "org.slf4j.Logger came from " + jar);
    }

    /** Jars in class path order, by the name of the class file they hold. */
    private static Map<String, List<String>> jarsByClass() throws IOException {
        var jars = new TreeMap<String, List<String>>();
        for (String entry : System.getProperty("java.class.path").split(File.pathSeparator, -1)) {
            if (!entry.endsWith(".jar")) {
                continue;
            }
            String jar = String.valueOf(Path.of(entry).getFileName());
            try (var file = new JarFile(entry)) {
                file.stream()
                        .map(each -> each.getName())
                        .filter(name -> name.endsWith(".class"))
                        .filter(name -> !name.startsWith("META-INF/"))
                        .filter(name -> !name.endsWith("module-info.class"))
                        .forEach(
                                name ->
                                        jars.merge(
                                                name,
                                                List.of(jar),
                                                (some, more) ->
                                                        Stream.concat(some.stream(), more.stream())
                                                                .toList()));
            }
        }
        assertTrue(jars.containsKey("org/slf4j/Logger.class"), "the class path was not read");
        return jars;
    }
}

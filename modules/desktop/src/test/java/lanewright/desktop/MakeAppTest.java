package lanewright.desktop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringWriter;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.tools.JavaCompiler;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program that makes the application stands outside of what Maven compiles. */
class MakeAppTest {

    private static final Path SOURCE = Path.of("src", "packaging", "MakeApp.java");

    @TempDir Path folder;

    private Class<?> compiled() throws Exception {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        StringWriter said = new StringWriter();
        try (var files = compiler.getStandardFileManager(null, null, null)) {
            boolean done =
                    compiler.getTask(
                                    said,
                                    files,
                                    null,
                                    List.of(
                                            "-Xlint:all",
                                            "-Werror",
                                            "--release",
                                            "17",
                                            "-proc:none",
                                            "-d",
                                            folder.toString()),
                                    null,
                                    files.getJavaFileObjects(SOURCE))
                            .call();
            assertTrue(done, said.toString());
        }
        URLClassLoader loader =
                new URLClassLoader(
                        new URL[] {folder.toUri().toURL()}, MakeAppTest.class.getClassLoader());
        return loader.loadClass("MakeApp");
    }

    private static Object call(Class<?> in, String name, Object... arguments) throws Exception {
        for (Method method : in.getDeclaredMethods()) {
            if (method.getName().equals(name) && method.getParameterCount() == arguments.length) {
                method.setAccessible(true);
                return method.invoke(null, arguments);
            }
        }
        throw new AssertionError("there is no " + name);
    }

    @Test
    void onlyTheScreenOfThisMachineGoesIntoTheRuntime() throws Exception {
        Class<?> makeApp = compiled();
        List<Path> jars =
                java.util.Arrays.stream(
                                System.getProperty("java.class.path")
                                        .split(java.io.File.pathSeparator))
                        .filter(entry -> entry.contains("javafx-") && !entry.contains("swing"))
                        .map(Path::of)
                        .toList();
        Object modules = call(makeApp, "screen", jars);
        List<?> words = (List<?>) call(makeApp, "jlink", modules, Path.of("runtime"));
        String added = (String) words.get(words.indexOf("--add-modules") + 1);
        assertTrue(
                added.endsWith(",javafx.base,javafx.controls,javafx.graphics"),
                "one module for each jar that is not empty: " + added);
        assertTrue(added.contains("java.sql"), "the reference systems are in a database");
        assertFalse(added.contains("Empty"), added);
    }

    @Test
    void theTwoProgramsDifferByMoreThanTheSizeOfLetters() throws Exception {
        Class<?> makeApp = compiled();
        for (String system : List.of("linux", "mac os x", "windows 11")) {
            List<?> words =
                    (List<?>)
                            call(
                                    makeApp,
                                    "jpackage",
                                    system,
                                    Path.of("input"),
                                    Path.of("runtime"),
                                    "lanewright-desktop-0.1.0.jar",
                                    Path.of("line.properties"),
                                    Path.of("icon"),
                                    Path.of("app"));
            String window = (String) words.get(words.indexOf("--name") + 1);
            String line = (String) words.get(words.indexOf("--add-launcher") + 1);
            assertEquals("lanewright=line.properties", line);
            assertFalse(window.equalsIgnoreCase("lanewright"));
            assertEquals(
                    system.startsWith("mac") ? -1 : words.size() - 2,
                    words.indexOf("--app-version"),
                    "a Mac takes no version that begins with 0");
        }
    }

    @Test
    void withoutABuildItSaysWhatToDo() throws Exception {
        Class<?> makeApp = compiled();
        try {
            call(makeApp, "jars", List.of(folder.resolve("lib")));
        } catch (InvocationTargetException e) {
            assertTrue(String.valueOf(e.getCause().getMessage()).contains("mvn package"));
            return;
        }
        throw new AssertionError("it went on without its libraries");
    }

    @Test
    void whatItPutsInIsThere() throws Exception {
        String source = Files.readString(SOURCE);
        for (String paper : List.of("LICENSE.txt", "NOTICE.txt", "GPL-2-with-exception.txt")) {
            assertTrue(source.contains('"' + paper + '"'));
            assertTrue(Files.isRegularFile(Path.of("..", "..", "docs", paper)), paper);
        }
    }
}

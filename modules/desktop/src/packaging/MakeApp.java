import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.File;
import java.io.IOException;
import java.lang.module.ModuleFinder;
import java.lang.module.ModuleReference;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;
import java.util.spi.ToolProvider;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.imageio.ImageIO;

/**
 * Makes an application with its own Java of what was built, for the machine it is made on: a folder
 * in which the window and the command line start on a machine that has no Java. Run from the top of
 * the project, after {@code mvn package}:
 *
 * <pre>java modules/desktop/src/packaging/MakeApp.java</pre>
 */
public final class MakeApp {

    /** Names that differ by more than the size of letters, which some file systems do not see. */
    static final String WINDOW = "LanewrightDesk";

    static final String LINE = "lanewright";

    /**
     * Parts of Java that the libraries use, as {@code jdeps} tells, and two that are asked for by
     * name at run time: other alphabets in survey files, and archives.
     */
    static final List<String> JAVA =
            List.of(
                    "java.compiler",
                    "java.desktop",
                    "java.instrument",
                    "java.logging",
                    "java.management",
                    "java.naming",
                    "java.prefs",
                    "java.rmi",
                    "java.sql",
                    "java.xml",
                    "jdk.charsets",
                    "jdk.unsupported",
                    "jdk.zipfs");

    private final Path top;
    private final Path target;
    private final Path parts;

    private MakeApp(Path top) {
        this.top = top;
        this.target = top.resolve("modules").resolve("desktop").resolve("target");
        this.parts = target.resolve("app-parts");
    }

    /** Makes it, or says why not and ends with 1. */
    public static void main(String[] arguments) throws IOException {
        try {
            Path made = new MakeApp(Path.of("").toAbsolutePath()).make();
            System.out.println("The application is in " + made);
        } catch (Refused e) {
            System.err.println(e.getMessage());
            System.exit(1);
        }
    }

    /** Why no application can be made. */
    static final class Refused extends RuntimeException {
        private static final long serialVersionUID = 1;

        Refused(String why) {
            super(why);
        }
    }

    private Path make() throws IOException {
        Path windowLib = target.resolve("window").resolve("lib");
        Path lineLib = top.resolve(Path.of("modules", "cli", "target", "lanewright", "lib"));
        List<Path> jars = jars(List.of(windowLib, lineLib));
        String windowJar = only(jars, "lanewright-desktop-");
        String lineJar = only(jars, "lanewright-cli-");
        List<ModuleReference> screen = screen(jars);

        empty(parts);
        empty(target.resolve("app"));
        Path input = Files.createDirectories(parts.resolve("input"));
        for (Path jar : jars) {
            if (!isScreen(jar)) {
                Files.copy(
                        jar,
                        input.resolve(name(jar)),
                        StandardCopyOption.COPY_ATTRIBUTES);
            }
        }
        for (String paper : List.of("LICENSE.txt", "NOTICE.txt", "GPL-2-with-exception.txt")) {
            Files.copy(top.resolve("docs").resolve(paper), input.resolve(paper));
        }
        copy(top.resolve("sample-surveys"), input.resolve("sample-surveys"));

        Path runtime = parts.resolve("runtime");
        run("jlink", jlink(screen, runtime));
        shareClasses(runtime);

        Path line = parts.resolve("line.properties");
        Files.writeString(line, lineLauncher(lineJar));
        String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
        Path icon = icon(system);
        run(
                "jpackage",
                jpackage(system, input, runtime, windowJar, line, icon, target.resolve("app")));
        return target.resolve("app");
    }

    /** Each jar once, by its name. */
    static List<Path> jars(List<Path> folders) throws IOException {
        TreeMap<String, Path> jars = new TreeMap<>();
        for (Path folder : folders) {
            if (!Files.isDirectory(folder)) {
                throw new Refused(
                        folder
                                + " is missing. Run this from the top of the project, after mvn"
                                + " package.");
            }
            try (Stream<Path> each = Files.list(folder)) {
                each.filter(path -> name(path).endsWith(".jar"))
                        .forEach(path -> jars.putIfAbsent(name(path), path));
            }
        }
        return List.copyOf(jars.values());
    }

    private static String name(Path path) {
        return String.valueOf(path.getFileName());
    }

    private static String only(List<Path> jars, String begins) {
        List<String> found =
                jars.stream().map(MakeApp::name).filter(name -> name.startsWith(begins)).toList();
        if (found.size() != 1) {
            throw new Refused(
                    "There should be one " + begins + "*.jar and there are " + found
                            + ". Build again after mvn clean.");
        }
        return found.get(0);
    }

    private static boolean isScreen(Path jar) {
        return name(jar).startsWith("javafx-");
    }

    /** The modules of JavaFX for this machine; the empty jars beside them are none. */
    static List<ModuleReference> screen(List<Path> jars) {
        Path[] some = jars.stream().filter(MakeApp::isScreen).toArray(Path[]::new);
        List<ModuleReference> modules =
                ModuleFinder.of(some).findAll().stream()
                        .filter(module -> !module.descriptor().isAutomatic())
                        .sorted(Comparator.comparing(module -> module.descriptor().name()))
                        .toList();
        if (modules.isEmpty()) {
            throw new Refused("There is no JavaFX for this machine among the libraries.");
        }
        return modules;
    }

    static List<String> jlink(List<ModuleReference> screen, Path runtime) {
        String path =
                screen.stream()
                        .map(module -> Path.of(module.location().orElseThrow()).toString())
                        .collect(Collectors.joining(File.pathSeparator));
        String modules =
                Stream.concat(
                                JAVA.stream(),
                                screen.stream().map(module -> module.descriptor().name()))
                        .collect(Collectors.joining(","));
        return List.of(
                "--module-path", path,
                "--add-modules", modules,
                "--no-header-files",
                "--no-man-pages",
                "--output", runtime.toString());
    }

    /** The command line beside the window: as its start script starts it. */
    static String lineLauncher(String jar) {
        return String.join(
                "\n",
                "main-jar=" + jar,
                "main-class=lanewright.cli.Main",
                "java-options=-XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Xshare:auto -Xmx1500m"
                        + " -Djava.awt.headless=true",
                "win-console=true",
                "");
    }

    static List<String> jpackage(
            String system,
            Path input,
            Path runtime,
            String jar,
            Path line,
            Path icon,
            Path into) {
        List<String> words =
                new ArrayList<>(
                        List.of(
                                "--type", "app-image",
                                "--name", WINDOW,
                                "--description", "Plans a gravel lane from survey points",
                                "--vendor", "Lanewright",
                                "--copyright", "Apache License 2.0",
                                "--input", input.toString(),
                                "--main-jar", jar,
                                "--main-class", "lanewright.desktop.Launcher",
                                "--java-options", "-Xmx2g",
                                "--runtime-image", runtime.toString(),
                                "--add-launcher", LINE + "=" + line,
                                "--icon", icon.toString(),
                                "--dest", into.toString()));
        String version = jar.replaceFirst(".*-(\\d[\\d.]*)\\.jar", "$1");
        // A Mac takes no version that begins with 0; then it goes without.
        if (version.matches("\\d[\\d.]*") && !(system.startsWith("mac") && version.startsWith("0"))) {
            words.addAll(List.of("--app-version", version));
        }
        return words;
    }

    private static void run(String tool, List<String> words) {
        ToolProvider found =
                ToolProvider.findFirst(tool)
                        .orElseThrow(
                                () ->
                                        new Refused(
                                                "This Java has no " + tool
                                                        + ". Take a whole JDK, 17 or newer."));
        int exit = found.run(System.out, System.err, words.toArray(String[]::new));
        if (exit != 0) {
            throw new Refused(tool + " failed with " + exit + ": " + String.join(" ", words));
        }
    }

    /** Lets the runtime keep its own classes ready, so that both programs start sooner. */
    private static void shareClasses(Path runtime) throws IOException {
        Path java = runtime.resolve("bin").resolve("java");
        Process dump =
                new ProcessBuilder(java.toString(), "-Xshare:dump", "-Xlog:disable")
                        .redirectErrorStream(true)
                        .start();
        String said = new String(dump.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        try {
            if (dump.waitFor() != 0) {
                System.out.println("The programs will start a little later: " + said.strip());
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new Refused("stopped");
        }
    }

    private static void empty(Path folder) throws IOException {
        if (Files.exists(folder)) {
            try (Stream<Path> each = Files.walk(folder)) {
                for (Path path : each.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(path);
                }
            }
        }
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> each = Files.walk(from)) {
            for (Path path : each.toList()) {
                Path there = to.resolve(from.relativize(path).toString());
                if (Files.isDirectory(path)) {
                    Files.createDirectories(there);
                } else {
                    Files.copy(path, there, StandardCopyOption.COPY_ATTRIBUTES);
                }
            }
        }
    }

    /** The picture of the program, in the form that a system takes. */
    private Path icon(String system) throws IOException {
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        if (!ImageIO.write(drawn(), "png", png)) {
            throw new Refused("This Java writes no PNG pictures.");
        }
        String ending = system.startsWith("windows") ? ".ico" : system.startsWith("mac") ? ".icns" : ".png";
        byte[] bytes =
                switch (ending) {
                    case ".ico" -> ico(png.toByteArray());
                    case ".icns" -> icns(png.toByteArray());
                    default -> png.toByteArray();
                };
        return Files.write(parts.resolve(WINDOW + ending), bytes);
    }

    /** A lane climbing over two folds of ground, 256 by 256. */
    private static BufferedImage drawn() {
        BufferedImage image = new BufferedImage(256, 256, BufferedImage.TYPE_INT_ARGB);
        Graphics2D on = image.createGraphics();
        on.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        on.setClip(new RoundRectangle2D.Double(8, 8, 240, 240, 56, 56));
        on.setColor(new Color(0xE9EDE4));
        on.fillRect(0, 0, 256, 256);
        Path2D far = new Path2D.Double();
        far.moveTo(0, 120);
        far.curveTo(60, 70, 150, 150, 256, 80);
        far.lineTo(256, 256);
        far.lineTo(0, 256);
        far.closePath();
        on.setColor(new Color(0xB7C4A3));
        on.fill(far);
        Path2D near = new Path2D.Double();
        near.moveTo(0, 190);
        near.curveTo(80, 150, 140, 220, 256, 160);
        near.lineTo(256, 256);
        near.lineTo(0, 256);
        near.closePath();
        on.setColor(new Color(0x8DA07A));
        on.fill(near);
        Path2D lane = new Path2D.Double();
        lane.moveTo(70, 256);
        lane.curveTo(80, 190, 190, 205, 176, 150);
        lane.curveTo(168, 118, 108, 130, 128, 98);
        on.setColor(new Color(0x4E4A42));
        on.setStroke(new BasicStroke(26, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        on.draw(lane);
        on.setColor(new Color(0xD8CFBD));
        on.setStroke(new BasicStroke(18, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        on.draw(lane);
        on.dispose();
        return image;
    }

    /** A Windows icon of one PNG picture. */
    private static byte[] ico(byte[] png) {
        ByteBuffer bytes = ByteBuffer.allocate(22 + png.length).order(ByteOrder.LITTLE_ENDIAN);
        bytes.putShort((short) 0).putShort((short) 1).putShort((short) 1);
        // Width and height 256 are written as 0; no palette; one plane of 32 bits.
        bytes.put((byte) 0).put((byte) 0).put((byte) 0).put((byte) 0);
        bytes.putShort((short) 1).putShort((short) 32).putInt(png.length).putInt(22).put(png);
        return bytes.array();
    }

    /** A Mac icon of one PNG picture of 256 by 256. */
    private static byte[] icns(byte[] png) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        DataOutputStream out = new DataOutputStream(bytes);
        out.write("icns".getBytes(StandardCharsets.US_ASCII));
        out.writeInt(16 + png.length);
        out.write("ic08".getBytes(StandardCharsets.US_ASCII));
        out.writeInt(8 + png.length);
        out.write(png);
        return bytes.toByteArray();
    }
}

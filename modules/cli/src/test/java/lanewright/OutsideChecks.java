package lanewright;

import com.sun.source.tree.AnnotationTree;
import com.sun.source.tree.AssignmentTree;
import com.sun.source.tree.BinaryTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.ExpressionTree;
import com.sun.source.tree.LiteralTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.ModifiersTree;
import com.sun.source.tree.ParenthesizedTree;
import com.sun.source.tree.Tree;
import com.sun.source.util.JavacTask;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/**
 * The checks against things outside the project, gathered from the sources of the tests: whatever
 * carries {@code @Tag("outside")}, with the three parts of its display name.
 *
 * <p>Sources and not classes, because no module sees the tests of all the others.
 */
final class OutsideChecks {

    /** How the expected value was come by. */
    private static final Set<String> MARKS =
            Set.of("read", "from memory", "derived", "common practice");

    /**
     * One check.
     *
     * @param module name of the folder in which the test lives
     * @param file source of the test, from the top of the project
     * @param test name of the class, and of the method unless the whole class is meant
     * @param what what is checked
     * @param source who says so
     * @param mark how the expected value was come by
     */
    record Check(
            String module, String file, String test, String what, String source, String mark) {}

    private final Path top;
    private final List<Check> checks = new ArrayList<>();
    private final List<String> faults = new ArrayList<>();

    private OutsideChecks(Path top) {
        this.top = top;
    }

    /**
     * Reads the tests of {@code modules}.
     *
     * @param top top folder of the project
     * @param modules folders under {@code modules}, in the order wanted
     */
    static OutsideChecks read(Path top, List<String> modules) throws IOException {
        var read = new OutsideChecks(top);
        for (String module : modules) {
            read.readModule(module);
        }
        return read;
    }

    /** All checks, by module, file and place in the file. */
    List<Check> checks() {
        return List.copyOf(checks);
    }

    /** Tests that carry the tag and do not say in three parts what they check. */
    List<String> faults() {
        return List.copyOf(faults);
    }

    private void readModule(String module) throws IOException {
        List<Path> tagged = new ArrayList<>();
        Path tests = top.resolve("modules").resolve(module).resolve("src/test/java");
        if (!Files.isDirectory(tests)) {
            return;
        }
        try (Stream<Path> files = Files.walk(tests)) {
            for (Path file : files.filter(f -> f.toString().endsWith(".java")).sorted().toList()) {
                if (Files.readString(file).contains("@Tag(\"outside\")")) {
                    tagged.add(file);
                }
            }
        }
        if (!tagged.isEmpty()) {
            parse(module, tagged);
        }
    }

    private void parse(String module, List<Path> files) throws IOException {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        try (StandardJavaFileManager manager =
                compiler.getStandardFileManager(null, Locale.ROOT, StandardCharsets.UTF_8)) {
            var task =
                    (JavacTask)
                            compiler.getTask(
                                    null,
                                    manager,
                                    null,
                                    List.of("-proc:none"),
                                    null,
                                    manager.getJavaFileObjectsFromPaths(files));
            for (CompilationUnitTree unit : task.parse()) {
                String file =
                        top.relativize(Path.of(unit.getSourceFile().toUri()))
                                .toString()
                                .replace('\\', '/');
                for (Tree type : unit.getTypeDecls()) {
                    if (type instanceof ClassTree found) {
                        readClass(module, file, found);
                    }
                }
            }
        }
    }

    private void readClass(String module, String file, ClassTree type) {
        String name = type.getSimpleName().toString();
        readOne(module, file, name, type.getModifiers());
        for (Tree member : type.getMembers()) {
            if (member instanceof MethodTree method) {
                readOne(module, file, name + "." + method.getName(), method.getModifiers());
            } else if (member instanceof ClassTree nested) {
                readClass(module, file, nested);
            }
        }
    }

    private void readOne(String module, String file, String test, ModifiersTree modifiers) {
        boolean outside =
                modifiers.getAnnotations().stream()
                        .filter(each -> each.getAnnotationType().toString().equals("Tag"))
                        .anyMatch(each -> words(each).equals(Optional.of("outside")));
        if (!outside) {
            return;
        }
        String[] parts =
                modifiers.getAnnotations().stream()
                        .filter(each -> each.getAnnotationType().toString().equals("DisplayName"))
                        .findFirst()
                        .flatMap(OutsideChecks::words)
                        .orElse("")
                        .split("\\|", -1);
        boolean whole = parts.length == 3 && MARKS.contains(parts[2].strip());
        if (!whole || parts[0].isBlank() || parts[1].isBlank()) {
            faults.add(file + ": " + test);
            return;
        }
        checks.add(
                new Check(
                        module, file, test, parts[0].strip(), parts[1].strip(), parts[2].strip()));
    }

    /** The one string of an annotation, if it is written out in literals. */
    private static Optional<String> words(AnnotationTree annotation) {
        if (annotation.getArguments().size() != 1) {
            return Optional.empty();
        }
        ExpressionTree argument = annotation.getArguments().get(0);
        return literal(argument instanceof AssignmentTree set ? set.getExpression() : argument);
    }

    private static Optional<String> literal(ExpressionTree tree) {
        if (tree instanceof ParenthesizedTree inner) {
            return literal(inner.getExpression());
        }
        if (tree instanceof BinaryTree sum && sum.getKind() == Tree.Kind.PLUS) {
            Optional<String> left = literal(sum.getLeftOperand());
            Optional<String> right = literal(sum.getRightOperand());
            return left.flatMap(l -> right.map(r -> l + r));
        }
        return tree instanceof LiteralTree text && text.getValue() instanceof String words
                ? Optional.of(words)
                : Optional.empty();
    }
}

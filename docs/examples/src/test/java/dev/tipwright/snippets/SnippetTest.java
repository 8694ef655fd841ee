package dev.tipwright.snippets;

import static org.assertj.core.api.Assertions.assertThat;

import dev.tipwright.core.quantity.Length;
import dev.tipwright.fitcheck.TipFit;
import dev.tipwright.swingweight.ClubBalance;
import java.io.File;
import java.lang.reflect.InvocationTargetException;
import java.net.URI;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.tools.Diagnostic;
import javax.tools.DiagnosticCollector;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** Every piece of code in README, guide and Javadoc compiles, runs, and prints what it says it prints. */
class SnippetTest {

    private static final Path ROOT = Path.of("").toAbsolutePath().getParent().getParent();

    /** {@code expression;   // = text}. */
    private static final Pattern CLAIM = Pattern.compile("(?m)^( *)([^\\n]*?); *// = ([^\\n]*)$");

    @TempDir
    Path classes;

    @TestFactory
    Stream<DynamicTest> everySnippet() {
        return Snippet.all(ROOT).stream()
                .map(snippet -> DynamicTest.dynamicTest(snippet.toString(), () -> run(snippet.code())));
    }

    @Test
    void thereAreSnippetsToRun() {
        List<Snippet> snippets = Snippet.all(ROOT);
        assertThat(snippets).hasSizeGreaterThan(20);
        assertThat(snippets).anyMatch(snippet -> snippet.file().endsWith("README.md"));
    }

    @Test
    void aWrongClaimIsSeen() {
        assertThat(failure("Length.ofInches(1).millimetres();   // = 25.4")).isEmpty();
        assertThat(failure("Length.ofInches(1).millimetres();   // = 25.5")).contains("25.5");
        assertThat(failure("Length.ofInches(1).furlongs();")).contains("furlongs");
    }

    private String failure(String code) {
        try {
            run(code);
            return "";
        } catch (AssertionError | Exception e) {
            return String.valueOf(e.getMessage());
        }
    }

    private void run(String code) throws Exception {
        String source = "public class Example {\n public static void run() throws Exception {\n"
                + CLAIM.matcher(code).replaceAll(SnippetTest::check) + "\n}\n"
                + " static void check(Object value, String text) {\n"
                + "  if (!String.valueOf(value).equals(text)) {\n"
                + "   throw new AssertionError(\"says \" + text + \" but gives \" + value);\n  }\n }\n}\n";
        compile(imports(source) + source);
        try (URLClassLoader loader = new URLClassLoader(
                new URL[] {classes.toUri().toURL()}, getClass().getClassLoader())) {
            loader.loadClass("Example").getMethod("run").invoke(null);
        } catch (InvocationTargetException e) {
            if (e.getCause() instanceof Exception cause) {
                throw cause;
            }
            throw (Error) e.getCause();
        }
    }

    private static String check(java.util.regex.MatchResult claim) {
        String text = claim.group(3).strip().replace("\\", "\\\\").replace("\"", "\\\"");
        return Matcher.quoteReplacement("check(" + claim.group(2).strip() + ", \"" + text + "\");");
    }

    /** Imports the API types, and of the JDK what examples use, by the simple names that occur. */
    private static String imports(String source) {
        Map<String, String> api = Stream.of(Length.class, TipFit.class, ClubBalance.class)
                .flatMap(type -> ApiTypes.of(type).stream())
                .collect(
                        Collectors.toMap(name -> name.substring(name.lastIndexOf('.') + 1), name -> name, (a, b) -> a));
        api.put("List", "java.util.List");
        api.put("Optional", "java.util.Optional");
        api.put("ArrayList", "java.util.ArrayList");
        api.put("Samples", "dev.tipwright.doors.Samples");
        TreeSet<String> used = new TreeSet<>();
        Matcher names = Pattern.compile("\\b[A-Z][A-Za-z0-9]*\\b").matcher(source);
        while (names.find()) {
            if (api.containsKey(names.group()) && !source.contains("import " + api.get(names.group()))) {
                used.add("import " + api.get(names.group()) + ";\n");
            }
        }
        return String.join("", used);
    }

    private void compile(String source) throws Exception {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        DiagnosticCollector<JavaFileObject> problems = new DiagnosticCollector<>();
        JavaFileObject file =
                new SimpleJavaFileObject(URI.create("string:///Example.java"), JavaFileObject.Kind.SOURCE) {
                    @Override
                    public CharSequence getCharContent(boolean ignoreEncodingErrors) {
                        return source;
                    }
                };
        List<String> options =
                List.of("-d", Files.createDirectories(classes).toString(), "-classpath", classPath(), "-proc:none");
        boolean compiled = compiler.getTask(null, null, problems, options, null, List.of(file))
                .call();
        String errors = problems.getDiagnostics().stream()
                .filter(problem -> problem.getKind() == Diagnostic.Kind.ERROR)
                .map(Object::toString)
                .collect(Collectors.joining("\n"));
        assertThat(compiled).as(errors + "\n" + source).isTrue();
    }

    private static String classPath() {
        return System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"))
                + File.pathSeparator
                + Stream.of(Length.class, TipFit.class, ClubBalance.class)
                        .map(type -> Path.of(URI.create(type.getProtectionDomain()
                                        .getCodeSource()
                                        .getLocation()
                                        .toString()))
                                .toString())
                        .collect(Collectors.joining(File.pathSeparator));
    }
}

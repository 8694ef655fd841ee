package dev.tipwright.catalogue;

import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.Trees;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/** The sources of the three modules as the JDK's own compiler reads them. */
final class Sources {

    static final Path ROOT = Path.of("").toAbsolutePath().getParent().getParent();

    private final List<CompilationUnitTree> units = new ArrayList<>();
    private final Trees trees;

    Sources() {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        StandardJavaFileManager files = compiler.getStandardFileManager(null, null, null);
        JavacTask task = (JavacTask) compiler.getTask(
                null, files, null, List.of("-proc:none"), null, files.getJavaFileObjectsFromPaths(paths()));
        try {
            task.parse().forEach(units::add);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        trees = Trees.instance(task);
    }

    private static List<Path> paths() {
        List<Path> paths = new ArrayList<>();
        for (String module : List.of("core", "fit-check", "swingweight")) {
            try (Stream<Path> files = Files.walk(ROOT.resolve(module).resolve("src/main/java"))) {
                files.filter(file -> file.toString().endsWith(".java"))
                        .filter(file -> !file.endsWith("module-info.java") && !file.endsWith("package-info.java"))
                        .sorted()
                        .forEach(paths::add);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return paths;
    }

    List<CompilationUnitTree> units() {
        return units;
    }

    Trees trees() {
        return trees;
    }
}

package dev.tipwright.doors;

import dev.tipwright.core.quantity.Length;
import dev.tipwright.fitcheck.TipFit;
import dev.tipwright.swingweight.ClubBalance;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.module.ModuleDescriptor;
import java.lang.module.ModuleFinder;
import java.lang.module.ModuleReader;
import java.lang.module.ModuleReference;
import java.lang.reflect.Modifier;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The public types in the exported packages of the three published modules, found in what was compiled. */
public final class Exported {

    private Exported() {}

    /** All of them. */
    public static List<Class<?>> types() {
        return Stream.of(Length.class, TipFit.class, ClubBalance.class)
                .flatMap(Exported::inModuleOf)
                .toList();
    }

    /** Those of the module that a type is in. */
    public static Stream<Class<?>> inModuleOf(Class<?> type) {
        try {
            Path classes = Path.of(
                    type.getProtectionDomain().getCodeSource().getLocation().toURI());
            ModuleReference module =
                    ModuleFinder.of(classes).findAll().iterator().next();
            List<String> packages = module.descriptor().exports().stream()
                    .filter(exports -> !exports.isQualified())
                    .map(ModuleDescriptor.Exports::source)
                    .toList();
            try (ModuleReader reader = module.open();
                    Stream<String> names = reader.list()) {
                return names
                        .filter(name -> name.endsWith(".class") && name.contains("/"))
                        .filter(name -> packages.contains(
                                name.substring(0, name.lastIndexOf('/')).replace('/', '.')))
                        .map(name -> name.substring(0, name.length() - 6).replace('/', '.'))
                        .filter(name -> !name.endsWith("package-info"))
                        .sorted()
                        .<Class<?>>map(Exported::load)
                        .filter(Exported::visible)
                        .toList()
                        .stream();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Public itself, and so is every class around it. */
    private static boolean visible(Class<?> type) {
        for (Class<?> c = type; c != null; c = c.getEnclosingClass()) {
            if (!Modifier.isPublic(c.getModifiers()) || c.isSynthetic() || c.isAnonymousClass()) {
                return false;
            }
        }
        return true;
    }

    private static Class<?> load(String name) {
        try {
            return Class.forName(name);
        } catch (ClassNotFoundException e) {
            throw new IllegalStateException(e);
        }
    }
}

package dev.tipwright.snippets;

import dev.tipwright.doors.Exported;
import java.util.List;

/** Full names of the exported top-level types of the module a type is in. */
final class ApiTypes {

    private ApiTypes() {}

    static List<String> of(Class<?> type) {
        return Exported.inModuleOf(type)
                .filter(exported -> exported.getEnclosingClass() == null)
                .map(Class::getName)
                .toList();
    }
}

package dev.tipwright.examples.read;

import java.util.ArrayList;
import java.util.List;

/** Collects what is wrong and what is unusual while the input is read. */
final class Problems {
    private final List<Problem> problems = new ArrayList<>();
    private final List<Problem> warnings = new ArrayList<>();

    void add(Problem problem) {
        problems.add(problem);
    }

    void warn(Problem warning) {
        warnings.add(warning);
    }

    boolean none() {
        return problems.isEmpty();
    }

    List<Problem> problems() {
        return List.copyOf(problems);
    }

    List<Problem> warnings() {
        return List.copyOf(warnings);
    }
}

package dev.tipwright.examples.read;

import java.util.List;

/** The files of a job and their columns. */
enum Table {
    JOB("job.csv", "setting, value, note"),
    BLANKS("blanks.csv", "blank, material, parallel tip, density of finish, density of structure"),
    SHAFTS("shafts.csv", "shaft, blank, raw length, mass, balance from tip, tip diameter, finish, wall, butt diameter"),
    TIPS("tips.csv", "shaft, from tip, diameter"),
    FLEX("flex.csv", "shaft, stiffness at tip, stiffness at butt, frequency, clamp, mass on tip"),
    GRIPS("grips.csv", "grip, mass, cap, length, centre of mass from top", "core, outside"),
    HEADS(
            "heads.csv",
            "head, kind, hand, bore end, mass, lie, loft, hosel outside, mouth to ground, centre of mass from mouth"),
    BORES("bores.csv", "head, depth, diameter, read with"),
    CHART("chart.csv", "club, blank, tip trim, bore bottom to ground"),
    TIP_WEIGHTS("tip-weights.csv", "tip weight, mass, stem diameter, flange thickness, centre above tip end"),
    INSTRUMENTS("instruments.csv", "instrument, measures, standard uncertainty"),
    CLUBS(
            "clubs.csv",
            "club, head, shaft, grip, stop, insertion, target length, length measured, target swing weight,"
                    + " swing weight within");

    private final String file;
    private final String columns;
    private final String optional;

    Table(String file, String columns) {
        this(file, columns, "");
    }

    Table(String file, String columns, String optional) {
        this.file = file;
        this.columns = columns;
        this.optional = optional;
    }

    String file() {
        return file;
    }

    List<String> columns() {
        return List.of(columns.split(", "));
    }

    /** Columns that may be left out altogether. */
    List<String> optional() {
        return optional.isEmpty() ? List.of() : List.of(optional.split(", "));
    }

    boolean knows(String column) {
        return columns().contains(column) || optional().contains(column);
    }

    /** Without a tapered tip there is nothing to say in {@code tips.csv}, nor in {@code flex.csv} where no shaft was timed. */
    boolean mayBeLeftOut() {
        return this == TIPS || this == FLEX;
    }

    /** Whether the line of column names alone says something: no tapered tip, no timing, no stock, no instruments. */
    boolean mayBeEmpty() {
        return mayBeLeftOut() || this == TIP_WEIGHTS || this == INSTRUMENTS;
    }
}

package dev.tipwright.examples.read;

/** What stands in one place of one file. */
record Cell(String file, int line, String column, String text) {

    boolean blank() {
        return text.isEmpty();
    }

    Problem problem(String expected) {
        return new Problem(file, line, column, blank() ? Problem.NOTHING : '"' + text + '"', expected);
    }
}

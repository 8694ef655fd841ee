package dev.tipwright.examples.read;

/**
 * Something wrong, or at least unusual, in the input.
 *
 * @param file which file
 * @param line which line, from 1; 0 if it is the file as a whole
 * @param column name of the column; empty if it is the line as a whole
 * @param found what stands there
 * @param expected what should
 */
public record Problem(String file, int line, String column, String found, String expected) {

    static final String NOTHING = "nothing";

    private static final int LONGEST = 80;

    /**
     * Shortens what was found to a line that can be printed.
     *
     * @param file which file
     * @param line which line, from 1; 0 if it is the file as a whole
     * @param column name of the column; empty if it is the line as a whole
     * @param found what stands there
     * @param expected what should
     */
    public Problem {
        found = printable(found);
        column = printable(column);
    }

    private static String printable(String text) {
        String line = text.replaceAll("\\p{Cntrl}+", " ");
        return line.length() <= LONGEST ? line : line.substring(0, LONGEST) + "...";
    }

    /**
     * Where it is, what was found and what was expected, in a line.
     *
     * @return such as {@code heads.csv, line 3, mass: found "2 kg", expected 100 g to 600 g}
     */
    @Override
    public String toString() {
        return file
                + (line == 0 ? "" : ", line " + line)
                + (column.isEmpty() ? "" : ", " + column)
                + ": found " + found + ", expected " + expected;
    }
}

package dev.tipwright.evidence;

/**
 * An independent general-purpose library that a test of a module draws on.
 *
 * @param library its name and what it does there
 * @param root how its packages begin
 * @param file the test, from the top of the project
 */
record Reference(String library, String root, String file) {

    String test() {
        return file.substring(file.lastIndexOf('/') + 1, file.length() - ".java".length());
    }
}

package dev.tipwright.guide;

import static org.assertj.core.api.Assertions.assertThat;

import dev.tipwright.core.quantity.Length;
import dev.tipwright.fitcheck.TipFit;
import dev.tipwright.lessons.LessonParts;
import dev.tipwright.swingweight.ClubBalance;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.io.PrintStream;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import jdk.jshell.tool.JavaShellToolBuilder;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The chapter for the JDK's shell prints what it says: its lines are typed into one session, set up by the very file that a reader starts
 * with, and what comes out is compared. With {@code -Dlessons.write=true} what comes out is written into the chapter, to be read before
 * it is committed.
 */
class JshellChapterTest {

    private static final Path ROOT = Path.of("").toAbsolutePath().getParent().getParent();
    private static final Path CHAPTER = ROOT.resolve("docs/guide/lessons.md");
    private static final Path START = ROOT.resolve("docs/examples/jshell/lesson.jsh");

    private static final Pattern BLOCK = Pattern.compile("(?s)```jshell\\n(.*?)```");
    private static final String PROMPT = "jshell> ";
    private static final String MORE = "   ...> ";

    /** What was typed, and what came out. */
    private record Turn(String typed, String printed) {}

    /** Lines that are wrong, typed after the chapter: one that is not understood must not pass for one that prints nothing. */
    private static final List<String> WRONG = List.of("in(\"1\").furlongs()", "in(\"1\").inches()");

    @TempDir
    static Path folder;

    private static List<Turn> session;

    @BeforeAll
    static void typeTheChapter() throws Exception {
        List<String> typed = new ArrayList<>();
        turns(blocks(Files.readString(CHAPTER))).forEach(turn -> typed.add(turn.typed()));
        typed.addAll(WRONG);
        Locale here = Locale.getDefault();
        try {
            Locale.setDefault(Locale.ENGLISH); // newer shells speak the reader's language, the chapter English
            session = session(typed);
        } finally {
            Locale.setDefault(here);
        }
    }

    @Test
    void printsWhatItSays() throws IOException {
        List<Turn> chapter = session.subList(0, session.size() - WRONG.size());
        if (Boolean.getBoolean("lessons.write")) {
            Files.writeString(CHAPTER, withOutput(Files.readString(CHAPTER), chapter));
        }
        List<Turn> told = turns(blocks(Files.readString(CHAPTER)));
        assertThat(told).hasSizeGreaterThan(30);
        assertThat(comparable(chapter)).containsExactlyElementsOf(comparable(told));
    }

    @Test
    void aLineThatIsWrongIsSeen() {
        assertThat(session.get(session.size() - 2).printed()).contains("Error", "furlongs");
        assertThat(session.get(session.size() - 1).printed()).contains("==> 1.0");
    }

    private static String blocks(String chapter) {
        return BLOCK.matcher(chapter).results().map(block -> block.group(1)).collect(Collectors.joining());
    }

    private static List<Turn> session(List<String> lines) throws Exception {
        String typed = String.join("\n", lines) + "\n/exit\n";
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (PrintStream page = new PrintStream(out, true, StandardCharsets.UTF_8)) {
            int code = JavaShellToolBuilder.builder()
                    .in(new ByteArrayInputStream(typed.getBytes(StandardCharsets.UTF_8)), null)
                    .out(page)
                    .err(page)
                    .persistence(new HashMap<>())
                    .start(startFile().toString());
            assertThat(code).as(out.toString(StandardCharsets.UTF_8)).isZero();
        }
        String text = out.toString(StandardCharsets.UTF_8).replace("\r", "");
        List<Turn> session = turns(text.substring(text.indexOf(PROMPT)));
        return session.subList(0, session.size() - 1); // the last is /exit
    }

    /** As it is, but for the class path, which is seen from the clone there. */
    private static Path startFile() throws IOException {
        String start = Files.readString(START);
        assertThat(start.lines().findFirst())
                .hasValueSatisfying(line -> assertThat(line)
                        .isEqualTo(
                                "/env -class-path core/target/classes:fit-check/target/classes:swingweight/target/classes"
                                        + ":docs/examples/target/classes"));
        String classPath = Stream.of(Length.class, TipFit.class, ClubBalance.class, LessonParts.class)
                .map(type -> Path.of(URI.create(type.getProtectionDomain()
                                .getCodeSource()
                                .getLocation()
                                .toString()))
                        .toString())
                .collect(Collectors.joining(File.pathSeparator));
        return Files.writeString(
                folder.resolve("lesson.jsh"), "/env -class-path " + classPath + start.substring(start.indexOf('\n')));
    }

    private static List<Turn> turns(String text) {
        List<Turn> turns = new ArrayList<>();
        StringBuilder typed = new StringBuilder();
        StringBuilder printed = new StringBuilder();
        for (String line : text.split("\n", -1)) {
            if (line.startsWith(PROMPT) && typed.length() > 0) {
                turns.add(new Turn(typed.toString(), printed.toString()));
                typed.setLength(0);
                printed.setLength(0);
            }
            if (line.startsWith(PROMPT)) {
                typed.append(line.substring(PROMPT.length()));
            } else if (line.startsWith(MORE)) {
                typed.append('\n').append(line.substring(MORE.length()));
            } else if (!line.isBlank() && !line.startsWith("|        at ")) {
                // Where in the library an error was thrown is no part of the lesson.
                printed.append(line.stripTrailing()).append('\n');
            }
        }
        turns.add(new Turn(typed.toString(), printed.toString()));
        return turns;
    }

    /** The running number of a line depends on how many were typed before; what a long value ends in after dots, on the JDK. */
    private static List<String> comparable(List<Turn> turns) {
        return turns.stream()
                .map(turn -> turn.typed() + "\n" + turn.printed())
                .map(text -> text.replaceAll("(?m)^\\$[0-9]+ ==>", "\\$n ==>").replaceAll("(?m) \\.\\.\\. .*$", ""))
                .toList();
    }

    private static String withOutput(String chapter, List<Turn> session) {
        int[] next = {0};
        return BLOCK.matcher(chapter).replaceAll(block -> Matcher.quoteReplacement(rewritten(block, session, next)));
    }

    private static String rewritten(MatchResult block, List<Turn> session, int[] next) {
        StringBuilder text = new StringBuilder("```jshell\n");
        for (int left = turns(block.group(1)).size(); left > 0; left--) {
            Turn turn = session.get(next[0]++);
            text.append(PROMPT).append(turn.typed().replace("\n", "\n" + MORE)).append('\n');
            text.append(turn.printed());
        }
        return text.append("```").toString();
    }
}

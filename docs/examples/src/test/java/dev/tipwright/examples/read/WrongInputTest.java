package dev.tipwright.examples.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import dev.tipwright.examples.Scenario;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** Each kind of wrong input is said in so many words, with file, line and column, and nothing else is said beside it. */
class WrongInputTest {
    private static final String HEADS = "heads.csv";
    private static final String BORES = "bores.csv";
    private static final String SHAFTS = "shafts.csv";
    private static final String CLUBS = "clubs.csv";
    private static final String GRIPS = "grips.csv";
    private static final String CHART = "chart.csv";
    private static final String BLANKS = "blanks.csv";
    private static final String WEIGHTS = "tip-weights.csv";
    private static final String INSTRUMENTS = "instruments.csv";
    private static final String JOB = "job.csv";
    private static final String TIPS = "tips.csv";

    @TempDir
    private Path temp;

    /** An edit of a scenario and the problems it makes, in order. */
    private record Wrong(String scenario, Consumer<Scenario> edit, List<String> problems) {

        static Wrong practice(Consumer<Scenario> edit, String... problems) {
            return new Wrong("practice-set", edit, List.of(problems));
        }

        static Wrong wedges(Consumer<Scenario> edit, String... problems) {
            return new Wrong("wedges-and-wood", edit, List.of(problems));
        }

        /** One cell in the line of a label. */
        static Wrong cell(String file, String label, String column, String text, String... problems) {
            return practice(scenario -> scenario.cell(file, label, column, text), problems);
        }

        /** The first place of a file that matches. */
        static Wrong text(String file, String from, String to, String... problems) {
            return practice(scenario -> scenario.edited(file, before -> before.replaceFirst(from, to)), problems);
        }
    }

    /** One more line at the end of job.csv. */
    private static Wrong setting(String line, String... problems) {
        return Wrong.practice(scenario -> scenario.edited(JOB, before -> before + line + "\n"), problems);
    }

    private static String withSizes(String grips) {
        return grips.replaceAll("(?m)(.)$", "$1,.580 in,1.030 in").replaceFirst(".580 in,1.030 in", "core,outside");
    }

    /** Files that are not there, are not CSV in UTF-8, or have other columns. */
    private static List<Wrong> files() {
        return List.of(
                Wrong.practice(
                        scenario -> delete(scenario, SHAFTS),
                        "shafts.csv: found no such file, expected the columns shaft, blank, raw length, mass, balance from tip, tip diameter, finish, wall, butt diameter"),
                Wrong.practice(
                        scenario -> write(scenario, BORES, ""),
                        "bores.csv: found an empty file, expected the columns head, depth, diameter, read with"),
                Wrong.practice(
                        scenario -> write(scenario, CHART, "\uFEFF\r\n"),
                        "chart.csv: found an empty file, expected the columns club, blank, tip trim, bore bottom to ground"),
                Wrong.practice(
                        scenario -> write(
                                scenario,
                                CLUBS,
                                "club,head,shaft,grip,stop,insertion,target length,length measured,target swing weight,swing weight within\n"),
                        "clubs.csv: found no line below the column names, expected one line or more"),
                Wrong.practice(
                        scenario -> directory(scenario, GRIPS),
                        "grips.csv: found a file that cannot be opened (IOException), expected a readable file"),
                Wrong.practice(
                        scenario -> bytes(scenario, HEADS, 0xE9),
                        "heads.csv, line 3: found a byte that is not UTF-8, expected the file saved as CSV in UTF-8"),
                Wrong.practice(
                        scenario -> utf16(scenario, JOB),
                        "job.csv, line 1: found a byte that is not UTF-8, expected the file saved as CSV in UTF-8"),
                Wrong.practice(
                        scenario -> scenario.edited(GRIPS, before -> before.replace(",", ";")),
                        "grips.csv, line 1: found \"grip;mass;cap;length;centre of mass from top\", expected commas between the cells"),
                Wrong.practice(
                        scenario -> scenario.edited(GRIPS, before -> before.replace(",", "\t")),
                        "grips.csv, line 1: found \"grip mass cap length centre of mass from top\", expected commas between the cells"),
                Wrong.text(
                        HEADS,
                        "loft,",
                        "loft in degrees,",
                        "heads.csv, line 1, loft in degrees: found a column that is not known, expected only head, kind, hand, bore end, mass, lie, loft, hosel outside, mouth to ground, centre of mass from mouth",
                        "heads.csv, line 1, loft: found no such column, expected the columns head, kind, hand, bore end, mass, lie, loft, hosel outside, mouth to ground, centre of mass from mouth"),
                Wrong.practice(
                        scenario -> scenario.edited(HEADS, before -> before.replaceAll("(?m)^([^,]+),", "$1,$1,")),
                        "heads.csv, line 1, head: found a column that is there twice, expected each column once"),
                Wrong.practice(
                        scenario -> scenario.edited(
                                SHAFTS,
                                before -> before.replaceAll("(?m)(.)$", "$1,black")
                                        .replaceFirst("black", "colour")),
                        "shafts.csv, line 1, colour: found a column that is not known, expected only shaft, blank, raw length, mass, balance from tip, tip diameter, finish, wall, butt diameter"),
                Wrong.text(
                        BLANKS,
                        "(?s)parallel tip,(.*?)8 in,(.*)7 in,",
                        "$1$2",
                        "blanks.csv, line 1, parallel tip: found no such column, expected the columns blank, material, parallel tip, density of finish, density of structure"),
                Wrong.text(
                        GRIPS,
                        "50.6 g,",
                        "50.6 g",
                        "grips.csv, line 3: found 4 cells, expected 5; a cell that holds a comma stands in double quotes, and decimals have a point"),
                Wrong.text(
                        GRIPS,
                        "50.6 g",
                        "50,6 g",
                        "grips.csv, line 3: found 6 cells, expected 5; a cell that holds a comma stands in double quotes, and decimals have a point"),
                Wrong.text(
                        GRIPS,
                        "50.6 g",
                        "\"50.6 g",
                        "grips.csv, line 3: found a cell that goes on in the next line, expected a quoted cell to end on its own line"),
                Wrong.text(
                        GRIPS,
                        "50.6 g",
                        "\"50.6 g\" or so",
                        "grips.csv, line 3: found double quotes that do not match, expected a quoted cell to end with its closing quote"),
                Wrong.text(
                        GRIPS,
                        "50.6 g",
                        "\"50.6\n g\"",
                        "grips.csv, line 3: found a cell that goes on in the next line, expected a quoted cell to end on its own line"),
                Wrong.practice(
                        scenario -> scenario.edited(CHART, before -> before + "gap,short\n"),
                        "chart.csv, line 8: found 2 cells, expected 4; a cell that holds a comma stands in double quotes, and decimals have a point"));
    }

    /** Cells that say nothing, something else, or something absurd. */
    private static List<Wrong> cells() {
        return List.of(
                Wrong.cell(
                        HEADS,
                        "7",
                        "mass",
                        "",
                        "heads.csv, line 3, mass: found nothing, expected a mass with its unit, such as 84.1 g"),
                Wrong.cell(
                        HEADS,
                        "7",
                        "mass",
                        "270.9",
                        "heads.csv, line 3, mass: found \"270.9\", expected a mass with its unit, such as 84.1 g"),
                Wrong.cell(
                        HEADS,
                        "7",
                        "mass",
                        "270.9 gramme",
                        "heads.csv, line 3, mass: found \"270.9 gramme\", expected a mass with its unit, such as 84.1 g"),
                Wrong.cell(
                        HEADS,
                        "7",
                        "mass",
                        "270.9 in",
                        "heads.csv, line 3, mass: found \"270.9 in\", expected a mass with its unit, such as 84.1 g"),
                Wrong.cell(
                        HEADS,
                        "7",
                        "mass",
                        "2 kg",
                        "heads.csv, line 3, mass: found \"2 kg\", expected 100 g to 600 g (a bare head)"),
                Wrong.cell(
                        HEADS,
                        "7",
                        "mass",
                        "-270.9 g",
                        "heads.csv, line 3, mass: found \"-270.9 g\", expected 100 g to 600 g (a bare head)"),
                Wrong.cell(
                        HEADS,
                        "7",
                        "mass",
                        "0 g",
                        "heads.csv, line 3, mass: found \"0 g\", expected 100 g to 600 g (a bare head)"),
                Wrong.cell(
                        HEADS,
                        "7",
                        "mass",
                        "270.9.1 g",
                        "heads.csv, line 3, mass: found \"270.9.1 g\", expected a mass with its unit, such as 84.1 g"),
                Wrong.cell(
                        HEADS,
                        "7",
                        "mass",
                        "about 271 g",
                        "heads.csv, line 3, mass: found \"about 271 g\", expected a mass with its unit, such as 84.1 g"),
                Wrong.cell(
                        HEADS,
                        "7",
                        "mass",
                        "1e3 g",
                        "heads.csv, line 3, mass: found \"1e3 g\", expected a mass with its unit, such as 84.1 g"),
                Wrong.cell(
                        HEADS,
                        "7",
                        "mass",
                        "99999999999999999999 g",
                        "heads.csv, line 3, mass: found \"99999999999999999999 g\", expected a mass with its unit, such as 84.1 g"),
                Wrong.cell(
                        HEADS,
                        "7",
                        "mass",
                        "270.00000000000001 g",
                        "heads.csv, line 3, mass: found \"270.00000000000001 g\", expected a mass with its unit, such as 84.1 g"),
                Wrong.cell(
                        HEADS,
                        "7",
                        "lie",
                        "62",
                        "heads.csv, line 3, lie: found \"62\", expected an angle with its unit, such as 61.5 deg"),
                Wrong.cell(
                        HEADS,
                        "7",
                        "lie",
                        "6.2 deg",
                        "heads.csv, line 3, lie: found \"6.2 deg\", expected 40 deg to 90 deg (lie)"),
                Wrong.cell(
                        HEADS,
                        "7",
                        "loft",
                        "320 deg",
                        "heads.csv, line 3, loft: found \"320 deg\", expected -10 deg to 80 deg (loft)"),
                Wrong.cell(
                        HEADS,
                        "7",
                        "hosel outside",
                        "13 in",
                        "heads.csv, line 3, hosel outside: found \"13 in\", expected .35 in to 1 in (the outside of a hosel)"),
                Wrong.cell(
                        HEADS,
                        "7",
                        "mouth to ground",
                        "2 1/0 in",
                        "heads.csv, line 3, mouth to ground: found \"2 1/0 in\", expected a length with its unit, such as 2 1/4 in"),
                Wrong.cell(
                        HEADS,
                        "7",
                        "mouth to ground",
                        "2 1/3 in",
                        "heads.csv, line 3, mouth to ground: found \"2 1/3 in\", expected a length with its unit, such as 2 1/4 in"),
                Wrong.cell(
                        HEADS,
                        "7",
                        "centre of mass from mouth",
                        "21.5 in",
                        "heads.csv, line 3, centre of mass from mouth: found \"21.5 in\", expected -1 in to 6 in (centre of mass of a head below its hosel mouth)"),
                Wrong.cell(
                        HEADS,
                        "7",
                        "kind",
                        "irons",
                        "heads.csv, line 3, kind: found \"irons\", expected wood or hybrid or iron or wedge or putter"),
                Wrong.cell(HEADS, "7", "hand", "", "heads.csv, line 3, hand: found nothing, expected right or left"),
                Wrong.cell(
                        HEADS,
                        "7",
                        "bore end",
                        "open",
                        "heads.csv, line 3, bore end: found \"open\", expected blind or through"),
                Wrong.cell(
                        SHAFTS,
                        "M2",
                        "raw length",
                        "39 1/32",
                        "shafts.csv, line 3, raw length: found \"39 1/32\", expected a length with its unit, such as 2 1/4 in"),
                Wrong.cell(
                        SHAFTS,
                        "M2",
                        "raw length",
                        "39 1/32 cm",
                        "shafts.csv, line 3, raw length: found \"39 1/32 cm\", expected 20 in to 60 in (a raw shaft)"),
                Wrong.cell(
                        SHAFTS,
                        "M2",
                        "balance from tip",
                        "203.0 in",
                        "shafts.csv, line 3, balance from tip: found \"203.0 in\", expected 5 in to 45 in (balance point of a raw shaft from its tip)"),
                Wrong.cell(
                        SHAFTS,
                        "M2",
                        "tip diameter",
                        "3.738 in",
                        "shafts.csv, line 3, tip diameter: found \"3.738 in\", expected .25 in to .75 in (a tip over its finish)"),
                Wrong.cell(
                        SHAFTS,
                        "M2",
                        "tip diameter",
                        ".3738 mm",
                        "shafts.csv, line 3, tip diameter: found \".3738 mm\", expected .25 in to .75 in (a tip over its finish)"),
                Wrong.cell(
                        SHAFTS,
                        "M2",
                        "finish",
                        "-.0025 in",
                        "shafts.csv, line 3, finish: found \"-.0025 in\", expected 0 in to .040 in (finish, on one side)"),
                Wrong.cell(
                        SHAFTS,
                        "M2",
                        "wall",
                        ".915 in",
                        "shafts.csv, line 3, wall: found \".915 in\", expected .005 in to .250 in (wall of a shaft, on one side)"),
                Wrong.cell(
                        SHAFTS,
                        "M2",
                        "butt diameter",
                        "NaN",
                        "shafts.csv, line 3, butt diameter: found \"NaN\", expected a length with its unit, such as 2 1/4 in"),
                Wrong.cell(
                        BLANKS,
                        "mid",
                        "density of finish",
                        "1.25 g",
                        "blanks.csv, line 2, density of finish: found \"1.25 g\", expected a density with its unit, such as 1.55 g/cm3"),
                Wrong.cell(
                        BLANKS,
                        "mid",
                        "density of structure",
                        "1550 g/cm3",
                        "blanks.csv, line 2, density of structure: found \"1550 g/cm3\", expected 0.8 g/cm3 to 12 g/cm3 (graphite composite, or steel)"),
                Wrong.cell(
                        BLANKS,
                        "mid",
                        "material",
                        "bamboo",
                        "blanks.csv, line 2, material: found \"bamboo\", expected graphite or steel"),
                Wrong.cell(
                        BLANKS,
                        "mid",
                        "parallel tip",
                        "8",
                        "blanks.csv, line 2, parallel tip: found \"8\", expected a length with its unit, such as 2 1/4 in"),
                Wrong.cell(
                        GRIPS,
                        "G3",
                        "cap",
                        "125 in",
                        "grips.csv, line 4, cap: found \"125 in\", expected 0 in to 1 in (thickness of a grip cap)"),
                Wrong.cell(
                        CHART,
                        "8",
                        "tip trim",
                        "-1/2 in",
                        "chart.csv, line 4, tip trim: found \"-1/2 in\", expected 0 in to 12 in (a tip trim)"),
                Wrong.cell(
                        CHART,
                        "8",
                        "bore bottom to ground",
                        "10 in",
                        "chart.csv, line 4, bore bottom to ground: found \"10 in\", expected -1 in to 4 in (bore bottom to ground that a chart assumes)"),
                Wrong.cell(
                        WEIGHTS,
                        "4",
                        "mass",
                        "4 kg",
                        "tip-weights.csv, line 5, mass: found \"4 kg\", expected 0.1 g to 60 g (a tip weight)"),
                Wrong.cell(
                        WEIGHTS,
                        "4",
                        "stem diameter",
                        "0 in",
                        "tip-weights.csv, line 5, stem diameter: found \"0 in\", expected .05 in to .6 in (the stem of a tip weight)"),
                Wrong.cell(
                        CLUBS,
                        "8",
                        "target length",
                        "36 1/2 ft",
                        "clubs.csv, line 4, target length: found \"36 1/2 ft\", expected a length with its unit, such as 2 1/4 in"),
                Wrong.cell(
                        CLUBS,
                        "8",
                        "target length",
                        "0 in",
                        "clubs.csv, line 4, target length: found \"0 in\", expected 18 in to 60 in (playing length of a club)"),
                Wrong.cell(
                        CLUBS,
                        "8",
                        "length measured",
                        "by the plane",
                        "clubs.csv, line 4, length measured: found \"by the plane\", expected along the axis or by the 60 degree plane"),
                setting(
                        "tape layers,two,",
                        "job.csv, tape thickness: found nothing, expected a length with its unit, such as 2 1/4 in",
                        "job.csv, line 20, tape layers: found \"two\", expected a number of layers, such as 1 layer"),
                setting(
                        "orientation turn,360 deg,",
                        "job.csv, orientation mark: found nothing, expected a label of 1 to 80 characters",
                        "job.csv, line 20, orientation turn: found \"360 deg\", expected 0 deg to 359.99 deg (from the target, by way of away from the player)"),
                setting(
                        "shafts to heads,at random,",
                        "job.csv, line 20, shafts to heads: found \"at random\", expected as they come or by swing weight"),
                setting(
                        "tip weights in one tip,3,",
                        "job.csv, line 20, tip weights in one tip: found \"3\", expected one or two"),
                Wrong.practice(
                        scenario -> scenario.edited(GRIPS, WrongInputTest::withSizes)
                                .cell(GRIPS, "G2", "core", ".600"),
                        "grips.csv, line 3, core: found \".600\", expected a length with its unit, such as 2 1/4 in"),
                Wrong.practice(
                        scenario -> scenario.edited(GRIPS, WrongInputTest::withSizes)
                                .cell(GRIPS, "G2", "outside", ""),
                        "grips.csv, line 3, outside: found nothing, expected a length with its unit, such as 2 1/4 in"),
                Wrong.practice(
                        scenario -> scenario.edited(GRIPS, WrongInputTest::withSizes)
                                .cell(GRIPS, "G2", "outside", ".580 in"),
                        "grips.csv, line 3, outside: found \".580 in\", expected more than the core"),
                Wrong.cell(
                        CLUBS,
                        "8",
                        "target swing weight",
                        "C",
                        "clubs.csv, line 4, target swing weight: found \"C\", expected a reading of the scale, such as D1"),
                Wrong.cell(
                        CLUBS,
                        "8",
                        "target swing weight",
                        "H2",
                        "clubs.csv, line 4, target swing weight: found \"H2\", expected a reading of the scale, such as D1"),
                Wrong.cell(
                        CLUBS,
                        "8",
                        "target swing weight",
                        "A-3",
                        "clubs.csv, line 4, target swing weight: found \"A-3\", expected a reading between the first letter of the scale and the last"),
                Wrong.cell(
                        CLUBS,
                        "8",
                        "swing weight within",
                        "0.5",
                        "clubs.csv, line 4, swing weight within: found \"0.5\", expected points, such as 0.5 point"),
                Wrong.cell(
                        CLUBS,
                        "8",
                        "swing weight within",
                        "-0.5 point",
                        "clubs.csv, line 4, swing weight within: found \"-0.5 point\", expected points, such as 0.5 point"),
                Wrong.cell(
                        CLUBS,
                        "8",
                        "stop",
                        "the hand",
                        "clubs.csv, line 4, stop: found \"the hand\", expected bottom of the bore or mark on the shaft"),
                Wrong.cell(
                        CLUBS,
                        "8",
                        "insertion",
                        "1 1/4 in",
                        "clubs.csv, line 4, insertion: found \"1 1/4 in\", expected nothing, since the bottom of the bore stops the tip"),
                Wrong.cell(
                        JOB,
                        "kerf",
                        "value",
                        "1/16",
                        "job.csv, line 3, kerf: found \"1/16\", expected a length with its unit, such as 2 1/4 in"),
                Wrong.cell(
                        JOB,
                        "kerf",
                        "value",
                        "",
                        "job.csv, line 3, kerf: found nothing, expected a length with its unit, such as 2 1/4 in"),
                Wrong.cell(
                        JOB,
                        "wanted clearance",
                        "value",
                        ".4 in",
                        "job.csv, line 2, wanted clearance: found \".4 in\", expected 0 in to .050 in (clearance for adhesive, on the diameter)"),
                Wrong.cell(
                        JOB,
                        "adhesive centre",
                        "value",
                        "1/2 in",
                        "job.csv, line 11, adhesive centre: found \"1/2 in\", expected half the insertion"),
                Wrong.cell(
                        JOB,
                        "scale fulcrum",
                        "value",
                        "14 oz",
                        "job.csv, line 14, scale fulcrum: found \"14 oz\", expected a length with its unit, such as 2 1/4 in"),
                Wrong.cell(
                        JOB,
                        "scale points in a letter",
                        "value",
                        "10.5 points",
                        "job.csv, line 17, scale points in a letter: found \"10.5 points\", expected whole points, such as 10 points"),
                Wrong.cell(
                        JOB,
                        "scale moment in a point",
                        "value",
                        "0 oz in",
                        "job.csv, line 16, scale moment in a point: found \"0 oz in\", expected 0.1 oz in to 20 oz in (moment in a point of a scale)"),
                Wrong.text(
                        INSTRUMENTS,
                        ",.05 in",
                        ",.05 deg",
                        "instruments.csv, line 7, standard uncertainty: found \".05 deg\", expected one in mm"),
                Wrong.text(
                        INSTRUMENTS,
                        ",.05 in",
                        ",1 /min",
                        "instruments.csv, line 7, standard uncertainty: found \"1 /min\", expected one in mm"),
                Wrong.text(
                        INSTRUMENTS,
                        ",.05 in",
                        ",.05 N m2",
                        "instruments.csv, line 7, standard uncertainty: found \".05 N m2\", expected a length with its unit, such as 2 1/4 in"),
                Wrong.practice(
                        scenario -> scenario.edited(HEADS, before -> before.replace("2.15 in", "\"2,15 in\"")),
                        "heads.csv, line 3, centre of mass from mouth: found \"2,15 in\", expected a length with its unit, such as 2 1/4 in; decimals have a point"));
    }

    /** Labels that are there twice, and labels of things that are not there. */
    private static List<Wrong> labels() {
        return List.of(
                Wrong.practice(
                        scenario -> scenario.edited(HEADS, before -> before.replace("\n8,", "\n7,")),
                        "heads.csv, line 4, head: found \"7\", expected a label that no other line of heads.csv has",
                        "bores.csv, line 14, head: found \"8\", expected a label in heads.csv",
                        "clubs.csv, line 4, head: found \"8\", expected a label in heads.csv"),
                Wrong.text(
                        SHAFTS,
                        "\\nM2,",
                        "\nM1,",
                        "shafts.csv, line 3, shaft: found \"M1\", expected a label that no other line of shafts.csv has",
                        "flex.csv, line 4, shaft: found \"M2\", expected a label in shafts.csv",
                        "clubs.csv, line 3, shaft: found \"M2\", expected a label in shafts.csv"),
                Wrong.text(
                        GRIPS,
                        "G2",
                        "G1",
                        "grips.csv, line 3, grip: found \"G1\", expected a label that no other line of grips.csv has",
                        "clubs.csv, line 3, grip: found \"G2\", expected a label in grips.csv"),
                Wrong.text(
                        CLUBS,
                        "\\n7,7,",
                        "\n6,7,",
                        "clubs.csv, line 3, club: found \"6\", expected a label that no other line of clubs.csv has"),
                Wrong.text(
                        BLANKS,
                        "\\nshort",
                        "\nmid",
                        "blanks.csv, line 3, blank: found \"mid\", expected a label that no other line of blanks.csv has",
                        "shafts.csv, line 5, blank: found \"short\", expected a label in blanks.csv",
                        "shafts.csv, line 6, blank: found \"short\", expected a label in blanks.csv",
                        "shafts.csv, line 7, blank: found \"short\", expected a label in blanks.csv",
                        "chart.csv, line 5, blank: found \"short\", expected a label in blanks.csv",
                        "chart.csv, line 6, blank: found \"short\", expected a label in blanks.csv",
                        "chart.csv, line 7, blank: found \"short\", expected a label in blanks.csv"),
                Wrong.text(
                        WEIGHTS,
                        "\\n6,",
                        "\n4,",
                        "tip-weights.csv, line 6, tip weight: found \"4\", expected a label that no other line of tip-weights.csv has"),
                Wrong.text(
                        CHART,
                        "7,mid",
                        "6,mid",
                        "chart.csv, line 3, club: found \"6\", expected each club on each blank once"),
                Wrong.text(
                        JOB,
                        "tape mass",
                        "ferrule mass",
                        "job.csv, tape mass: found nothing, expected a mass with its unit, such as 84.1 g",
                        "job.csv, line 12, setting: found \"ferrule mass\", expected each setting once"),
                Wrong.text(
                        JOB,
                        "kerf",
                        "kurf",
                        "job.csv, kerf: found nothing, expected a length with its unit, such as 2 1/4 in",
                        "job.csv, line 3, setting: found \"kurf\", expected wanted clearance or kerf or least insertion or least structural wall or ferrule mass or ferrule bore or ferrule length or ferrule centre above mouth or adhesive mass or adhesive centre or tape mass or tape centre from top or tape layers or tape thickness or orientation mark or orientation turn or shafts to heads or tip weights in one tip or scale fulcrum or scale zero D0 or scale moment in a point or scale points in a letter or clamp or frequency within"),
                Wrong.cell(
                        CLUBS, "9", "head", "5", "clubs.csv, line 5, head: found \"5\", expected a label in heads.csv"),
                Wrong.cell(
                        CLUBS,
                        "9",
                        "shaft",
                        "s1",
                        "clubs.csv, line 5, shaft: found \"s1\", expected a label in shafts.csv"),
                Wrong.cell(
                        CLUBS,
                        "9",
                        "grip",
                        "",
                        "clubs.csv, line 5, grip: found nothing, expected a label in grips.csv"),
                Wrong.cell(
                        CLUBS,
                        "9",
                        "club",
                        "",
                        "clubs.csv, line 5, club: found nothing, expected a label of 1 to 80 characters"),
                Wrong.cell(
                        CLUBS,
                        "9",
                        "head",
                        "8",
                        "clubs.csv, line 5, head: found \"8\", expected a head that no other club has"),
                Wrong.cell(
                        CLUBS,
                        "9",
                        "shaft",
                        "M3",
                        "clubs.csv, line 5, shaft: found \"M3\", expected a shaft that no other club has"),
                Wrong.cell(
                        CLUBS,
                        "9",
                        "grip",
                        "G3",
                        "clubs.csv, line 5, grip: found \"G3\", expected a grip that no other club has"),
                Wrong.cell(
                        SHAFTS,
                        "S1",
                        "blank",
                        "long",
                        "shafts.csv, line 5, blank: found \"long\", expected a label in blanks.csv"),
                Wrong.cell(
                        CHART,
                        "9",
                        "blank",
                        "long",
                        "chart.csv, line 5, blank: found \"long\", expected a label in blanks.csv"),
                Wrong.text(
                        BORES,
                        "(?s)\\n9,.*\\n9,1.00 in,.357 in,pin",
                        "",
                        "heads.csv, line 5, head: found \"9\", expected a head whose bore is in bores.csv"),
                Wrong.text(
                        BORES,
                        "gap,1.25",
                        "lob,1.25",
                        "bores.csv, line 36, head: found \"lob\", expected a label in heads.csv"),
                Wrong.text(
                        CLUBS,
                        "pitching,pitching",
                        "p\u0007,pitching",
                        "clubs.csv, line 6, club: found \"p \", expected a label of 1 to 80 characters"));
    }

    /** Cells that do not go together. */
    private static List<Wrong> together() {
        return List.of(
                Wrong.text(
                        BORES,
                        "7,.38 in",
                        "7,.90 in",
                        "bores.csv, line 11, depth: found \".83 in\", expected no less than in the line before: from the mouth down"),
                Wrong.practice(
                        scenario -> scenario.edited(
                                BORES,
                                before -> before.replace(
                                        "7,.83 in,.359 in,pin\n",
                                        "7,.83 in,.359 in,pin\n7,.83 in,.359 in,pin\n7,.83 in,.359 in,pin\n")),
                        "bores.csv, line 13, depth: found \".83 in\", expected at most two readings at one depth"),
                Wrong.text(
                        BORES,
                        "7,.83 in,.359",
                        "7,.83 in,.364",
                        "bores.csv, line 11, diameter: found \".364 in\", expected no wider than the pin before, since it goes in further"),
                Wrong.text(
                        BORES,
                        "7,0 in",
                        "7,.001 in",
                        "bores.csv, line 8, depth: found \".001 in\", expected 0 in, the hosel mouth, in the first line of a head"),
                Wrong.text(
                        BORES,
                        "7,1.25 in,.355 in,pin",
                        "7,1.25 in,.355 in,bore gauge",
                        "bores.csv, line 13, read with: found \"bore gauge\", expected pin, as in the line before"),
                Wrong.text(
                        BORES,
                        "7,1.25 in,.355 in,pin",
                        "7,1.25 in,.355 in,chamfer",
                        "bores.csv, line 13, read with: found \"chamfer\", expected pin, as in the line before"),
                Wrong.text(
                        BORES,
                        "7,1.25 in,.355 in,pin",
                        "7,1.25 in,.355 in,ruler",
                        "bores.csv, line 13, read with: found \"ruler\", expected chamfer or pin or bore gauge"),
                Wrong.text(
                        BORES,
                        "7,0 in,.395",
                        "7,0 in,.540",
                        "bores.csv, line 8, diameter: found \".540 in\", expected less than the outside of the hosel"),
                Wrong.text(
                        BORES,
                        "7,1.25 in",
                        "7,2.25 in",
                        "heads.csv, line 3, mouth to ground: found \"2 1/4 in\", expected more than the depth of the bore, 2.25 in"),
                Wrong.text(
                        BORES,
                        "(?s)7,.015.*7,1.25 in,.355 in,pin\\n",
                        "",
                        "bores.csv, line 8, head: found \"7\", expected a head with two readings or more"),
                Wrong.cell(
                        SHAFTS,
                        "M2",
                        "balance from tip",
                        "39 1/4 in",
                        "shafts.csv, line 3, balance from tip: found \"39 1/4 in\", expected less than the raw length"),
                Wrong.practice(
                        scenario -> scenario.cell(SHAFTS, "M2", "finish", ".0300 in")
                                .cell(SHAFTS, "M2", "wall", ".0300 in"),
                        "shafts.csv, line 3, finish: found \".0300 in\", expected less than the wall, in which it is included"),
                Wrong.cell(
                        SHAFTS,
                        "M2",
                        "wall",
                        ".190 in",
                        "shafts.csv, line 3, wall: found \".190 in\", expected less than half the tip diameter"),
                Wrong.cell(
                        GRIPS,
                        "G3",
                        "centre of mass from top",
                        "10.5 in",
                        "grips.csv, line 4, centre of mass from top: found \"10.5 in\", expected less than the length of the grip"),
                Wrong.cell(
                        JOB,
                        "ferrule centre above mouth",
                        "value",
                        ".75 in",
                        "job.csv, line 9, ferrule centre above mouth: found \".75 in\", expected no more than the length of the ferrule"),
                Wrong.practice(
                        scenario -> scenario.edited(
                                BLANKS,
                                before -> before.replace("8 in", "40 in").replace("7 in", "0 in")),
                        "shafts.csv, line 2, raw length: found \"39 in\", expected no less than the parallel tip of its blank",
                        "shafts.csv, line 3, raw length: found \"39 1/32 in\", expected no less than the parallel tip of its blank",
                        "shafts.csv, line 4, raw length: found \"38 31/32 in\", expected no less than the parallel tip of its blank",
                        "shafts.csv, line 5, blank: found \"short\", expected a parallel tip, or another reading of this tip in tips.csv",
                        "shafts.csv, line 6, blank: found \"short\", expected a parallel tip, or another reading of this tip in tips.csv",
                        "shafts.csv, line 7, blank: found \"short\", expected a parallel tip, or another reading of this tip in tips.csv"),
                Wrong.wedges(
                        scenario -> delete(scenario, TIPS),
                        "shafts.csv, line 2, blank: found \"wedge\", expected a parallel tip, or another reading of this tip in tips.csv",
                        "shafts.csv, line 3, blank: found \"wedge\", expected a parallel tip, or another reading of this tip in tips.csv",
                        "shafts.csv, line 4, blank: found \"wedge\", expected a parallel tip, or another reading of this tip in tips.csv"),
                Wrong.wedges(
                        scenario -> scenario.cell(TIPS, "W2", "from tip", "0 in"),
                        "tips.csv, line 3, from tip: found \"0 in\", expected further up than the reading before, or the parallel tip"),
                Wrong.wedges(
                        scenario -> scenario.cell(TIPS, "W2", "from tip", "37 in"),
                        "tips.csv, line 3, from tip: found \"37 in\", expected no more than the raw length of the shaft"),
                Wrong.wedges(
                        scenario -> scenario.edited(TIPS, before -> before + "F1,5 in,.340 in\nW9,4 in,.380 in\n"),
                        "tips.csv, line 5, from tip: found \"5 in\", expected further up than the reading before, or the parallel tip",
                        "tips.csv, line 6, shaft: found \"W9\", expected a label in shafts.csv"),
                Wrong.wedges(
                        scenario -> scenario.cell(CLUBS, "3 wood", "insertion", ""),
                        "clubs.csv, line 5, insertion: found nothing, expected a length with its unit, such as 2 1/4 in"),
                Wrong.wedges(
                        scenario -> scenario.cell(CLUBS, "3 wood", "insertion", "2.8 in"),
                        "clubs.csv, line 5, insertion: found \"2.8 in\", expected no deeper than the bore of the head"),
                Wrong.wedges(
                        scenario -> scenario.cell(CLUBS, "3 wood", "stop", "bottom of the bore")
                                .cell(CLUBS, "3 wood", "insertion", ""),
                        "clubs.csv, line 5, stop: found \"bottom of the bore\", expected mark on the shaft, since the bore of the head goes through"),
                Wrong.wedges(
                        scenario -> scenario.cell(CLUBS, "lob", "target swing weight", ""),
                        "clubs.csv, line 4, target swing weight: found nothing, expected a reading of the scale, such as D1"),
                Wrong.practice(
                        scenario -> scenario.cell(HEADS, "6", "mass", "2 kg")
                                .cell(HEADS, "6", "lie", "")
                                .cell(HEADS, "9", "hand", "both")
                                .cell(BORES, "7", "diameter", ".36")
                                .cell(SHAFTS, "S1", "blank", "long")
                                .cell(JOB, "kerf", "value", "one"),
                        "job.csv, line 3, kerf: found \"one\", expected a length with its unit, such as 2 1/4 in",
                        "shafts.csv, line 5, blank: found \"long\", expected a label in blanks.csv",
                        "heads.csv, line 2, mass: found \"2 kg\", expected 100 g to 600 g (a bare head)",
                        "heads.csv, line 2, lie: found nothing, expected an angle with its unit, such as 61.5 deg",
                        "heads.csv, line 5, hand: found \"both\", expected right or left",
                        "bores.csv, line 8, diameter: found \".36\", expected a length with its unit, such as 2 1/4 in",
                        "bores.csv, line 9, diameter: found \".36\", expected a length with its unit, such as 2 1/4 in",
                        "bores.csv, line 10, diameter: found \".36\", expected a length with its unit, such as 2 1/4 in",
                        "bores.csv, line 11, diameter: found \".36\", expected a length with its unit, such as 2 1/4 in",
                        "bores.csv, line 12, diameter: found \".36\", expected a length with its unit, such as 2 1/4 in",
                        "bores.csv, line 13, diameter: found \".36\", expected a length with its unit, such as 2 1/4 in"));
    }

    @TestFactory
    List<DynamicTest> isSaid() {
        List<Wrong> all = Stream.of(files(), cells(), labels(), together())
                .flatMap(List::stream)
                .toList();
        assertThat(all).hasSizeGreaterThanOrEqualTo(60);
        return IntStream.range(0, all.size())
                .mapToObj(
                        i -> dynamicTest((i + 1) + ": " + all.get(i).problems().get(0), () -> said(all.get(i), i)))
                .toList();
    }

    private void said(Wrong wrong, int number) throws IOException {
        Scenario scenario = Scenario.named(wrong.scenario())
                .copiedTo(Files.createDirectory(temp.resolve(Integer.toString(number))));
        wrong.edit().accept(scenario);
        JobFolder input = JobFolder.read(scenario.folder());
        assertThat(input.job()).isEmpty();
        assertThat(input.problems())
                .extracting(problem -> problem.toString().replaceFirst(" \\(it .*\\)$", ""))
                .as("without the library's own reason, which stands in brackets at the end")
                .containsExactlyElementsOf(wrong.problems());
    }

    @Test
    void theLibrarysReasonIsAdded() throws IOException {
        Scenario scenario = Scenario.named("practice-set").copiedTo(temp).cell(HEADS, "7", "mass", "270.9");
        assertThat(JobFolder.read(scenario.folder()).problems())
                .singleElement()
                .extracting(Problem::expected)
                .asString()
                .startsWith("a mass with its unit, such as 84.1 g (it must name its unit");
    }

    @Test
    void aByteOrderMarkAndTheLineEndsOfAnotherSystemAreNoProblem() throws IOException {
        Scenario scenario = Scenario.named("practice-set").copiedTo(temp);
        for (Table table : Table.values()) {
            Path file = temp.resolve(table.file());
            if (Files.exists(file)) {
                Files.writeString(file, "\uFEFF" + Files.readString(file).replace("\n", "\r\n"));
            }
        }
        assertSameAs(Scenario.named("practice-set"), scenario);
    }

    /** Blank lines and lines of commas at the end, blanks around a text, another order of columns, capitals, quotes, no last line end. */
    @Test
    void whatASpreadsheetMakesOfItIsNoProblem() throws IOException {
        Scenario scenario = Scenario.named("practice-set")
                .copiedTo(temp)
                .edited(GRIPS, text -> text + "\n,,,,\n , ,,,\n")
                .edited(HEADS, text -> text.replace("right", "Right").replace("263.9 g", "  263.9\u00A0g "))
                .edited(
                        CHART,
                        text -> text.replace("club,blank", "Club, BLANK ").strip())
                .edited(WEIGHTS, text -> text.replace("\n1,1 g", "\n\"1\",\"1 g\""))
                .edited(
                        BLANKS,
                        text -> text.lines()
                                .map(line -> line.replaceFirst("^([^,]*),([^,]*),", "$2,$1,"))
                                .collect(Collectors.joining("\r")));
        assertSameAs(Scenario.named("practice-set"), scenario);
    }

    @Test
    void whatIsUnusualIsAWarningAndThereIsAJob() throws IOException {
        Scenario scenario = Scenario.named("practice-set")
                .copiedTo(temp)
                .cell(HEADS, "6", "mass", "170 g")
                .cell(SHAFTS, "S3", "tip diameter", ".460 in");
        JobFolder input = JobFolder.read(scenario.folder());
        assertThat(input.problems()).isEmpty();
        assertThat(input.job()).isPresent();
        assertThat(input.warnings())
                .extracting(Problem::toString)
                .containsExactly(
                        "shafts.csv, line 7, tip diameter: found \".460 in\", expected usually .33 in to .45 in (a tip over its"
                                + " finish)",
                        "heads.csv, line 2, mass: found \"170 g\", expected usually 180 g to 400 g (a bare head)");
    }

    private static void assertSameAs(Scenario wanted, Scenario scenario) {
        JobFolder input = JobFolder.read(scenario.folder());
        assertThat(input.problems()).isEmpty();
        assertThat(input.warnings()).isEmpty();
        assertThat(input.job()).isEqualTo(JobFolder.read(wanted.folder()).job());
    }

    private static void delete(Scenario scenario, String file) {
        change(scenario, file, path -> {});
    }

    private static void directory(Scenario scenario, String file) {
        change(scenario, file, Files::createDirectory);
    }

    private static void write(Scenario scenario, String file, String text) {
        change(scenario, file, path -> Files.writeString(path, text));
    }

    /** A byte in the middle of the third line that no UTF-8 text has there. */
    private static void bytes(Scenario scenario, String file, int wrong) {
        scenario.edited(file, text -> text.replace("right,blind,270.9", "right,blind,#270.9"));
        byte[] bytes = read(scenario, file).getBytes(StandardCharsets.UTF_8);
        bytes[new String(bytes, StandardCharsets.UTF_8).indexOf('#')] = (byte) wrong;
        change(scenario, file, path -> Files.write(path, bytes));
    }

    private static void utf16(Scenario scenario, String file) {
        String text = read(scenario, file);
        change(scenario, file, path -> Files.writeString(path, text, StandardCharsets.UTF_16));
    }

    private static String read(Scenario scenario, String file) {
        try {
            return Files.readString(scenario.folder().resolve(file));
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private interface Change {
        void to(Path path) throws IOException;
    }

    private static void change(Scenario scenario, String file, Change change) {
        try {
            Path path = scenario.folder().resolve(file);
            Files.delete(path);
            change.to(path);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }
}

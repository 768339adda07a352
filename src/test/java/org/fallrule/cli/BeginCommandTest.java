package org.fallrule.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fallrule.SiteOnDisk.feature;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;
import org.fallrule.SiteOnDisk;
import org.fallrule.intake.Draft;
import org.fallrule.intake.Intake;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BeginCommandTest {
    @TempDir
    Path place;

    private SiteOnDisk harrow() {
        return SiteOnDisk.copied("harrow-14", place).without("site.yaml");
    }

    @Test
    void itSaysWhatItTookForWhatAndWhatItMustAsk() throws IOException {
        SiteOnDisk site = harrow();

        Ran ran = Ran.command("begin", site.path());

        assertThat(ran.code()).isZero();
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out())
                .contains("street         certain   STREET.shp: 1 polygon, named for it\n")
                .contains("lot            likely    PARCELS.shp: 3 polygons, by its name and geometry\n")
                .contains("- unit of diameter: m, cm, mm, ft, ft_us, in? PIPE_SIZE (4, 6)\n")
                .contains("0 of 12 questions answered.");
        assertThat(Files.readString(site.path("site.yaml"))).contains("  diameter:  # ask: m, cm, mm, ft, ft_us, in?");
        assertThat(ran.out().lines()).allMatch(line -> line.length() <= 80);
    }

    @Test
    void checkThenSaysWhatIsOpenAndWhere() {
        SiteOnDisk site = harrow();
        Ran.command("begin", site.path());

        Ran ran = Ran.check(site.path());

        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.out()).contains("  site.yaml:10: diameter: is open: m, cm, mm, ft, ft_us, in? PIPE_SIZE (4, 6)");
    }

    @Test
    void whatIsThereStaysUnlessItMayBeReplaced() throws IOException {
        SiteOnDisk site = harrow().with("site.yaml", "site: mine\n");

        Ran ran = Ran.command("begin", site.path());

        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err())
                .contains("site.yaml: is there already and stays as it is; give --replace to write over it");
        assertThat(Files.readString(site.path("site.yaml"))).isEqualTo("site: mine\n");

        assertThat(Ran.command("begin", "--replace", site.path()).code()).isZero();
        assertThat(Files.readString(site.path("site.yaml"))).contains("layers:\n");
        try (Stream<Path> files = Files.list(site.path())) {
            assertThat(files).noneMatch(file -> file.toString().endsWith(".part"));
        }
    }

    @Test
    void anotherSpellingOfSiteYamlIsNotPassedOver() {
        SiteOnDisk site = harrow().with("Site.yml", "site: mine\n");

        assertThat(Ran.command("begin", "--replace", site.path()).err()).contains("Site.yml: is there already");
    }

    @Test
    void aFolderWithNothingToReadIsRefusedAndStaysAsItIs() throws IOException {
        SiteOnDisk empty = SiteOnDisk.in(place, "empty");
        SiteOnDisk broken =
                SiteOnDisk.in(place, "broken").with("PLAN.GPKG", "no").with("letter.txt", "x");

        assertThat(Ran.command("begin", empty.path()).err()).contains("empty: no file here can be read as a layer");
        Ran ran = Ran.command("begin", broken.path());
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("no file here can be read as a layer", "PLAN.GPKG: is not a GeoPackage");
        assertThat(Files.exists(broken.path("site.yaml"))).isFalse();
        assertThat(Ran.command("begin", place.resolve("nowhere")).err()).contains("there is no such folder");
        assertThat(Ran.command("begin", broken.path("letter.txt")).err()).contains("is a file; name the folder");
    }

    @Test
    void aProfileSettlesWhatWouldBeAsked() throws IOException {
        Files.writeString(place.resolve("office.yaml"), """
                units: {elevation: ft, diameter: in, depth: in}
                layers:
                  inlet: {units: {grate_length: in, grate_width: in, box_length: in, box_width: in}}
                  cleanout: {file: co*.csv, fields: {id: PT}, where: "CODE = 'CO'"}
                """);
        SiteOnDisk site =
                harrow().with("co_may.csv", "PT,X,Y,CODE\n1,2132271.7,759698.5,CO\n2,2132271.8,759698.6,GS\n");

        Ran ran = Ran.command("begin", "--profile", place.resolve("office.yaml"), site.path());

        assertThat(ran.code()).isZero();
        assertThat(ran.out())
                .contains("cleanout       certain   co_may.csv: 1 point, as the profile says")
                .contains("- STORM_PT.shp, 2 points taken for cleanout by the codes in STRUCTTYPE, is left")
                .doesNotContain("unit of", "the code CO");
        assertThat(Files.readString(site.path("site.yaml")))
                .contains(
                        "layers_from: \"../office.yaml\"\n",
                        "  cleanout: co_may.csv  # certain: as the profile says, 1 point");
        assertThat(Ran.command("begin", "--replace", "--profile", place.resolve("none.yaml"), site.path())
                        .code())
                .isEqualTo(2);
    }

    /** What a firm has not yet said of its columns is asked of each site, and told with its line by both commands. */
    @Test
    void whatAProfileLeavesOpenIsNotPassedOver() throws IOException {
        Files.writeString(place.resolve("office.yaml"), """
                units: {elevation: ft}
                # ask: which collector writes the column GRADE?
                layers:
                  pipe:
                    fields:
                      diameter:  # ask: which of the two?
                    units:
                      diameter:  # ask: in or mm?
                """);
        SiteOnDisk site = SiteOnDisk.in(place, "x")
                .layer(
                        "pipe.geojson",
                        feature("'id': 'P', 'diameter': 4", "LineString", "[[-76.05, 35.3], [-76.0499, 35.3]]"));

        Ran begun = Ran.command("begin", "--profile", place.resolve("office.yaml"), site.path());

        assertThat(begun.out())
                .contains("certain: diameter is diameter", "unit of diameter: m, cm, mm, ft, ft_us, in?")
                .contains("""
                        Open in the profile, each a line with "ask:" there:
                        - ../office.yaml:2: is open: which collector writes the column GRADE?
                        - ../office.yaml:6: diameter: is open: which of the two?
                        - ../office.yaml:8: diameter: is open: in or mm?
                        """);
        String drafted = Files.readString(site.path("site.yaml"));
        Files.writeString(site.path("site.yaml"), drafted.replaceFirst("(?m)^  diameter: .*$", "  diameter: in"));
        assertThat(Ran.check("--county", "larkmoor", site.path()).out())
                .contains(
                        "../office.yaml:2: is open: which collector", "../office.yaml:8: diameter: is open: in or mm?")
                .doesNotContain("the numbers have no unit");
    }

    @Test
    void namesThatSteerATerminalAreShownPlainly() {
        SiteOnDisk site = SiteOnDisk.in(place, "x")
                .layer(
                        "pipe.geojson",
                        feature(
                                "'DIA': 4, 'SIZE': '\\u001b[31m6'",
                                "LineString",
                                "[[-76.05, 35.3], [-76.0499, 35.3]]"));

        assertThat(Ran.command("begin", site.path()).out()).doesNotContain("\u001b");
    }

    /** Line by line: a number, a word, something wrong and then a word, nothing; then the end of what is typed. */
    @Test
    void onATerminalItAsksLineByLine() {
        StringWriter screen = new StringWriter();
        TypedAnswers typed = new TypedAnswers(
                new BufferedReader(new StringReader("2\nyards\nin\n\n")), new PrintWriter(screen, true));
        SiteOnDisk site = harrow();

        Draft draft = Intake.draft(site.path(), Optional.empty(), typed);

        assertThat(draft.answered()).isEqualTo(2);
        assertThat(screen.toString())
                .contains("1. does the plan count abandoned utilities", "   2) leave them out\n> ")
                .contains("Give the number of a choice or its word, or nothing.");
        assertThat(screen.toString().lines()).allMatch(line -> line.length() <= 80);
        assertThat(draft.yaml())
                .contains("where: \"NOT (STATUS IN ('ABD'))\"", "  diameter: in\n", "  elevation:  # ask:");
    }
}

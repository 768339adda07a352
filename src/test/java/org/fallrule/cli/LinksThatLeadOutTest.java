package org.fallrule.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.fallrule.SiteOnDisk;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Plans and rule books come from elsewhere: a link in them reads and writes nothing outside of their folders. */
class LinksThatLeadOutTest {
    @TempDir
    Path place;

    private Path secret;
    private SiteOnDisk site;

    @BeforeEach
    void somethingOutside() throws IOException {
        secret =
                Files.writeString(Files.createDirectories(place.resolve("home")).resolve("secret"), "word: mine\n");
        site = SiteOnDisk.copied("plumb-line-1", Files.createDirectories(place.resolve("stack")));
    }

    private void refused(Ran ran, String... messages) throws IOException {
        assertThat(ran.err()).contains(messages).doesNotContain("mine", "fault of the program");
        assertThat(ran.out()).doesNotContain("mine");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(secret).hasContent("word: mine\n");
    }

    @Test
    void asSiteYaml() throws IOException {
        site.without("site.yaml");
        Files.createSymbolicLink(site.path("site.yaml"), secret);

        refused(Ran.check(site.path()), "site.yaml: site.yaml is a link to a place outside of the site folder");
    }

    @Test
    void asTheFileOfSharedLayers() throws IOException {
        Files.createSymbolicLink(place.resolve("stack/sites.yaml"), secret);

        refused(Ran.check(site.path()), "../sites.yaml: sites.yaml is a link to a place outside of the site folder");
    }

    @Test
    void asASharedLayer() throws IOException {
        Files.writeString(place.resolve("stack/sites.yaml"), "shared: {utility: all.geojson}\n");
        Files.createSymbolicLink(place.resolve("stack/all.geojson"), secret);

        refused(Ran.check(site.path()), "all.geojson is a link to a place outside of the site folder");
    }

    @Test
    void asAFolderOfLayers() throws IOException {
        Files.move(site.path("lot.geojson"), secret.resolveSibling("lot.geojson"));
        Files.createSymbolicLink(site.path("from"), place.resolve("home"));
        site.with("site.yaml", "layers: {lot: from/lot.geojson, pipe: pipe.geojson}\n");

        refused(Ran.check(site.path()), "lot.geojson is a link to a place outside of the site folder");
    }

    @Test
    void asTheBaseline() throws IOException {
        Path rules = Files.createDirectories(place.resolve("rules"));
        Files.createSymbolicLink(rules.resolve("baseline.yaml"), secret);

        refused(
                Ran.command("rules", "show", "--rules", rules, "baseline"),
                "baseline.yaml is a link to a place outside of the rules folder");
    }

    /** The digest of a run over many sites takes in every file of a site; a link to the whole disk is none of them. */
    @Test
    void inASiteOfManyIsNotFollowed() throws IOException {
        Files.createSymbolicLink(site.path("everything"), Path.of("/"));
        Files.createSymbolicLink(site.path("round"), site.path());
        SiteOnDisk.copied("thistledown-3", place.resolve("stack"));

        Ran ran = Ran.check(place.resolve("stack"), "--quiet", "--out", place.resolve("out"), "--format", "json");

        assertThat(ran.code()).isLessThan(2);
        assertThat(place.resolve("out/plumb-line-1/findings.json")).exists();
    }

    @Test
    void whereSiteYamlIsMadeIsNotWrittenThrough() throws IOException {
        site.without("site.yaml");
        Files.createSymbolicLink(site.path(".site.yaml.part"), secret);

        Ran ran = Ran.command("begin", site.path());

        assertThat(ran.code()).as(ran.err()).isLessThan(2);
        assertThat(site.path("site.yaml")).isRegularFile();
        assertThat(Files.isSymbolicLink(site.path("site.yaml"))).isFalse();
        assertThat(secret).hasContent("word: mine\n");
    }

    @Test
    void whereReportsGoIsReplacedAndNotWrittenThrough() throws IOException {
        Path out = Files.createDirectories(place.resolve("out"));
        Files.createSymbolicLink(out.resolve("plumb-line-1"), Files.createDirectories(place.resolve("home/empty")));
        Files.createSymbolicLink(out.resolve(".comparison.json.part"), secret);
        Files.createSymbolicLink(out.resolve("comparison.txt"), secret);
        Files.createSymbolicLink(out.resolve(".plumb-line-1-gradesheet.csv.part"), secret);

        assertThat(Ran.check(site.path(), "--out", out, "--format", "json", "--quiet")
                        .code())
                .isZero();
        assertThat(Ran.command("compare", site.path(), site.path(), "--out", out, "--today", "2026-06-01")
                        .err())
                .isEmpty();
        Ran.command("gradesheet", site.path(), "--out", out, "--format", "csv");

        assertThat(secret).hasContent("word: mine\n");
        assertThat(place.resolve("home/empty")).isEmptyDirectory();
        try (Stream<Path> all = Files.walk(out)) {
            assertThat(all.filter(Files::isSymbolicLink)).isEmpty();
        }
        assertThat(out.resolve("plumb-line-1/findings.json")).isRegularFile();
    }

    @Test
    void whereReportsAreMadeIsRefused() throws IOException {
        Path out = Files.createDirectories(place.resolve("out"));
        Files.createSymbolicLink(out.resolve(".unfinished"), place.resolve("home"));
        SiteOnDisk.copied("thistledown-3", place.resolve("stack"));

        refused(
                Ran.check(place.resolve("stack"), "--out", out, "--format", "json"),
                ".unfinished: is a link, and reports are not made elsewhere; take it away");
        assertThat(place.resolve("home").toFile().list())
                .isEqualTo(List.of("secret").toArray());
    }
}

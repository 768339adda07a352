package org.fallrule.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.fallrule.SiteOnDisk;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A plan that names no county: where its lot lies tells, by the shipped map, and every form of the report says so. */
class CountyByPlaceTest {
    private static final String SAID = "by rules/counties.geojson the lot lies ";

    @TempDir
    Path folder;

    /** A lot of 30 m by 40 m, its west side at a longitude, with an outfall near that side. */
    private SiteOnDisk site(double west) {
        double east = west + 0.0003;
        return SiteOnDisk.in(folder, "on-the-line")
                .with(
                        "site.yaml",
                        "site: Fenwick Row 5 (invented)\ndatum: NAVD88\nabsent: [building, walk, drive, street, inlet]\n")
                .layer(
                        "lot.geojson",
                        SiteOnDisk.feature(
                                "'id': '5', 'own': true",
                                "Polygon",
                                String.format(
                                        "[[[%1$s, 35.3], [%2$s, 35.3], [%2$s, 35.3004], [%1$s, 35.3004], [%1$s, 35.3]]]",
                                        west, east)))
                .layer(
                        "outfall.geojson",
                        SiteOnDisk.feature(
                                "'id': 'OF-1', 'kind': 'daylight'",
                                "Point",
                                String.format("[%s, 35.3002]", west + 0.00002)));
    }

    private static String unbroken(String text) {
        return text.replaceAll("\\s+", " ");
    }

    @Test
    void theCountyThatTheLotLiesInApplies() {
        Ran ran = Ran.check(site(-76.05).path());

        assertThat(ran.code()).isLessThan(2);
        assertThat(unbroken(ran.out())).contains("county saltmeadow;", SAID + "in saltmeadow, whose rules are applied");
    }

    @Test
    void onTheLineBothApplyAndEveryFormOfTheReportSaysSo() throws IOException {
        Path out = folder.resolve("out");
        Ran ran = Ran.check(site(-76.1).path(), "--out", out);

        assertThat(unbroken(ran.out()))
                .contains(
                        "county brackenfell and saltmeadow;",
                        SAID + "on the line of brackenfell and saltmeadow, so that the rules of both are applied",
                        "asked by saltmeadow only:",
                        "rules/counties/brackenfell.yaml",
                        "rules/counties/saltmeadow.yaml");
        Path report = out.resolve("on-the-line");
        assertThat(Files.readString(report.resolve("findings.json")))
                .contains("\"county\" : \"brackenfell and saltmeadow\"", SAID + "on the line of");
        assertThat(Files.readString(report.resolve("report.html")))
                .contains("brackenfell and saltmeadow", SAID + "on the line of");
        try (PDDocument printed = Loader.loadPDF(report.resolve("report.pdf").toFile())) {
            assertThat(unbroken(new PDFTextStripper().getText(printed)))
                    .contains("ounty brackenfell and saltmeadow", SAID + "on the line of");
        }
    }

    @Test
    void aLotInNoCountyIsAskedAboutAndNotChecked() {
        Ran ran = Ran.check(site(-75.5).path());

        assertThat(ran.code()).isEqualTo(2);
        assertThat(unbroken(ran.err()))
                .contains(
                        "site.yaml: county: says no county; name one of brackenfell, larkmoor, saltmeadow, here or with"
                                + " --county (the lot lies in none of the counties in rules/counties.geojson)");
    }

    @Test
    void everySampleLiesInTheCountyThatItNames() throws IOException {
        try (var samples = Files.list(Path.of("sample-sites"))) {
            for (Path sample : samples.filter(Files::isDirectory).toList()) {
                assertThat(Ran.check(sample).out()).as(sample.toString()).doesNotContain("ask whose rules govern");
            }
        }
    }
}

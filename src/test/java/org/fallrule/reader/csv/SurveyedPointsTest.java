package org.fallrule.reader.csv;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.fallrule.document.Fault;
import org.fallrule.document.UnusableInput;
import org.fallrule.reader.layer.RawFeature;
import org.fallrule.reader.layer.RawLayer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;

/** Tables of points against RFC 4180 (Common Format for Comma-Separated Values, 2005), section 2, and what collectors write beyond it. */
class SurveyedPointsTest {
    @TempDir
    Path folder;

    private RawLayer read(String text) {
        return read(text.getBytes(StandardCharsets.UTF_8));
    }

    private RawLayer read(byte[] bytes) {
        try {
            return SurveyedPoints.read(Files.write(folder.resolve("topo.csv"), bytes), "topo.csv");
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private void refused(String text, String... says) {
        assertThatThrownBy(() -> read(text))
                .isInstanceOfSatisfying(
                        UnusableInput.class,
                        e -> assertThat(e.faults()).extracting(Fault::toString).containsExactly(says));
    }

    private static Coordinate place(RawFeature feature) {
        return feature.geometry().orElseThrow().getCoordinate();
    }

    @Test
    void pointsOfASurveyInNorthingAndEasting() {
        RawLayer layer = read(
                "point,northing,easting,elevation,code\r\n101,700000.25,2700010.5,31.42,GS\r\n102,700001,2700011,,\r\n");

        RawFeature first = layer.features().get(0);
        assertThat(first.label()).isEqualTo("feature 1");
        assertThat(place(first)).isEqualTo(new Coordinate(2700010.5, 700000.25));
        assertThat(first.columns())
                .containsEntry("point", 101L)
                .containsEntry("elevation", 31.42)
                .containsEntry("code", "GS");
        assertThat(layer.features().get(1).columns()).doesNotContainKeys("elevation", "code");
        assertThat(layer.columns()).containsExactly("point", "northing", "easting", "elevation", "code");
        assertThat(layer.crs()).isEmpty();
        assertThat(layer.notes()).isEmpty();
    }

    @ParameterizedTest(name = "columns {0}")
    @ValueSource(
            strings = {"x,y", "X,Y", "Easting,Northing", "E,N", "east,north", "x_coord,y_coord", "POINT_X,POINT_Y"})
    void namesOfThePlace(String names) {
        assertThat(place(read(names + "\n3,4").features().get(0))).isEqualTo(new Coordinate(3, 4));
        assertThat(read(names + "\n3,4").crs()).isEmpty();
    }

    @Test
    void longitudeAndLatitudeAreTheSystemUnlessThereIsAGrid() {
        assertThat(read("lat,lon\n35.2,-76.1").crs()).contains("OGC:CRS84");
        assertThat(place(read("Latitude,Longitude\n35.2,-76.1").features().get(0)))
                .isEqualTo(new Coordinate(-76.1, 35.2));
        assertThat(read("lat,lon,n,e\n35.2,-76.1,4,3").crs()).isEmpty();
    }

    /** RFC 4180, section 2, rules 5 to 7. */
    @Test
    void quotedCells() {
        RawLayer layer = read("x,y,note\n1,2,\"at the \"\"old\"\" wall, low\nend\"\n3,4,\"\"\n");

        assertThat(layer.features().get(0).columns()).containsEntry("note", "at the \"old\" wall, low\nend");
        assertThat(layer.features().get(1).columns()).doesNotContainKey("note");
    }

    @Test
    void faultsOfQuotesNameTheLine() {
        refused("x,y,note\n1,2,a\n3,4,\"b\n", "topo.csv:3: opens a quote (\") that is not closed; close or double it");
        refused(
                "x,y,note\n1,2,\"a\"b\n",
                "topo.csv:2: has more after a quote (\") that ends a cell; double a quote that belongs to the text");
    }

    @ParameterizedTest(name = "parted by {0}")
    @ValueSource(strings = {",", ";", "\t"})
    void separators(String sign) {
        RawLayer layer = read(String.join(sign, "x", "y", "z") + "\n" + String.join(sign, "1.5", "2.5", "3.5") + "\n");

        assertThat(place(layer.features().get(0))).isEqualTo(new Coordinate(1.5, 2.5));
        assertThat(layer.features().get(0).columns()).containsEntry("z", 3.5);
    }

    @Test
    void aDecimalCommaIsReadOnlyWhereCommasDoNotPartCells() {
        assertThat(place(read("x;y\n1,5;2,25").features().get(0))).isEqualTo(new Coordinate(1.5, 2.25));
        refused(
                "x,y\n\"1,5\",2",
                "topo.csv:2: x: \"1,5\" is no number; wanted one such as 2700010.25, without unit and without marks"
                        + " between thousands");
    }

    @Test
    void byteOrderMarksAndOtherEncodings() {
        String text = "x,y,code\n1,2,Höhe\n";
        assertThat(read("\uFEFF" + text).columns()).containsExactly("x", "y", "code");
        assertThat(read(("\uFEFF" + text).getBytes(StandardCharsets.UTF_16LE))
                        .features()
                        .get(0)
                        .columns())
                .containsEntry("code", "Höhe");
        assertThat(read(("\uFEFF" + text).getBytes(StandardCharsets.UTF_16BE))
                        .features()
                        .get(0)
                        .columns())
                .containsEntry("code", "Höhe");
        RawLayer western = read(text.getBytes(Charset.forName("windows-1252")));
        assertThat(western.features().get(0).columns()).containsEntry("code", "Höhe");
        assertThat(western.notes())
                .extracting(Fault::toString)
                .containsExactly("topo.csv: is not UTF-8; read as windows-1252; save it as UTF-8 where letters come out"
                        + " wrong");
    }

    @Test
    void aCodeWithLeadingZerosStaysAText() {
        assertThat(read("x,y,code\n1,2,007\n3,4,12\n").features().get(1).columns())
                .containsEntry("code", "12");
        assertThat(read("x,y,code\n1,2,7\n3,4,12\n").features().get(1).columns())
                .containsEntry("code", 12L);
    }

    @Test
    void aPointWithoutAPlaceIsKeptWithoutGeometryAndHalfAPlaceIsRefused() {
        assertThat(read("x,y,id\n,,7\n").features().get(0).geometry()).isEmpty();
        refused(
                "x,y\n1,\n,2\n",
                "topo.csv:2: has only one of x and y; give both, or neither for a point without a place",
                "topo.csv:3: has only one of x and y; give both, or neither for a point without a place");
    }

    @Test
    void whatIsNoTableOfPoints() {
        refused("", "topo.csv: is empty; wanted a line of column names, then a line for each point");
        refused(
                "101,700000.25,2700010.5,31.42,GS\n",
                "topo.csv:1: holds numbers where the columns' names are wanted; write a first line that names them, such"
                        + " as point,northing,easting,elevation,code");
        refused(
                "id,code\n1,a\n",
                "topo.csv: has no columns for the place of a point: wanted easting and northing, x and y, or longitude and"
                        + " latitude; it has id, code; name them so in its first line");
        refused(
                "x,easting,y\n1,2,3\n",
                "topo.csv: the columns x and easting could both be the place; rename the one that is not");
        refused("x,y,X\n1,2,3\n", "topo.csv:1: names the column X twice; give each a name of its own");
        refused("x,".repeat(1000) + "x\n1,2,3\n", "topo.csv:1: has 1001 columns, wanted at most 1000");
        refused(
                "x,y\n1,2\n\n1,2,3\n",
                "topo.csv:4: has 3 cells where the first line names 2 columns; put texts that hold the separator in quotes");
    }

    @Test
    void linesWithoutValuesAndCellsAfterTheLastAreLeftOut() {
        assertThat(read("x,y,\n1,2\n").columns()).containsExactly("x", "y");
        assertThat(read("x,y\r\n\r\n1,2,,\r\n,\r\n").features()).hasSize(1);
    }
}

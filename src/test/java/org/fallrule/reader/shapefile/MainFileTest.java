package org.fallrule.reader.shapefile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.fallrule.reader.shapefile.Content.line;
import static org.fallrule.reader.shapefile.Content.nothing;
import static org.fallrule.reader.shapefile.Content.parts;
import static org.fallrule.reader.shapefile.Content.point;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.fallrule.document.UnusableInput;
import org.fallrule.reader.layer.RawFeature;
import org.fallrule.reader.layer.RawLayer;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;

class MainFileTest {
    @TempDir
    Path folder = Path.of("");

    private Made made = new Made(folder);

    @BeforeEach
    void startInTheFolder() {
        made = new Made(folder);
    }

    @Test
    void aNullShapeIsAFeatureWithoutGeometry() {
        RawLayer layer = made.shapes(1, point(1, 2), nothing(), point(3, 4)).read();

        assertThat(layer.features())
                .extracting(RawFeature::label)
                .containsExactly("feature 1", "feature 2", "feature 3");
        assertThat(layer.features().get(1).geometry()).isEmpty();
        assertThat(layer.features().get(1).columns()).containsEntry("id", 7L);
        assertThat(layer.notes()).isEmpty();
    }

    @Test
    void aMissingFileIsRefused() {
        assertThat(made.refusal())
                .containsExactly(
                        "in/marks.shp: cannot be read (there is no such file); check that the file is there and readable");
    }

    @Test
    void anEmptyFileIsRefused() {
        assertThat(made.with("marks.shp", new byte[0]).refusal())
                .containsExactly("in/marks.shp: is 0 bytes long; wanted a shapefile, whose header alone takes 100; "
                        + "export the layer again");
    }

    @Test
    void aFolderInPlaceOfTheFileIsRefused() {
        assertThatThrownBy(() -> ShapefileReader.read(folder, "in"))
                .isInstanceOf(UnusableInput.class)
                .hasMessage("in: is not a plain file; name the file itself");
    }

    @Test
    void aFileOfAnotherKindIsRefused() {
        byte[] other = Made.mainFile(1, point(1, 2));
        other[2] = 0;

        assertThat(made.with("marks.shp", other).refusal())
                .containsExactly("in/marks.shp: begins with the number 10; wanted 9994, the mark of a shapefile; "
                        + "export the layer again");
    }

    @Test
    void aMultiPatchFileIsRefusedByName() {
        assertThat(made.shapes(31).refusal())
                .containsExactly("in/marks.shp: holds shapes of type MultiPatch (surfaces of solids); "
                        + "wanted points, lines or polygons; export the layer as one of these");
    }

    @Test
    void aMultiPatchRecordIsRefusedByName() {
        assertThat(made.shapes(1, point(1, 2), parts(31, new double[] {1, 2})).refusal())
                .containsExactly("in/marks.shp: feature 2: is of type MultiPatch (a surface of a solid); "
                        + "wanted a point, line or polygon; export the layer as one of these");
    }

    @Test
    void anUnknownShapeTypeIsRefused() {
        assertThat(made.shapes(7).refusal())
                .containsExactly("in/marks.shp: its header gives shape type 7, which the format does not know; "
                        + "export the layer again");
        assertThat(made.shapes(1, new Bytes().little(7).toArray()).refusal())
                .containsExactly("in/marks.shp: feature 1: has shape type 7, which the format does not know; "
                        + "export the layer again");
    }

    @Test
    void aRecordOfAnotherTypeThanTheFileIsReadAndNoted() {
        made.shapes(3, point(1, 2));

        assertThat(made.firstShape().toText()).isEqualTo("POINT (1 2)");
        assertThat(made.notes())
                .containsExactly("in/marks.shp: feature 1: is of type Point where the file's header says PolyLine; "
                        + "read as the former; export the layer with one type of shape");
    }

    @ParameterizedTest(name = "a header that gives the length as {0} words of 64 is noted and the file read")
    @ValueSource(ints = {0, 50, 63, 65, Integer.MAX_VALUE, -1})
    void aLyingFileLengthIsNoted(int words) {
        made.shapes(1, point(1, 2));
        byte[] lying = Made.mainFile(1, point(1, 2));
        System.arraycopy(new Bytes().big(words).toArray(), 0, lying, 24, 4);
        made.with("marks.shp", lying);

        assertThat(made.firstShape().toText()).isEqualTo("POINT (1 2)");
        assertThat(made.notes())
                .containsExactly("in/marks.shp: its header gives the file's length as " + 2L * words
                        + " bytes, but there are 128; what is there was read; "
                        + "check that no feature is missing, or export the layer again");
    }

    @Test
    void anotherVersionIsNoted() {
        made.shapes(1, point(1, 2));
        byte[] other = Made.mainFile(1, point(1, 2));
        other[28] = 0;

        assertThat(made.with("marks.shp", other).notes())
                .containsExactly("in/marks.shp: gives its version as 768; wanted 1000; read as if it were that");
    }

    @Test
    void recordsNumberedOtherwiseAreLabelledByPositionAndNoted() {
        made.shapes(1, point(1, 2), point(3, 4));
        byte[] renumbered = Made.mainFile(1, point(1, 2), point(3, 4));
        renumbered[103] = 9;
        made.with("marks.shp", renumbered);

        assertThat(made.read().features()).extracting(RawFeature::label).containsExactly("feature 1", "feature 2");
        assertThat(made.notes())
                .containsExactly("in/marks.shp: 1 of its records are not numbered by their position in the file; "
                        + "positions were used; check that attributes stand with the right shapes");
    }

    @ParameterizedTest(name = "a point at {0} is refused")
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, -1e39})
    void aVertexThatIsNoNumberIsRefused(double y) {
        assertThat(made.shapes(3, line(0, 0, 1, 1), line(0, 0, 1, y)).refusal())
                .containsExactly("in/marks.shp: feature 2: its vertex 2 has Y " + y
                        + "; wanted a finite number; mend the vertex or export the layer again");
    }

    @Test
    void everyFeatureThatCannotBeUsedIsNamedAtOnce() {
        assertThat(made.shapes(1, point(Double.NaN, 0), point(1, 2), point(0, Double.NaN))
                        .refusal())
                .hasSize(2)
                .satisfiesExactly(
                        first -> assertThat(first).startsWith("in/marks.shp: feature 1: its vertex 1 has X NaN"),
                        second -> assertThat(second).startsWith("in/marks.shp: feature 3: its vertex 1 has Y NaN"));
    }

    @Test
    void aFileThatIsWrongThroughoutIsRefusedAfterAHundredFaults() {
        byte[][] wrong = Collections.nCopies(500, point(Double.NaN, 0)).toArray(new byte[0][]);

        List<String> refusal = made.shapes(1, wrong).refusal();

        assertThat(refusal).hasSize(101);
        assertThat(refusal.get(100))
                .isEqualTo("in/marks.shp: reading stopped after 100 faults; mend these and read the file again");
    }

    @Test
    void notesOnFeaturesAreListedToAThousandAndThenCounted() {
        byte[][] spare =
                Collections.nCopies(1003, Arrays.copyOf(point(1, 2), 24)).toArray(new byte[0][]);

        List<String> notes = made.shapes(1, spare).notes();

        assertThat(notes).hasSize(1001);
        assertThat(notes.get(0))
                .isEqualTo("in/marks.shp: feature 1: its record has 4 bytes more than its shape takes; "
                        + "they were not read; export the layer again if something is missing");
        assertThat(notes.get(1000))
                .isEqualTo("in/marks.shp: 3 more notes on features are not listed; "
                        + "mend those listed and read the file again");
    }

    @Test
    void measuresBelowMinus1e38AreNoData() {
        byte[] pointM = new Bytes().little(21).doubles(1, 2, -1e39).toArray();
        byte[] pointZ = new Bytes().little(11).doubles(1, 2, 3, -1.1e38).toArray();
        byte[] measured = new Bytes().little(11).doubles(1, 2, 3, -1e38).toArray();

        assertThat(made.shapes(21, pointM).firstShape().getCoordinate().getM()).isNaN();
        assertThat(made.notes()).isEmpty();
        assertThat(made.shapes(11, pointZ).firstShape().getCoordinate())
                .isExactlyInstanceOf(Coordinate.class)
                .satisfies(vertex -> assertThat(vertex.getZ()).isEqualTo(3));
        assertThat(made.shapes(11, measured).firstShape().getCoordinate().getM())
                .isEqualTo(-1e38);
    }

    @Test
    void aPointZWithoutItsMeasureIsRead() {
        byte[] pointZ = new Bytes().little(11).doubles(1, 2, 3).toArray();

        assertThat(made.shapes(11, pointZ).firstShape().getCoordinate().getZ()).isEqualTo(3);
        assertThat(made.notes()).isEmpty();
    }

    @Test
    void aPolyLineZWithoutItsMeasuresIsRead() {
        byte[] line = new Bytes()
                .raw(parts(13, new double[] {0, 0, 1, 1}))
                .doubles(5, 6, 5, 6)
                .toArray();

        assertThat(made.shapes(13, line).firstShape().getCoordinates())
                .extracting(Coordinate::getZ)
                .containsExactly(5.0, 6.0);
        assertThat(made.notes()).isEmpty();
    }

    @Test
    void aZWithoutDataIsNotedAndAZThatIsNoNumberRefused() {
        byte[] noData = new Bytes().little(11).doubles(1, 2, -1e39, 0).toArray();
        byte[] noNumber = new Bytes().little(11).doubles(1, 2, Double.NaN, 0).toArray();

        assertThat(made.shapes(11, noData).firstShape().getCoordinate().getZ()).isNaN();
        assertThat(made.notes())
                .containsExactly("in/marks.shp: feature 1: its vertex 1 has \"no data\" for Z; "
                        + "read as a vertex without Z; give it its elevation");
        assertThat(made.shapes(11, noNumber).refusal())
                .containsExactly("in/marks.shp: feature 1: its vertex 1 has Z NaN; "
                        + "wanted a finite number; mend the vertex or export the layer again");
    }

    @Test
    void aLineOfOnePointIsRefused() {
        assertThat(made.shapes(3, parts(3, new double[] {0, 0, 1, 1}, new double[] {5, 5}))
                        .refusal())
                .containsExactly("in/marks.shp: feature 1: its part 2 is a line of 1 point; wanted 2 or more; "
                        + "draw it whole or take the part away");
    }

    @Test
    void aShapeWithoutPointsIsAFeatureWithoutGeometryAndNoted() {
        made.shapes(3, parts(3));

        assertThat(made.read().features().get(0).geometry()).isEmpty();
        assertThat(made.notes())
                .containsExactly("in/marks.shp: feature 1: its shape has no points; read as a feature without a shape; "
                        + "draw it or delete it");
    }

    @Test
    void partsThatLeaveOutPointsOrHaveNoneAreRefused() {
        byte[] late = line(0, 0, 1, 1, 2, 2);
        late[44] = 1;
        byte[] hollow = parts(3, new double[] {0, 0, 1, 1}, new double[] {}, new double[] {2, 2, 3, 3});
        byte[] backwards = parts(3, new double[] {0, 0, 1, 1}, new double[] {2, 2, 3, 3});
        System.arraycopy(new Bytes().little(-5).toArray(), 0, backwards, 48, 4);

        assertThat(made.shapes(3, late, hollow, backwards).refusal())
                .containsExactly(
                        "in/marks.shp: feature 1: has 3 points of which the first belongs to none of its 1 parts; "
                                + "wanted its first part to begin at point 0; export the layer again",
                        "in/marks.shp: feature 2: its part 2 runs from point 2 to before point 2 of 4; "
                                + "wanted at least one point; export the layer again",
                        "in/marks.shp: feature 3: its part 1 runs from point 0 to before point -5 of 4; "
                                + "wanted at least one point; export the layer again");
    }
}

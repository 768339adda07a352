package org.fallrule.reader;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.fallrule.document.Fault;
import org.fallrule.document.Node;
import org.fallrule.document.Place;
import org.fallrule.filter.Filter;
import org.fallrule.measure.Unit;
import org.fallrule.site.Attribute;
import org.fallrule.site.Role;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ColumnFinderTest {
    private final List<Fault> faults = new ArrayList<>();

    private Optional<ColumnFinder.Column> find(Role role, Attribute<?> attribute, String... columns) {
        return find(role, Map.of(), attribute, columns);
    }

    private Optional<ColumnFinder.Column> find(
            Role role, Map<Attribute<?>, String> fields, Attribute<?> attribute, String... columns) {
        Place place = Place.of("site.yaml").at(7, 9);
        Map<Attribute<?>, Node.Scalar> stated = new LinkedHashMap<>();
        fields.forEach((of, column) -> stated.put(of, new Node.Scalar(place, column, false)));
        LayerSpec spec = new LayerSpec(
                role,
                "layer.shp",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                stated,
                Map.of(),
                Map.of(),
                Map.of(),
                new Filter.Always(),
                "",
                place);
        Set<String> names = new LinkedHashSet<>(List.of(columns));
        return new ColumnFinder(spec, names, faults).of(attribute);
    }

    @ParameterizedTest
    @CsvSource({
        "diameter,DIAMETER",
        "diameter,Diameter",
        "diameter,DIAM",
        "diameter,dia",
        "diameter,PIPE_SIZE",
        "diameter,pipe size",
        "material,PIPE-MATL",
        "invert_up,US_INV",
        "invert_down,DNINV",
        "id,FACILITYID",
    })
    void aColumnIsFoundByNameAndBySynonymWhateverItsCase(String attribute, String column) {
        assertThat(find(Role.PIPE, Attribute.named(attribute).orElseThrow(), "LENGTH", column))
                .contains(new ColumnFinder.Column(column, Optional.empty()));
        assertThat(faults).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "diameter,DIAM_IN,INCH",
        "diameter,diameter_mm,MILLIMETRE",
        "diameter,DIAM_M,METRE",
        "invert_up,UP_INV_FT,ELEVATION_FOOT",
        "invert_up,UP_INV_FT_US,ELEVATION_SURVEY_FOOT",
        "invert_down,DnInvM,ELEVATION_METRE",
        "diameter,DIAM_INCHES,INCH",
        "depth_up,US_DEPTH_FEET,FOOT",
    })
    void theEndOfAColumnsNameGivesItsUnit(String attribute, String column, Unit unit) {
        assertThat(find(Role.PIPE, Attribute.named(attribute).orElseThrow(), column))
                .contains(new ColumnFinder.Column(column, Optional.of(unit)));
    }

    @Test
    void theLastLetterOfDiamIsNoMetre() {
        assertThat(find(Role.PIPE, Map.of(Attribute.DIAMETER, "DIAM"), Attribute.DIAMETER, "DIAM"))
                .contains(new ColumnFinder.Column("DIAM", Optional.empty()));
    }

    @Test
    void aUnitOfAnotherDimensionIsNoUnit() {
        assertThat(find(Role.PIPE, Attribute.INVERT_UP, "UP_INV_IN")).isEmpty();
    }

    @Test
    void twoColumnsThatCouldBeItAreAskedAbout() {
        find(Role.PIPE, Attribute.DIAMETER, "DIAM", "PIPE_SIZE");

        assertThat(faults)
                .extracting(Fault::toString)
                .containsExactly("site.yaml:7:9: layer.shp: the columns DIAM and PIPE_SIZE could both be diameter; say"
                        + " which: fields: {diameter: DIAM}");
    }

    @Test
    void theSameQuantityInTwoUnitsIsAskedAbout() {
        find(Role.PIPE, Attribute.DIAMETER, "DIAM_IN", "DIAM_MM");

        assertThat(faults).singleElement().asString().contains("DIAM_IN and DIAM_MM could both be diameter");
    }

    @Test
    void theExactNameComesBeforeSynonyms() {
        assertThat(find(Role.PIPE, Attribute.DIAMETER, "SIZE", "DIAMETER"))
                .contains(new ColumnFinder.Column("DIAMETER", Optional.empty()));
        assertThat(faults).isEmpty();
    }

    @Test
    void aColumnThatSiteYamlGivesToAnotherAttributeIsNotGuessed() {
        assertThat(find(Role.UTILITY, Map.of(Attribute.ID, "TYPE"), Attribute.KIND, "TYPE", "UTILTYPE"))
                .contains(new ColumnFinder.Column("UTILTYPE", Optional.empty()));
        assertThat(faults).isEmpty();
    }

    @Test
    void whatSiteYamlNamesIsTakenBeforeWhatLooksRight() {
        assertThat(find(Role.UTILITY, Map.of(Attribute.DEPTH, "cover_in"), Attribute.DEPTH, "DEPTH", "COVER_IN"))
                .contains(new ColumnFinder.Column("COVER_IN", Optional.of(Unit.INCH)));
    }

    @Test
    void ofTwoColumnsThatDifferInCaseTheOneSpelledSoIsTaken() {
        assertThat(find(Role.UTILITY, Map.of(Attribute.DEPTH, "DEPTH"), Attribute.DEPTH, "depth", "DEPTH"))
                .contains(new ColumnFinder.Column("DEPTH", Optional.empty()));
    }

    @Test
    void aNamedColumnThatIsNotThereIsAFaultThatListsTheColumns() {
        assertThat(find(Role.PIPE, Map.of(Attribute.DIAMETER, "DIAMETRE"), Attribute.DIAMETER, "DIAM", "MATL"))
                .isEmpty();
        assertThat(faults)
                .extracting(Fault::toString)
                .containsExactly("site.yaml:7:9: layer.shp has no column DIAMETRE for diameter; it has DIAM, MATL");
    }

    @Test
    void ofAShapefileWithoutColumnsTheFileThatHoldsThemIsAskedFor() {
        find(Role.PIPE, Map.of(Attribute.DIAMETER, "DIAM"), Attribute.DIAMETER);
        assertThat(faults)
                .extracting(Fault::toString)
                .containsExactly("site.yaml:7:9: layer.shp has no column DIAM for diameter; it has no columns; put its"
                        + " .dbf beside it, which holds them");
    }

    @Test
    void ofSeveralColumnsThatCouldNameTheFeatureTheLikeliestIsTaken() {
        assertThat(find(Role.PIPE, Attribute.ID, "fid", "PIPE_NO", "DIAM_IN"))
                .contains(new ColumnFinder.Column("PIPE_NO", Optional.empty()));
        assertThat(find(Role.PIPE, Attribute.ID, "OBJECTID", "PIPE_ID", "FID"))
                .contains(new ColumnFinder.Column("PIPE_ID", Optional.empty()));
        assertThat(faults).isEmpty();
    }

    @Test
    void knownNamesArePlain() {
        assertThat(Attribute.all())
                .allSatisfy(attribute -> assertThat(attribute.columns())
                        .allMatch(column ->
                                column.equals(column.toLowerCase(Locale.ROOT)) && !column.matches(".*[_\\s-].*")));
    }

    @Test
    void anOwnersNameIsNoAttribute() {
        assertThat(Attribute.of(Role.LOT))
                .noneMatch(attribute -> attribute.columns().stream().anyMatch(column -> column.contains("owner")));
    }
}

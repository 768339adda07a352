package org.fallrule.reader;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.fallrule.document.Fault;
import org.fallrule.document.Place;
import org.fallrule.filter.Filter;
import org.fallrule.measure.Quantity;
import org.fallrule.measure.Unit;
import org.fallrule.site.Attribute;
import org.fallrule.site.Role;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ValueReaderTest {
    private static final ColumnFinder.Column PLAIN = new ColumnFinder.Column("COL", Optional.empty());
    private static final Place FEATURE = Place.of("marks.shp").feature("feature 14");

    private final List<Fault> faults = new ArrayList<>();
    private final List<Fault> problems = new ArrayList<>();

    private ValueReader reader(
            Role role,
            Map<String, Unit> ofLayer,
            Map<String, Unit> ofSite,
            Map<Attribute<?>, Map<String, String>> values) {
        LayerSpec spec = new LayerSpec(
                role,
                "marks.shp",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Map.of(),
                ofLayer,
                values,
                Map.of(),
                new Filter.Always(),
                "",
                Place.of("site.yaml"));
        return new ValueReader(spec, ofSite, faults, problems);
    }

    private Optional<Object> depth(Object cell) {
        return reader(Role.UTILITY, Map.of("depth", Unit.INCH), Map.of(), Map.of())
                .value(Attribute.DEPTH, PLAIN, cell, FEATURE);
    }

    private static double metres(Optional<Object> value) {
        return ((Quantity) value.orElseThrow()).si();
    }

    @ParameterizedTest
    @CsvSource({"30,30", "30.5,30.5", "' 30 ',30", "+30,30", ".5,0.5", "3e1,30", "30 in,30", "2.5 ft,30", "2 1/2 in,2.5"
    })
    void aCellGivesANumberInTheStatedUnitOrCarriesAUnitItself(String cell, double inches) {
        assertThat(metres(depth(cell))).isCloseTo(inches * 0.0254, within(1e-12));
        assertThat(faults).isEmpty();
        assertThat(problems).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"2'6", "30d", "0x1p4", "1e999", "NaN", "Infinity", "thirty", "30,5", "1/0 in", "30 psi", "--"})
    void whatIsNoQuantityIsAFaultWithFileFeatureAndColumn(String cell) {
        assertThat(depth(cell)).isEmpty();
        assertThat(faults)
                .singleElement()
                .asString()
                .startsWith("marks.shp: feature 14: COL: \"" + cell + "\"")
                .contains("in");
    }

    @Test
    void bareNumbersWithoutAUnitAreNotUsedAndThatIsSaidOnce() {
        ValueReader reader = reader(Role.UTILITY, Map.of(), Map.of(), Map.of());

        assertThat(reader.value(Attribute.DEPTH, PLAIN, 30L, FEATURE)).isEmpty();
        assertThat(reader.value(Attribute.DEPTH, PLAIN, 18L, FEATURE.feature("feature 15")))
                .isEmpty();

        assertThat(problems)
                .extracting(Fault::toString)
                .containsExactly(
                        "marks.shp: COL: the numbers have no unit and are not used; say units: {depth: …} with m,"
                                + " cm, mm, ft, ft_us or in");
    }

    @Test
    void theLayersUnitComesBeforeTheColumnsNameAndThatBeforeTheSites() {
        ColumnFinder.Column named = new ColumnFinder.Column("DEPTH_FT", Optional.of(Unit.FOOT));
        Map<String, Unit> inches = Map.of("depth", Unit.INCH);
        Map<String, Unit> millimetres = Map.of("depth", Unit.MILLIMETRE);

        Optional<Object> all =
                reader(Role.UTILITY, inches, millimetres, Map.of()).value(Attribute.DEPTH, named, 30L, FEATURE);
        Optional<Object> nameAndSite =
                reader(Role.UTILITY, Map.of(), millimetres, Map.of()).value(Attribute.DEPTH, named, 30L, FEATURE);
        Optional<Object> site =
                reader(Role.UTILITY, Map.of(), millimetres, Map.of()).value(Attribute.DEPTH, PLAIN, 30L, FEATURE);

        assertThat(metres(all)).isCloseTo(0.762, within(1e-12));
        assertThat(metres(nameAndSite)).isCloseTo(9.144, within(1e-12));
        assertThat(metres(site)).isCloseTo(0.030, within(1e-12));
        assertThat(problems)
                .extracting(Fault::toString)
                .containsExactly(
                        "marks.shp: DEPTH_FT: its name ends in ft, but it is read in in as site.yaml says; check"
                                + " which is right");
    }

    @Test
    void theUnitOfElevationsServesEveryElevationAndTheDiametersTheOutsideDiameter() {
        ValueReader reader =
                reader(Role.PIPE, Map.of(), Map.of("elevation", Unit.ELEVATION_FOOT, "diameter", Unit.INCH), Map.of());

        assertThat(metres(reader.value(Attribute.INVERT_UP, PLAIN, 10L, FEATURE)))
                .isCloseTo(3.048, within(1e-12));
        assertThat(metres(reader.value(Attribute.OUTSIDE_DIAMETER, PLAIN, 10L, FEATURE)))
                .isCloseTo(0.254, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"diameter,0", "diameter,-4", "outside_diameter,0", "depth,-1"})
    void aSizeThatCannotBeIsNotUsedAndThatIsSaid(String attribute, long cell) {
        Attribute<?> asked = Attribute.named(attribute).orElseThrow();

        assertThat(reader(Role.UTILITY, Map.of(attribute, Unit.INCH), Map.of(), Map.of())
                        .value(asked, PLAIN, cell, FEATURE))
                .isEmpty();
        assertThat(problems)
                .singleElement()
                .asString()
                .startsWith("marks.shp: feature 14: COL: \"" + cell + "\" is no ")
                .contains("leave it empty where it is not known");
    }

    /** 1.7976931348623157e308 is what some programs write for none; in minutes it is more than a number can hold. */
    @ParameterizedTest
    @ValueSource(strings = {"1.7976931348623157e308", "-1.7976931348623157E308", "1e8"})
    void aNumberThatNothingOnALotHasIsNotUsedAndThatIsTold(String cell) {
        ValueReader reader = reader(Role.DRAINAGE_AREA, Map.of("concentration_time", Unit.MINUTE), Map.of(), Map.of());

        assertThat(reader.value(Attribute.CONCENTRATION_TIME, PLAIN, cell, FEATURE))
                .isEmpty();
        assertThat(problems)
                .extracting(Fault::toString)
                .containsExactly(
                        "marks.shp: feature 14: COL: \"" + cell + "\" is no concentration time and is not used,"
                                + " here or elsewhere in the column; leave it empty where it is not known");
        assertThat(reader.value(Attribute.CONCENTRATION_TIME, PLAIN, "10", FEATURE))
                .isPresent();
    }

    @Test
    void aFootingNoDeeperThanTheGroundIsOneAndOneAboveItIsNone() {
        ValueReader reader = reader(Role.BUILDING, Map.of("footing_depth", Unit.FOOT), Map.of(), Map.of());

        assertThat(reader.value(Attribute.FOOTING_DEPTH, PLAIN, 0L, FEATURE)).isPresent();
        assertThat(reader.value(Attribute.FOOTING_DEPTH, PLAIN, -2L, FEATURE)).isEmpty();
    }

    @Test
    void aDepthOfZeroIsADepth() {
        assertThat(metres(depth(0L))).isZero();
    }

    @Test
    void valuesSayWhatAWordStandsFor() {
        ValueReader reader = reader(
                Role.UTILITY, Map.of(), Map.of(), Map.of(Attribute.KIND, Map.of("GAS MN", "gas", "7", "electric")));

        assertThat(reader.value(Attribute.KIND, PLAIN, "GAS MN ", FEATURE)).contains("gas");
        assertThat(reader.value(Attribute.KIND, PLAIN, 7L, FEATURE)).contains("electric");
        assertThat(reader.value(Attribute.KIND, PLAIN, 7.0, FEATURE)).contains("electric");
    }

    @Test
    void valuesServeQuantitiesToo() {
        ValueReader reader = reader(
                Role.UTILITY,
                Map.of("depth", Unit.INCH),
                Map.of(),
                Map.of(Attribute.DEPTH, Map.of("999", "", "shallow", "6 in")));

        assertThat(reader.value(Attribute.DEPTH, PLAIN, 999L, FEATURE)).isEmpty();
        assertThat(metres(reader.value(Attribute.DEPTH, PLAIN, "shallow", FEATURE)))
                .isCloseTo(0.1524, within(1e-12));
        assertThat(faults).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"Water Main,water_main", "water-main,water_main", "GAS,gas"})
    void theCaseOfAWordAndItsBlanksDoNotMatter(String cell, String kind) {
        assertThat(reader(Role.UTILITY, Map.of(), Map.of(), Map.of()).value(Attribute.KIND, PLAIN, cell, FEATURE))
                .contains(kind);
    }

    @Test
    void anUnknownWordIsAProblemWithTheNearestKnownOneAndTheValueStaysUnknown() {
        ValueReader reader = reader(Role.UTILITY, Map.of(), Map.of(), Map.of());

        assertThat(reader.value(Attribute.KIND, PLAIN, "eletric", FEATURE)).isEmpty();
        assertThat(reader.value(Attribute.KIND, PLAIN, "eletric", FEATURE)).isEmpty();

        assertThat(faults).isEmpty();
        assertThat(problems)
                .singleElement()
                .asString()
                .startsWith("marks.shp: feature 14: COL: \"eletric\" is not a known kind and is not used")
                .contains("electric?")
                .contains("values: {kind: {\"eletric\": …}}");
    }

    @ParameterizedTest
    @ValueSource(strings = {"PVC", "SDR35 PVC"})
    void anUnknownMaterialIsAProblem(String cell) {
        assertThat(reader(Role.PIPE, Map.of(), Map.of(), Map.of()).value(Attribute.MATERIAL, PLAIN, cell, FEATURE))
                .isEmpty();
        assertThat(problems).singleElement().asString().contains("pvc_sdr35");
    }

    @Test
    void aQualityLevelIsACapitalLetter() {
        assertThat(reader(Role.UTILITY, Map.of(), Map.of(), Map.of()).value(Attribute.QUALITY, PLAIN, "b", FEATURE))
                .contains("B");
    }

    @ParameterizedTest
    @CsvSource({"Y,true", "yes,true", "TRUE,true", "1,true", "n,false", "F,false", "0,false"})
    void aFlagIsReadInItsUsualSpellings(String cell, boolean value) {
        assertThat(reader(Role.LOT, Map.of(), Map.of(), Map.of()).value(Attribute.OWN, PLAIN, cell, FEATURE))
                .contains(value);
    }

    @Test
    void aFlagMayBeANumberOrAFlagOfItsOwn() {
        ValueReader reader = reader(Role.LOT, Map.of(), Map.of(), Map.of());

        assertThat(reader.value(Attribute.OWN, PLAIN, 1.0, FEATURE)).contains(true);
        assertThat(reader.value(Attribute.OWN, PLAIN, false, FEATURE)).contains(false);
    }

    @Test
    void aFlagThatIsNeitherIsAFault() {
        assertThat(reader(Role.LOT, Map.of(), Map.of(), Map.of()).value(Attribute.OWN, PLAIN, "maybe", FEATURE))
                .isEmpty();
        assertThat(faults)
                .extracting(Fault::toString)
                .containsExactly("marks.shp: feature 14: COL: \"maybe\" is neither true nor false; give true or false");
    }

    @Test
    void anIdOfAnyTypeIsTheTextThatThePersonSees() {
        ValueReader reader = reader(Role.PIPE, Map.of(), Map.of(), Map.of());

        assertThat(reader.value(Attribute.ID, PLAIN, 14L, FEATURE)).contains("14");
        assertThat(reader.value(Attribute.ID, PLAIN, 14.0, FEATURE)).contains("14");
        assertThat(reader.value(Attribute.ID, PLAIN, 14.5, FEATURE)).contains("14.5");
        assertThat(reader.value(Attribute.ID, PLAIN, LocalDate.of(2026, 5, 4), FEATURE))
                .contains("2026-05-04");
        assertThat(reader.value(Attribute.ID, PLAIN, " P-1 ", FEATURE)).contains("P-1");
        assertThat(reader.value(Attribute.ID, PLAIN, "  ", FEATURE)).isEmpty();
    }

    @Property
    void aNumberIsReadTheSameFromANumericColumnAndFromText(@ForAll @DoubleRange(min = 0, max = 1e6) double inches) {
        assertThat(metres(depth(inches))).isEqualTo(metres(depth(String.valueOf(inches))));
    }

    private Optional<Object> diameter(Role role, Object cell, Unit unit) {
        return reader(role, Map.of("diameter", unit), Map.of(), Map.of())
                .value(Attribute.DIAMETER, PLAIN, cell, FEATURE);
    }

    @ParameterizedTest
    @CsvSource({"2, INCH, 0.0508", "50, MILLIMETRE, 0.05", "4, INCH, 0.1016", "3, FOOT, 0.9144", "1.2, METRE, 1.2"})
    void aDiameterThatADrainOfALotMayHaveIsTaken(double number, Unit unit, double metres) {
        assertThat(metres(diameter(Role.PIPE, number, unit))).isCloseTo(metres, within(1e-9));
        assertThat(problems).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "4, FOOT, 4 ft: is the diameter in inches?",
        "4, MILLIMETRE, 4 mm: is the diameter in inches?",
        "1.5, INCH, '1.5 in: what is the diameter, and in which unit?'",
        "110, INCH, 110 in: is the diameter in millimetres?",
        "0.1, INCH, 0.1 in: is the diameter in metres?",
        "0.333, INCH, 0.333 in: is the diameter in feet or metres?",
        "9000, FOOT, '9000 ft: what is the diameter, and in which unit?'",
    })
    void aDiameterThatNoDrainOfALotHasIsAskedAboutAndNotUsed(double number, Unit unit, String asked) {
        assertThat(diameter(Role.PIPE, number, unit)).isEmpty();
        assertThat(problems)
                .extracting(Fault::toString)
                .containsExactly(
                        "marks.shp: feature 14: COL: " + asked
                                + " It is not used, here or elsewhere in the column; say units: {diameter: …}, or mend the number");
    }

    @Test
    void theMainOfAnotherMayBeWiderThanADrain() {
        assertThat(metres(diameter(Role.UTILITY, 6, Unit.FOOT))).isCloseTo(1.8288, within(1e-9));
    }

    @Test
    void depthsOfAPipesEndsAreReadInTheUnitOfDepthsAndAreNotNegative() {
        ValueReader ends = reader(Role.PIPE, Map.of(), Map.of("depth", Unit.INCH), Map.of());

        assertThat(metres(ends.value(Attribute.DEPTH_UP, PLAIN, 18, FEATURE))).isCloseTo(0.4572, within(1e-9));
        assertThat(ends.value(Attribute.DEPTH_DOWN, PLAIN, -18, FEATURE)).isEmpty();
        assertThat(problems).hasSize(1);
    }
}

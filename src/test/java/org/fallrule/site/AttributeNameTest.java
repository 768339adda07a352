package org.fallrule.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.fallrule.document.Place;
import org.fallrule.filter.Ecql;
import org.fallrule.measure.Area;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Intensity;
import org.fallrule.measure.Length;
import org.fallrule.measure.Ratio;
import org.fallrule.measure.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class AttributeNameTest {

    private static Object value(String name, Attributes attributes) {
        return AttributeName.parse(name).orElseThrow().in(attributes).orElse("not said");
    }

    @ParameterizedTest
    @CsvSource({
        "diameter_in, 4",
        "diameter_mm, 101.6",
        "diameter_cm, 10.16",
        "diameter_m, 0.1016",
        "diameter_ft, 0.33333333"
    })
    void aLengthIsNamedWithTheUnitThatTheNumberStandsIn(String name, double number) {
        Attributes pipe = Attributes.none().with(Attribute.DIAMETER, Length.inches(4));

        assertThat((Double) value(name, pipe)).isCloseTo(number, within(1e-7));
    }

    @ParameterizedTest
    @CsvSource({"rim_ft, 100", "rim_m, 30.48", "rim_ft_us, 99.9998"})
    void anElevationIsNamedWithItsUnitToo(String name, double number) {
        Attributes inlet = Attributes.none().with(Attribute.RIM, Elevation.feet(100));

        assertThat((Double) value(name, inlet)).isCloseTo(number, within(1e-6));
    }

    @ParameterizedTest
    @CsvSource({"grate_open_area_sq_in, 24", "grate_open_area_sq_ft, 0.1666667", "grate_open_area_m2, 0.015483840"})
    void aUnitOfTwoWordsIsWrittenAsOneName(String name, double number) {
        Attributes inlet = Attributes.none().with(Attribute.GRATE_OPEN_AREA, new Area(24 * 0.0254 * 0.0254));

        assertThat((Double) value(name, inlet)).isCloseTo(number, within(1e-7));
    }

    @Test
    void aRateIsNamedWithoutTheStroke() {
        Attributes soil =
                Attributes.none().with(Attribute.INFILTRATION, new Intensity(0.5 * Unit.INCH_PER_HOUR.toSi()));

        assertThat((Double) value("infiltration_in_h", soil)).isCloseTo(0.5, within(1e-9));
    }

    @Test
    void aRatioGoesByItsOwnName() {
        Attributes pipe = Attributes.none().with(Attribute.ROUGHNESS, new Ratio(0.012));

        assertThat(value("roughness", pipe)).isEqualTo(0.012);
        assertThat(AttributeName.parse("roughness_")).isEmpty();
    }

    @Test
    void everyNameCanStandInAConditionAsItIs() {
        assertThat(AttributeName.all())
                .filteredOn(name -> !name.equals("id"))
                .allSatisfy(name -> assertThat(
                                Ecql.parse(name + " = 1", Place.of("rule.yaml")).names())
                        .containsExactly(name));
    }

    @Test
    void wordsAndFlagsGoByTheirOwnName() {
        Attributes lot = Attributes.none().with(Attribute.OWN, true).with(Attribute.ACCESS, "public");

        assertThat(value("own", lot)).isEqualTo(true);
        assertThat(value("access", lot)).isEqualTo("public");
        assertThat(value("material", lot)).isEqualTo("not said");
        assertThat(value("diameter_in", lot)).isEqualTo("not said");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"diameter", "rim", "rim_in", "diameter_sq_ft", "access_ft", "OWN", "_in", "", "diameter_", "in"})
    void aNameWithoutAUnitOrWithAWrongOneIsNoName(String name) {
        assertThat(AttributeName.parse(name)).isEmpty();
    }

    @Test
    void everyNameThatIsOfferedCanBeRead() {
        assertThat(AttributeName.all())
                .doesNotHaveDuplicates()
                .contains("diameter_in", "invert_up_ft", "to_outfall_ft_us", "own")
                .allSatisfy(name -> assertThat(AttributeName.parse(name)).isPresent());
    }

    @Test
    void aValueOfAnotherTypeIsRefused() {
        assertThatThrownBy(() -> Attributes.of(Map.of(Attribute.DIAMETER, "4 in")))
                .isInstanceOf(ClassCastException.class);
    }

    @Test
    void oneMoreAttributeLeavesTheOthersAsTheyWere() {
        Attributes before = Attributes.none().with(Attribute.ACCESS, "public");
        Attributes after = before.with(Attribute.ACCESS, "private");

        assertThat(before.get(Attribute.ACCESS)).contains("public");
        assertThat(after.get(Attribute.ACCESS)).contains("private");
        assertThat(after.has(Attribute.OWN)).isFalse();
        assertThat(Attributes.none().asMap()).isEmpty();
    }
}

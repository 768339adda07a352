package org.fallrule.filter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assertions.assertTimeout;

import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class EcqlTest {
    private static final Place WHERE = Place.of("rules/a.yaml").at(7, 15);

    private static final Map<String, Object> PIPE = Map.of(
            "diameter_in",
            4.0,
            "material",
            "pvc_sdr35",
            "own",
            true,
            "id",
            "P-1",
            "tag",
            "12",
            "note",
            "two\nlines 😀");

    private static Truth test(String condition) {
        return Ecql.parse(condition, WHERE).test(name -> Optional.ofNullable(PIPE.get(name)));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "diameter_in = 4 | TRUE",
                "diameter_in = 6 | FALSE",
                "diameter_in <> 4 | FALSE",
                "diameter_in <> 6 | TRUE",
                "diameter_in < 4 | FALSE",
                "diameter_in < 4.1 | TRUE",
                "diameter_in <= 4 | TRUE",
                "diameter_in > 4 | FALSE",
                "diameter_in > -5 | TRUE",
                "diameter_in >= 4 | TRUE",
                "4 = diameter_in | TRUE",
                "3 < diameter_in | TRUE",
                "4 < diameter_in | FALSE",
                "4 <= diameter_in | TRUE",
                "5 > diameter_in | TRUE",
                "4 > diameter_in | FALSE",
                "4 >= diameter_in | TRUE",
                "diameter_in BETWEEN 3 AND 6 | TRUE",
                "diameter_in BETWEEN 4 AND 4 | TRUE",
                "diameter_in BETWEEN 5 AND 6 | FALSE",
                "diameter_in NOT BETWEEN 3 AND 6 | FALSE",
                "diameter_in IN (4) | TRUE",
                "diameter_in IN (3, 4) | TRUE",
                "diameter_in NOT IN (3, 6) | TRUE",
                "material IN ('abs') | FALSE",
                "material in ('abs', 'pvc_sdr35') | TRUE",
                "material = 'pvc_sdr35' | TRUE",
                "material = 'PVC_SDR35' | FALSE",
                "material LIKE 'pvc%' | TRUE",
                "material LIKE '%35' | TRUE",
                "material LIKE 'pvc_sdr__' | TRUE",
                "material LIKE 'pvc' | FALSE",
                "material LIKE '.*' | FALSE",
                "material NOT LIKE 'abs%' | TRUE",
                "material LIKE 'PVC%' | FALSE",
                "material ILIKE 'PVC%' | TRUE",
                "note LIKE 'two%' | TRUE",
                "note LIKE '%_ 😀' | TRUE",
                "note LIKE '%_lines _' | TRUE",
                "own = true | TRUE",
                "own = FALSE | FALSE",
                "own <> false | TRUE",
                "material IS NULL | FALSE",
                "material IS NOT NULL | TRUE",
                "access IS NULL | TRUE",
                "access IS NOT NULL | FALSE",
                "\"id\" = 'P-1' | TRUE",
                "NOT diameter_in = 4 | FALSE",
                "NOT (diameter_in = 6 OR own = false) | TRUE",
                "diameter_in = 6 OR own = true AND material = 'pvc_sdr35' | TRUE",
                "(diameter_in = 6 OR own = true) and material = 'abs' | FALSE",
            })
    void everyFormOfConditionIsReadAndHoldsOrNot(String condition, Truth truth) {
        assertThat(test(condition)).isEqualTo(truth);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "access = 'public' | UNKNOWN",
                "access <> 'public' | UNKNOWN",
                "access IN ('public', 'private') | UNKNOWN",
                "access NOT IN ('public') | UNKNOWN",
                "access LIKE '%' | UNKNOWN",
                "depth_in < 5 | UNKNOWN",
                "depth_in BETWEEN 1 AND 5 | UNKNOWN",
                "NOT access = 'public' | UNKNOWN",
                "access = 'public' AND own = true | UNKNOWN",
                "access = 'public' AND own = false | FALSE",
                "access = 'public' OR own = true | TRUE",
                "access = 'public' OR own = false | UNKNOWN",
            })
    void whatThePlanDoesNotSayMakesAConditionNeitherTrueNorFalse(String condition, Truth truth) {
        assertThat(test(condition)).isEqualTo(truth);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "diameter_in = '4' | TRUE",
                "diameter_in = '4.0' | TRUE",
                "diameter_in < '5' | TRUE",
                "tag = 12 | TRUE",
                "tag = 12.0 | TRUE",
                "tag < 100 | TRUE",
                "tag < '2' | TRUE",
                "material = 4 | FALSE",
                "material <> 4 | TRUE",
                "material < 4 | UNKNOWN",
                "diameter_in > 'abs' | UNKNOWN",
                "own = 'true' | TRUE",
            })
    void aNumberWrittenAsTextIsANumberAndOtherTextIsUnlikeEveryNumber(String condition, Truth truth) {
        assertThat(test(condition)).isEqualTo(truth);
    }

    @ParameterizedTest
    @CsvSource({
        "4, 4.000003, TRUE",
        "4, 4.000005, FALSE",
        "4, 3.999997, TRUE",
        "0, 0, TRUE",
        "0, 1e-300, FALSE",
        "1000000, 1000000.9, TRUE",
        "1000000, 1000002, FALSE",
        "-4, -4.000003, TRUE",
        "-4, 4, FALSE",
    })
    void numbersAreEqualUpToAMillionthOfThemselves(double value, double to, Truth equal) {
        assertThat(Relation.EQUAL.between(value, to)).isEqualTo(equal);
        assertThat(Relation.AT_LEAST.between(value, to).and(Relation.AT_MOST.between(value, to)))
                .isEqualTo(equal);
        assertThat(Relation.LESS.between(value, to).or(Relation.MORE.between(value, to)))
                .isEqualTo(equal.not());
    }

    @Test
    void aDiameterGivenInMillimetresIsItsNominalSizeInInches() {
        assertThat(Relation.AT_MOST.between(0.0635 / 0.0254, 2.5)).isEqualTo(Truth.TRUE);
        assertThat(Relation.LESS.between(203.2 / 25.4, 8)).isEqualTo(Truth.FALSE);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "strLength(material) = 3 | wants an attribute's name on one side of each comparison",
                "diameter_in + 1 = 5 | wants an attribute's name on one side of each comparison",
                "1 = 1 | wants an attribute's name on one side of each comparison",
                "access EXISTS | wants an attribute's name on one side of each comparison",
                "diameter_in = 2 + 2 | wants a number, true, false or a text in single quotes on one side",
                "diameter_in = 1/2 | wants a number, true, false or a text in single quotes on one side",
                "diameter_in = depth_in | wants a number, true, false or a text in single quotes on one side",
                "diameter_in IN (depth_in) | wants a number, true, false or a text in single quotes on one side",
                "diameter_in BETWEEN depth_in AND 4 | wants a number, true, false or a text in single quotes",
                "diameter_in = now() | wants a number, true, false or a text in single quotes on one side",
                "material = \"abs\" | wants a number, true, false or a text in single quotes on one side",
                "material = POINT(1 1) | wants a number, true, false or a text in single quotes on one side",
                "material = 2006-11-30 | wants a number, true, false or a text in single quotes on one side",
                "material = 2006-11-30T01:30:00Z | wants a number, true, false or a text in single quotes",
                "INTERSECTS(shape, POINT(1 1)) | uses something other than comparisons joined by AND, OR and NOT",
                "BBOX(shape, 1, 2, 3, 4) | uses something other than comparisons joined by AND, OR and NOT",
                "DWITHIN(shape, POINT(1 1), 5, feet) | uses something other than comparisons joined by AND, OR",
                "material AFTER 2006-11-30T01:30:00Z | uses something other than comparisons joined by AND, OR",
                "IN ('P-1') | uses something other than comparisons joined by AND, OR and NOT",
                "INCLUDE | uses something other than comparisons joined by AND, OR and NOT",
                "diameter_in == 4 | says == where = is meant",
                "diameter_in != 4 | cannot be read",
                "diameter_in = | cannot be read",
                "= 4 | cannot be read",
                "own | cannot be read",
                "diameter_in = 4 in | cannot be read",
                "diameter_in = 4; own = true | cannot be read",
                "diameter_in # 4 | cannot be read",
                "material = 'abs | cannot be read",
                "material = NULL | cannot be read",
                "material LIKE 4 | cannot be read",
                "material IN () | cannot be read",
                "diameter_in = 4 AND | cannot be read",
                "diameter_in = 4 AND (own = true | cannot be read",
                "diameter_in = 4) | cannot be read",
                "id = 'P-1' | cannot be read; id is a word of ECQL, as a name it stands in double quotes",
            })
    void everyOtherFormIsRefusedWithItsPlaceAndTheReason(String condition, String why) {
        assertThatThrownBy(() -> test(condition))
                .isInstanceOf(UnusableInput.class)
                .hasMessageStartingWith("rules/a.yaml:7:15: the condition " + condition + " " + why)
                .hasMessageEndingWith("; write it like diameter_in <= 6 AND material = 'pvc_sdr35'");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "   ", "\n"})
    void anEmptyConditionIsRefused(String condition) {
        assertThatThrownBy(() -> test(condition))
                .isInstanceOf(UnusableInput.class)
                .hasMessageStartingWith("rules/a.yaml:7:15: an empty condition cannot be read");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "(",
                "NOT ",
                "NOT (",
                "own = true AND ",
                "own = true OR (",
                "own = (",
                "-",
                "x",
                "'",
                "strLength(",
                "own IN (1,",
                "\u0000",
                "😀"
            })
    void whateverGoesOnWithoutEndIsRefusedPromptlyInAShortMessage(String part) {
        for (int length : new int[] {1000, 3999, 100_000}) {
            String condition = part.repeat(length / part.length());

            assertTimeout(
                    Duration.ofSeconds(3),
                    () -> assertThatThrownBy(() -> test(condition))
                            .isInstanceOf(UnusableInput.class)
                            .hasMessageStartingWith("rules/a.yaml:7:15: the condition ")
                            .message()
                            .hasSizeLessThan(400));
        }
    }

    @Test
    void aHundredThousandParenthesesDoNotOverflowTheStack() {
        String condition = "(".repeat(100_000) + "own = true" + ")".repeat(100_000);

        assertThatThrownBy(() -> test(condition))
                .isInstanceOf(UnusableInput.class)
                .hasMessageContaining("is too long or too deep; part it into several rules or cases");
    }

    @Test
    void theLongestAndDeepestConditionsThatAreTakenAreRead() {
        assertThat(test("own = true AND ".repeat(260) + "own = true")).isEqualTo(Truth.TRUE);
        assertThat(test("NOT (".repeat(100) + "own = true" + ")".repeat(100))).isEqualTo(Truth.TRUE);
        assertThat(test("material IN ('" + "(".repeat(500) + "', 'pvc_sdr35')")).isEqualTo(Truth.TRUE);
    }

    @Test
    void aConditionNamesWhatItAsksFor() {
        assertThat(Ecql.parse("a = 1 AND NOT (b LIKE 'x' OR c IS NULL) OR a IN (1, 2)", WHERE)
                        .names())
                .containsExactlyInAnyOrder("a", "b", "c");
        assertThat(new Filter.Always().names()).isEmpty();
        assertThat(new Filter.Always().test(name -> Optional.empty())).isEqualTo(Truth.TRUE);
    }

    @ParameterizedTest
    @ValueSource(strings = {"a LIKE 'x%'", "a = 1", "a BETWEEN 1 AND 2", "NOT a IN ('x')", "a IS NULL"})
    void conditionsThatAreWrittenTheSameAreEqual(String condition) {
        assertThat(Ecql.parse(condition, WHERE)).isEqualTo(Ecql.parse(condition, WHERE));
        assertThat(Ecql.parse(condition, WHERE)).hasSameHashCodeAs(Ecql.parse(condition, WHERE));
    }

    @Test
    void likeInEitherCaseIsNotTheSameAsLike() {
        assertThat(Ecql.parse("a LIKE 'x'", WHERE)).isNotEqualTo(Ecql.parse("a ILIKE 'x'", WHERE));
        assertThat(Ecql.parse("a LIKE 'x'", WHERE)).isNotEqualTo(Ecql.parse("a LIKE 'y'", WHERE));
    }
}

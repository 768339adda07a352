package org.fallrule.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.fallrule.reader.Vocabulary;
import org.fallrule.site.Attribute;
import org.fallrule.site.Role;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class TradeWordsTest {
    private final TradeWords words = TradeWords.load();

    /**
     * Codes of points as a training page of surveyors lists them, and others of common practice without a source; those that stand for
     * two things in the field have two meanings.
     */
    @ParameterizedTest
    @CsvSource({
        "GND, spot",
        "gs, spot",
        "DS, downspout inlet",
        "CB, basin inlet",
        "Y D, basin inlet",
        "TREE 24\", tree",
        "GM, gas meter",
        "WV, water valve",
        "PP, power pole",
        "TOB, breakline",
        "FES, outfall",
        "XQ, ''",
        "TREE x, ''",
        "CO, cleanout|county",
        "DI, basin inlet|ductile iron",
        "BC, building|back of curb",
        "SW, walk|stormwater",
    })
    void aCodeMeansWhatCrewsWriteItFor(String code, String meanings) {
        assertThat(String.join(
                        "|", words.code(code).stream().map(Meaning::spoken).toList()))
                .isEqualTo(meanings);
    }

    /** Uniform Color Code of the American Public Works Association, as one-call centers print it. */
    @ParameterizedTest
    @CsvSource({
        "Red, electric utility",
        "YELLOW, gas utility",
        "orange, communication utility",
        "BLUE, water_main utility|water_service utility",
        "Purple, reclaimed utility|irrigation utility",
        "GRN, sanitary utility|storm utility",
        "Pink, temporary survey mark",
        "white, proposed excavation",
        "black, ''",
    })
    void aColorMeansWhatTheUniformColorCodeSays(String color, String meanings) {
        assertThat(String.join(
                        "|", words.color(color).stream().map(Meaning::spoken).toList()))
                .isEqualTo(meanings);
    }

    /** Groups of the U.S. National CAD Standard's layer names, at second hand; its letters for disciplines mean nothing here. */
    @ParameterizedTest
    @CsvSource({
        "C-NGAS, LINE, gas utility",
        "C-SSWR-UNDR-E, LINE, sanitary utility",
        "CU-POWR-UGND-N, LINE, electric utility",
        "V-COMM-UNDR, LINE, communication utility",
        "C-SWLK, AREA, walk",
        "V-PROP-LINE, LINE, lot|proposed",
        "L-PLNT-TREE, POINT, tree",
        "C-PROP-ROWW, AREA, lot|street|easement|proposed",
        "C-STRM, LINE, ''",
        "V-NODE, POINT, ''",
    })
    void aLayerOfADrawingIsNamedByItsGroup(String layer, Role.Form form, String meanings) {
        assertThat(String.join(
                        "|",
                        new LayerName(words, layer)
                                .meaningsOrNone(form).stream()
                                        .map(Meaning::spoken)
                                        .toList()))
                .isEqualTo(meanings);
    }

    @ParameterizedTest
    @EnumSource(Role.class)
    void everyRoleHasAWordInTheNamesOfLayers(Role role) {
        List<Role> unnamed = List.of(Role.GROUND, Role.PROPOSED_GROUND);
        String word = role.word().replace("_", "");
        assertThat(unnamed.contains(role)
                        || words.layer(word).stream().anyMatch(meaning -> meaning.is(role))
                        || new LayerName(words, role.word()).is(role))
                .isTrue();
    }

    @Test
    void everyColumnAndValueIsOfAnAttributeAndItsVocabulary() {
        for (Attribute<?> attribute : Attribute.all()) {
            assertThat(words.columns(attribute))
                    .doesNotHaveDuplicates()
                    .allMatch(word -> word.equals(TradeWords.plain(word)));
            assertThat(words.askedColumns(attribute)).noneMatch(words.columns(attribute)::contains);
        }
        assertThat(words.value(Attribute.MATERIAL, "SDR35 PVC").orElseThrow())
                .isIn(Vocabulary.of(Role.PIPE, Attribute.MATERIAL));
    }
}

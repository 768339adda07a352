package org.fallrule.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.CharRange;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;

class YamlWriterTest {
    private static Object readAgain(Map<String, ?> tree) {
        return YamlWriter.tree(Yaml.parse(YamlWriter.write(tree), "site.yaml"));
    }

    @Test
    void keysStandOnLinesOfTheirOwnDownToTheSecondLevel() {
        assertThat(YamlWriter.write(Map.of("layers", Map.of("ground", Map.of("file", "ground.asc")))))
                .isEqualTo("layers:\n  ground: {file: ground.asc}\n");
        assertThat(YamlWriter.write(Map.of("absent", List.of("septic", "well"))))
                .isEqualTo("absent: [septic, well]\n");
    }

    @Test
    void whatCouldBeReadAsSomethingElseIsQuoted() {
        assertThat(YamlWriter.write(Map.of("site", "14: Harrow # Lane"))).isEqualTo("site: \"14: Harrow # Lane\"\n");
    }

    @Property
    void whatIsWrittenReadsAgainAsItWas(
            @ForAll @StringLength(max = 12) @CharRange(from = ' ', to = '~') String text,
            @ForAll @StringLength(min = 1, max = 8) @CharRange(from = 'a', to = 'z') String key) {
        Map<String, ?> tree =
                Map.of(key, Map.of("deep", Map.of("deeper", List.of(text, Map.of(key, text)))), "beside", text);
        Map<String, ?> distinct = key.equals("beside") ? Map.of(key, text) : tree;

        assertThat(readAgain(distinct)).isEqualTo(distinct);
    }
}

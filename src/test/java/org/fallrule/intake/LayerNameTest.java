package org.fallrule.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.fallrule.reader.LooseLayers;
import org.fallrule.reader.layer.RawLayer;
import org.fallrule.site.Role;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LayerNameTest {
    /** A file may hold one table whose name says more than its own. */
    @ParameterizedTest
    @CsvSource({
        "county.gpkg, parcels, lot",
        "county.gpkg, walk, walk",
        "walk.gpkg, layer1, walk",
        "sidewalks.gpkg, parcels, walk",
        "county.gpkg, layer1, ''",
    })
    void aFileThatSaysNothingIsNamedByItsOnlyTable(String file, String only, String role) {
        LooseLayers.Table table = new LooseLayers.Table(
                file,
                Optional.empty(),
                Optional.of(only),
                new RawLayer(file, Optional.empty(), List.of(), List.of()),
                0,
                true,
                List.of());

        assertThat(String.join(
                        "|",
                        LayerName.of(TradeWords.load(), table, Role.Form.AREA).meanings(Role.Form.AREA).stream()
                                .map(Meaning::spoken)
                                .toList()))
                .isEqualTo(role);
    }
}

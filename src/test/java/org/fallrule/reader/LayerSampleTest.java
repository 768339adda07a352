package org.fallrule.reader;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.fallrule.reader.layer.RawFeature;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;

/** What is kept of a layer of many features. */
class LayerSampleTest {
    private final LayerSample sample = new LayerSample(2);

    private void take(String wkt, Object... columns) {
        Map<String, Object> values = new LinkedHashMap<>();
        for (int i = 0; i < columns.length; i += 2) {
            values.put(String.valueOf(columns[i]), columns[i + 1]);
        }
        sample.take(new RawFeature("feature " + (sample.count() + 1), geometry(wkt), values));
    }

    private static Optional<Geometry> geometry(String wkt) {
        try {
            return wkt.isEmpty() ? Optional.empty() : Optional.of(new WKTReader().read(wkt));
        } catch (ParseException e) {
            throw new IllegalArgumentException(e);
        }
    }

    private void assertKept(String... labels) {
        assertThat(sample.kept()).extracting(RawFeature::label).containsExactly(labels);
    }

    @Test
    void theFirstAreKeptAndThenWhatIsNew() {
        take("POINT (1 1)", "code", "GS", "dia", 4L);
        take("POINT (1 1)", "code", "GS", "dia", 4L);
        take("POINT (1 1)", "code", "GS", "dia", 4L);
        take("POINT (1 1)", "code", "CB", "dia", 4L);
        take("POINT (1 1)", "code", "GS", "dia", "4 in");
        take("POINT (1 1)", "code", "GS", "other", 1L);
        take("POINT (1 1)", "code", "CB", "dia", "4 in");

        assertKept("feature 1", "feature 2", "feature 4", "feature 5", "feature 6");
        assertThat(sample.count()).isEqualTo(7);
    }

    @Test
    void anotherFormOfGeometryIsNewAndAHeightToo() {
        take("POINT (1 1)");
        take("POINT (1 1)");
        take("POINT (1 1)");
        take("LINESTRING (1 1, 2 2)");
        take("POINT Z (1 1 5)");
        take("");
        take("POINT EMPTY");
        take("LINESTRING (1 1, 3 3)");

        assertKept("feature 1", "feature 2", "feature 4", "feature 5", "feature 6", "feature 7");
    }

    /** A column of names is full after some; a value that is written in another way is kept then too. */
    @Test
    void ofAColumnOfNamesOnlyThoseWrittenOtherwiseAreKept() {
        for (int i = 1; i <= 1000; i++) {
            take("POINT (1 1)", "id", "P-" + i);
        }
        assertThat(sample.kept()).hasSize(250);
        take("POINT (1 1)", "id", "17'6");
        assertThat(sample.kept()).hasSize(251);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "POINT Z (1 2 3)",
                "MULTIPOINT ((1 2), (3 4))",
                "LINESTRING Z (1 2 3, 4 5 6, 7 8 9)",
                "MULTILINESTRING ((1 2, 3 4), (5 6, 7 8))",
                "POLYGON ((1 2, 3 4, 5 0, 1 2))",
                "MULTIPOLYGON (((1 2, 3 4, 5 0, 1 2)))",
                "POLYGON EMPTY",
            })
    void ofAGeometryItsFormAndFirstVertexAreKept(String wkt) {
        Geometry whole = geometry(wkt).orElseThrow();
        take(wkt);

        Geometry kept = sample.kept().get(0).geometry().orElseThrow();
        assertThat(kept.getDimension()).isEqualTo(whole.getDimension());
        assertThat(kept.isEmpty()).isEqualTo(whole.isEmpty());
        if (!whole.isEmpty()) {
            assertThat(kept.getCoordinate().equals3D(whole.getCoordinate())).isTrue();
        }
        assertThat(sample.extent().equals(whole.getEnvelopeInternal())).isTrue();
    }
}

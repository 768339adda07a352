package org.fallrule.reader;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
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

class PackedFeaturesTest {
    private final PackedFeatures packed = new PackedFeatures();

    private static Geometry geometry(String text) {
        try {
            return new WKTReader().read(text);
        } catch (ParseException e) {
            throw new IllegalArgumentException(e);
        }
    }

    private RawFeature through(String label, Geometry geometry, Map<String, Object> columns) {
        return packed.unpack(packed.pack(new RawFeature(label, Optional.of(geometry), columns), geometry));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "POINT (1 2)",
                "LINESTRING (0 0, 1.25 3)",
                "LINESTRING Z (0 0 7.5, 1 1 8)",
                "POLYGON ((0 0, 9 0, 9 9, 0 0), (4 1, 5 1, 5 2, 4 1))",
                "MULTILINESTRING ((0 0, 1 1), (2 2, 3 3))"
            })
    void aGeometryComesOutAsItWentIn(String text) {
        Geometry in = geometry(text);
        Geometry out = through("feature 1", in, Map.of()).geometry().orElseThrow();

        assertThat(out.equalsExact(in)).isTrue();
        for (int i = 0; i < in.getNumPoints(); i++) {
            assertThat(out.getCoordinates()[i].equals3D(in.getCoordinates()[i])).isTrue();
            assertThat(out.getCoordinates()[i]).hasSameClassAs(in.getCoordinates()[i]);
        }
    }

    @Test
    void columnsComeOutAsTheyWentIn() {
        Map<String, Object> columns = new LinkedHashMap<>();
        columns.put("kind", "gas");
        columns.put("name", "ü".repeat(70_000));
        columns.put("count", Long.MIN_VALUE);
        columns.put("depth", 2.5);
        columns.put("live", true);
        columns.put("laid", LocalDate.of(1931, 2, 28));

        RawFeature out = through("feature 7", geometry("POINT (0 0)"), columns);

        assertThat(out.columns()).containsExactlyEntriesOf(columns);
    }

    @ParameterizedTest
    @ValueSource(strings = {"feature 1", "feature 999999999", "feature 9999999999", "feature 07", "feature -3", "P-2"})
    void labelsComeOutAsTheyWentIn(String label) {
        assertThat(through(label, geometry("POINT (0 0)"), Map.of()).label()).isEqualTo(label);
    }

    @Test
    void moreDifferentWordsThanGetANumberAreKeptToo() {
        for (int i = 0; i < 5000; i++) {
            assertThat(through("feature 1", geometry("POINT (0 0)"), Map.of("name", "N" + i))
                            .columns())
                    .containsEntry("name", "N" + i);
        }
    }

    @Test
    void theyKnowTheOrderInWhichTheyCame() {
        Geometry here = geometry("POINT (0 0)");
        RawFeature any = new RawFeature("feature 1", Optional.of(here), Map.of());

        assertThat(PackedFeatures.order(packed.pack(any, here))).isZero();
        assertThat(PackedFeatures.order(packed.pack(any, here))).isEqualTo(1);
    }
}

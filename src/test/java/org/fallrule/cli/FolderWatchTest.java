package org.fallrule.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a watch takes for a change. Each test waits for the change, however long that takes. */
class FolderWatchTest {
    @TempDir
    Path place;

    @Test
    void sharedLayersThatAppearLaterAreWatchedToo() throws IOException {
        Path site = Files.createDirectory(place.resolve("lane-1"));
        Path rules = Files.createDirectory(place.resolve("rules"));
        Path street = Files.writeString(place.resolve("street.geojson"), "{}");
        try (FolderWatch watch = new FolderWatch(() -> SiteWatch.watched(site, rules))) {
            Files.writeString(place.resolve("sites.yaml"), "shared: {street: street.geojson}\n");
            assertThat(watch.awaitChange()).isTrue();

            Files.writeString(street, "{\"type\": \"FeatureCollection\", \"features\": []}");
            assertThat(watch.awaitChange()).isTrue();
        }
    }
}

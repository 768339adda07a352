package org.fallrule.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WholeFilesTest {
    @TempDir
    Path folder;

    private static Map<String, byte[]> two() {
        Map<String, byte[]> files = new LinkedHashMap<>();
        files.put("a.txt", "new a".getBytes(StandardCharsets.UTF_8));
        files.put("b.txt", "new b".getBytes(StandardCharsets.UTF_8));
        return files;
    }

    @Test
    void takeThePlaceOfThoseBefore() throws IOException {
        Files.writeString(folder.resolve("a.txt"), "old");

        WholeFiles.put(folder, two());

        assertThat(folder.resolve("a.txt")).hasContent("new a");
        assertThat(folder.resolve("b.txt")).hasContent("new b");
        assertThat(folder.toFile().list()).containsExactlyInAnyOrder("a.txt", "b.txt");
    }

    /** As on a full disk: the second file cannot be made, and the first is not changed for it. */
    @Test
    void noneIsChangedWhenOneCannotBeWritten() throws IOException {
        Files.writeString(folder.resolve("a.txt"), "old");
        Files.createDirectories(folder.resolve(".b.txt.part/held"));

        assertThatThrownBy(() -> WholeFiles.put(folder, two())).isInstanceOf(IOException.class);

        assertThat(folder.resolve("a.txt")).hasContent("old");
        assertThat(folder.resolve(".a.txt.part")).doesNotExist();
    }
}

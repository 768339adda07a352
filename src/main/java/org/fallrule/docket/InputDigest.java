package org.fallrule.docket;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Stream;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;

/**
 * A digest (SHA-256) over names and contents of files. Contents and not times are taken: a copied folder is the same plan, and a
 * file saved twice within a second is not.
 */
public final class InputDigest {
    private final MessageDigest sum = sha256();
    private final byte[] buffer = new byte[1 << 16];

    /** Adds words that the outcome depends on. */
    public InputDigest add(String words) {
        byte[] bytes = words.getBytes(StandardCharsets.UTF_8);
        sum.update((bytes.length + ":").getBytes(StandardCharsets.US_ASCII));
        sum.update(bytes);
        return this;
    }

    /**
     * Adds every file in a folder and in the folders within. A link counts as where it leads to and is not followed: one that
     * leads out of the folder is not read from either, and what it leads to inside is taken there.
     *
     * @throws UnusableInput when one cannot be read
     */
    public InputDigest addFolder(Path folder) {
        try {
            Path whole = folder.toRealPath();
            for (Path file : files(whole)) {
                String name = whole.relativize(file).toString().replace('\\', '/');
                if (Files.isSymbolicLink(file)) {
                    add(name).add("-> " + Files.readSymbolicLink(file));
                } else {
                    addFile(file, name);
                }
            }
            return this;
        } catch (IOException | UncheckedIOException e) {
            throw new UnusableInput(Place.of(folder.toString()), "cannot be read (" + e + "); make it readable");
        }
    }

    private static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> all =
                Files.find(folder, Integer.MAX_VALUE, (file, is) -> is.isSymbolicLink() || is.isRegularFile())) {
            return all.sorted().toList();
        }
    }

    /** Adds a file under a name. */
    public InputDigest addFile(Path file, String name) {
        add(name);
        try (InputStream in = Files.newInputStream(file)) {
            MessageDigest inner = sha256();
            for (int read = in.read(buffer); read >= 0; read = in.read(buffer)) {
                inner.update(buffer, 0, read);
            }
            sum.update(inner.digest());
            return this;
        } catch (IOException e) {
            throw new UnusableInput(Place.of(file.toString()), "cannot be read (" + e + "); make it readable");
        }
    }

    /** The digest in hexadecimal; this object starts anew. */
    public String text() {
        return HexFormat.of().formatHex(sum.digest());
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}

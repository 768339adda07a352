package org.fallrule.reader;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.fallrule.document.UnusableInput;

/** The shared layers around sites, those of each folder read once for all who ask. */
public final class SharedLayersByFolder {
    private record Read(Optional<SharedLayers> layers, Optional<UnusableInput> fault) {}

    private final Map<Path, Read> read = new ConcurrentHashMap<>();

    /**
     * The layers that a site shares with those beside it.
     *
     * @throws UnusableInput when there are such layers and they cannot be used
     */
    public Optional<SharedLayers> around(Path site) {
        Path parent = site.toAbsolutePath().normalize().getParent();
        if (parent == null) {
            return Optional.empty();
        }
        Read found = read.computeIfAbsent(parent, SharedLayersByFolder::read);
        found.fault().ifPresent(fault -> {
            throw fault;
        });
        return found.layers();
    }

    private static Read read(Path folder) {
        try {
            return new Read(SharedLayers.of(folder), Optional.empty());
        } catch (UnusableInput e) {
            return new Read(Optional.empty(), Optional.of(e));
        }
    }
}

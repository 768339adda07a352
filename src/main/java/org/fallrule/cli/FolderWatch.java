package org.fallrule.cli;

import java.io.IOException;
import java.nio.file.ClosedWatchServiceException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardWatchEventKinds;
import java.nio.file.WatchKey;
import java.nio.file.WatchService;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * Tells when files of some folders have changed and come to rest. The file system's word wakes it at once; because some file
 * systems say nothing, such as network drives, it also looks by itself from time to time. A folder may go and come back.
 */
final class FolderWatch implements AutoCloseable {
    /** How long files have to stay as they are to count as written: 70 ms. */
    private static final long REST = 70;
    /** From one look to the next where the file system says nothing: 250 ms. */
    private static final long LOOK = 250;

    private static final int DEPTH = 2;

    private final Supplier<List<Path>> wanted;
    private List<Path> folders;
    private final Optional<WatchService> service;
    private final Map<Path, WatchKey> told = new HashMap<>();
    private FolderState last;
    private long noticed = System.nanoTime();
    private volatile boolean closed;

    /** @param wanted the folders and files to watch, asked for anew after every change, which may name others */
    FolderWatch(Supplier<List<Path>> wanted) {
        this.wanted = wanted;
        this.folders = wanted.get();
        this.service = service();
        askToBeTold();
        this.last = FolderState.of(folders);
    }

    private static Optional<WatchService> service() {
        try {
            return Optional.of(FileSystems.getDefault().newWatchService());
        } catch (IOException | UnsupportedOperationException e) {
            return Optional.empty();
        }
    }

    /** Waits for a change since the last one told, or since the start; false when the watch has been closed. */
    boolean awaitChange() {
        while (!closed) {
            askToBeTold();
            FolderState now = FolderState.of(folders);
            if (!now.equals(last)) {
                noticed = System.nanoTime();
                FolderState rest = Settling.of(now, () -> FolderState.of(folders), () -> sleep(REST));
                boolean changed = !rest.equals(last);
                folders = wanted.get();
                last = FolderState.of(folders);
                if (changed) {
                    return !closed;
                }
            }
            awaitWord();
        }
        return false;
    }

    /** When the last change was noticed, by {@link System#nanoTime}. */
    long noticed() {
        return noticed;
    }

    private void awaitWord() {
        if (service.isEmpty()) {
            sleep(LOOK);
            return;
        }
        try {
            WatchKey key = service.get().poll(LOOK, TimeUnit.MILLISECONDS);
            while (key != null) {
                key.pollEvents();
                if (!key.reset()) {
                    told.values().remove(key);
                }
                key = service.get().poll();
            }
        } catch (ClosedWatchServiceException e) {
            closed = true;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            closed = true;
        }
    }

    /** Asks the file system for word of every folder that it does not give word of yet; where it cannot, looking has to do. */
    private void askToBeTold() {
        if (service.isEmpty() || closed) {
            return;
        }
        told.values().removeIf(key -> !key.isValid());
        folders.forEach(folder -> {
            try (Stream<Path> all = Files.walk(folder, DEPTH)) {
                for (Path each : all.filter(Files::isDirectory).toList()) {
                    if (!told.containsKey(each)) {
                        told.put(each, asked(each, service.get()));
                    }
                }
            } catch (IOException | java.io.UncheckedIOException | ClosedWatchServiceException e) {
                // not there now, or the file system gives no word: looking has to do
                return;
            }
        });
    }

    private static WatchKey asked(Path folder, WatchService service) throws IOException {
        return folder.register(
                service,
                StandardWatchEventKinds.ENTRY_CREATE,
                StandardWatchEventKinds.ENTRY_MODIFY,
                StandardWatchEventKinds.ENTRY_DELETE);
    }

    private void sleep(long millis) {
        try {
            Thread.sleep(millis);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            closed = true;
        }
    }

    /** Ends the watch, from whatever thread. */
    @Override
    public void close() {
        closed = true;
        service.ifPresent(each -> {
            try {
                each.close();
            } catch (IOException e) {
                // nothing is left to be told
                return;
            }
        });
    }
}

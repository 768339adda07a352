package org.fallrule.reader;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.fallrule.document.Fault;
import org.fallrule.document.Node;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.filter.Truth;
import org.fallrule.measure.Unit;
import org.fallrule.reader.layer.RawFeature;
import org.fallrule.reader.layer.RawLayer;
import org.fallrule.reader.raster.RasterReader;
import org.fallrule.site.Role;

/**
 * Everything in a folder that could be a layer, whatever it may stand for, read as {@code check} would read it. Every file is read
 * through once; of a large one not every feature is kept.
 *
 * @param tables the files and tables of features, in the order of their names
 * @param rasters the rasters
 * @param unreadable what has a layer's ending and cannot be read
 */
public record LooseLayers(List<Table> tables, List<Raster> rasters, List<Fault> unreadable) {
    /** Files of a folder that are looked at; a site has a few dozen. */
    private static final int MOST_FILES = 500;
    /** Features that are kept of each table, and how many once there are many. */
    private static final int WHOLE = 10_000;

    private static final int WHOLE_OF_MANY = 1_000;
    private static final int MANY = 200_000;

    public LooseLayers {
        tables = List.copyOf(tables);
        rasters = List.copyOf(rasters);
        unreadable = List.copyOf(unreadable);
    }

    /**
     * A file, or one of the tables in it.
     *
     * @param file its path from the folder
     * @param table the table, where the file holds several
     * @param only the name of the only table of a file that may hold several
     * @param raw what it holds: every feature, or of many those that show what there is
     * @param count how many features it holds
     * @param hasSystem whether the file tells its coordinate reference system
     * @param placed what a profile takes it for
     */
    public record Table(
            String file,
            Optional<String> table,
            Optional<String> only,
            RawLayer raw,
            long count,
            boolean hasSystem,
            List<LayerProfile.Entry> placed) {

        /** Whether not every feature was kept. */
        public boolean isSampled() {
            return count > raw.features().size();
        }

        /** The file, and the table where the file holds several. */
        public String source() {
            return table.map(name -> file + "/" + name).orElse(file);
        }

        /** The roles that the profile takes it, or a part of it, for. */
        public List<Role> placedAs() {
            return placed.stream().map(LayerProfile.Entry::role).distinct().toList();
        }

        /** The features that the profile takes for a role. */
        public List<RawFeature> placedAs(Role role) {
            return raw.features().stream()
                    .filter(feature -> placed.stream()
                            .anyMatch(entry ->
                                    entry.role() == role && entry.spec().holds(feature) != Truth.FALSE))
                    .toList();
        }

        /** The features that the profile takes for no role. */
        public List<RawFeature> unplaced() {
            return raw.features().stream()
                    .filter(feature ->
                            placed.stream().allMatch(entry -> entry.spec().holds(feature) == Truth.FALSE))
                    .toList();
        }
    }

    /**
     * An elevation raster.
     *
     * @param file its path from the folder
     * @param hasSystem whether it tells its coordinate reference system
     * @param unit the unit of its heights, where it tells
     */
    public record Raster(String file, boolean hasSystem, Optional<Unit> unit) {}

    /**
     * Looks at a folder and the folders in it. What cannot be read is told and passed over.
     *
     * @param profile what is known of such files, as a {@link KnownLayers}
     * @throws UnusableInput when the folder itself cannot be listed
     */
    public static LooseLayers in(Path folder, KnownLayers profile) {
        SiteFolder.open(folder);
        List<Table> tables = new ArrayList<>();
        List<Raster> rasters = new ArrayList<>();
        List<Fault> unreadable = new ArrayList<>();
        List<String> files = files(folder);
        for (String file : files.subList(0, Math.min(files.size(), MOST_FILES))) {
            try {
                if (LayerFiles.isRaster(file)) {
                    rasters.add(raster(folder, file));
                } else if (LayerFormat.of(file).isPresent()) {
                    tables(folder, file, profile, tables, unreadable);
                } else {
                    OtherFiles.told(folder, file).ifPresent(unreadable::add);
                }
            } catch (UnusableInput e) {
                e.faults().stream().limit(1).forEach(unreadable::add);
            }
        }
        if (files.size() > MOST_FILES) {
            unreadable.add(new Fault(
                    Place.of(String.valueOf(folder.getFileName())),
                    "holds " + files.size() + " files, and only " + MOST_FILES + " are looked at; not looked at: "
                            + files.get(MOST_FILES)
                            + (files.size() - MOST_FILES > 1 ? " and " + (files.size() - MOST_FILES - 1) + " more" : "")
                            + ". Leave in the folder what belongs to the lot"));
        }
        return new LooseLayers(tables, rasters, unreadable);
    }

    private static List<String> files(Path folder) {
        try (Stream<Path> all = Files.walk(folder, 2)) {
            return all.filter(Files::isRegularFile)
                    .map(path -> folder.relativize(path).toString().replace('\\', '/'))
                    .filter(name -> !name.startsWith(".") && !name.contains("/."))
                    .sorted(Comparator.comparing((String name) -> !isLayer(name))
                            .thenComparing(name -> name))
                    .toList();
        } catch (IOException | java.io.UncheckedIOException e) {
            throw new UnusableInput(
                    Place.of(folder.toString()), "cannot be listed (" + e.getMessage() + "); make the folder readable");
        }
    }

    /** Whether it may be one by its ending; those come first. */
    private static boolean isLayer(String name) {
        return LayerFiles.isRaster(name) || LayerFormat.of(name).isPresent();
    }

    private static Raster raster(Path folder, String file) {
        Path path = new LayerFiles(folder).checked(LayerSpec.plain(Role.GROUND, file, Place.of(file)));
        RasterReader.Description said = RasterReader.describe(path, file);
        return new Raster(file, said.hasSystem(), said.heightUnit());
    }

    private static void tables(
            Path folder, String file, KnownLayers profile, List<Table> tables, List<Fault> unreadable) {
        LayerFiles files = new LayerFiles(folder);
        LayerSpec whole = LayerSpec.plain(Role.GROUND, file, Place.of(file));
        List<String> names = LayerFormat.of(file).orElseThrow().tables(files.path(whole), file);
        if (names.size() < 2) {
            tables.add(table(files, whole, names.stream().findFirst(), profile, tables));
            return;
        }
        for (String name : names) {
            try {
                LayerSpec spec = whole.of(new Node.Scalar(Place.of(file), name, false));
                tables.add(table(files, spec, Optional.empty(), profile, tables));
            } catch (UnusableInput e) {
                e.faults().stream().limit(1).forEach(unreadable::add);
            }
        }
    }

    private static Table table(
            LayerFiles files, LayerSpec spec, Optional<String> only, KnownLayers profile, List<Table> before) {
        long kept = before.stream()
                .mapToLong(table -> table.raw().features().size())
                .sum();
        LayerSample sample = new LayerSample(kept < MANY ? WHOLE : WHOLE_OF_MANY);
        RawLayer raw = files.stream(spec, sample::take);
        Optional<String> table = spec.table().map(Node.Scalar::text);
        return new Table(
                spec.file(),
                table,
                only,
                raw.with(sample.kept()),
                sample.count(),
                LayerSystem.isTold(spec.file(), raw.crs(), sample.extent()),
                profile.of(spec.file(), table));
    }
}

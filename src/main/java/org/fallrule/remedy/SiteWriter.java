package org.fallrule.remedy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.fallrule.document.JsonWriter;
import org.fallrule.document.Node;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.document.Yaml;
import org.fallrule.document.YamlWriter;
import org.fallrule.site.Layer;
import org.fallrule.site.Role;
import org.fallrule.site.Site;

/**
 * Writes a changed plan as a site folder that reads again as the same plan: a GeoJSON file for every layer of features, rasters
 * copied as they are, and a site.yaml that keeps what that of the submitted plan says beside its layers.
 */
public final class SiteWriter {
    private static final String SITE_FILE = "site.yaml";

    private final Site site;
    private final Path submitted;
    private final Path to;

    private SiteWriter(Site site, Path submitted, Path to) {
        this.site = site;
        this.submitted = submitted;
        this.to = to;
    }

    /**
     * Writes a plan.
     *
     * @param site the changed plan
     * @param submitted the site folder that the plan was read from before it was changed
     * @param to the folder to write into; made where it is not there, and files in it of the same names are replaced
     * @throws UnusableInput if it cannot be written to
     */
    public static void write(Site site, Path submitted, Path to) {
        try {
            Files.createDirectories(to);
            new SiteWriter(site, submitted, to).write();
        } catch (IOException | UncheckedIOException e) {
            throw new UnusableInput(Place.of(to.toString()), "the changed plan could not be written: " + e);
        }
    }

    private void write() throws IOException {
        Node.Mapping said = Files.isRegularFile(submitted.resolve(SITE_FILE))
                ? Yaml.read(submitted.resolve(SITE_FILE), SITE_FILE)
                : Node.Mapping.empty(Place.of(SITE_FILE));
        Map<String, Object> tree = new LinkedHashMap<>();
        said.entries().forEach((key, node) -> tree.put(key, YamlWriter.tree(node)));
        tree.remove("crs");
        absent(said).ifPresentOrElse(left -> tree.put("absent", left), () -> tree.remove("absent"));
        tree.put("units", Map.of("elevation", site.metric() ? "m" : "ft"));
        if (site.waivers().isEmpty()) {
            tree.remove("waivers");
        }
        tree.put("layers", layers(said));
        Files.writeString(to.resolve(SITE_FILE), YamlWriter.write(tree));
    }

    /** The roles stated absent, without those that the changed plan has a layer of. */
    private Optional<List<String>> absent(Node.Mapping said) {
        return said.get("absent")
                .filter(Node.Sequence.class::isInstance)
                .map(node -> ((Node.Sequence) node)
                        .items().stream()
                                .map(item -> String.valueOf(YamlWriter.tree(item)))
                                .filter(word -> Role.named(word)
                                        .map(role -> site.layer(role) instanceof Layer.StatedAbsent)
                                        .orElse(false))
                                .toList())
                .filter(left -> !left.isEmpty());
    }

    private Map<String, Object> layers(Node.Mapping said) throws IOException {
        Map<String, Object> layers = new LinkedHashMap<>();
        for (Map.Entry<Role, Layer> each : site.layers().entrySet()) {
            Role role = each.getKey();
            if (each.getValue() instanceof Layer.Supplied) {
                layers.put(role.word(), features(role));
            } else if (each.getValue() instanceof Layer.Raster raster) {
                Map<String, Object> spec = raster(said, role, raster);
                layers.put(
                        role.word(),
                        raster.features().isEmpty() ? spec : List.of(spec, Map.of("file", features(role))));
            }
        }
        return layers;
    }

    private String features(Role role) throws IOException {
        String file = role.word() + ".geojson";
        Files.writeString(to.resolve(file), JsonWriter.write(new LayerTree(site).of(role)));
        return file;
    }

    /** What site.yaml says of a raster, and of the system and unit of the whole plan where the raster leans on that. */
    private Map<String, Object> raster(Node.Mapping said, Role role, Layer.Raster raster) throws IOException {
        Map<String, Object> spec = new LinkedHashMap<>();
        inner(said, "crs").ifPresent(crs -> spec.put("crs", YamlWriter.tree(crs)));
        inner(said, "units", "elevation").ifPresent(unit -> spec.put("unit", YamlWriter.tree(unit)));
        spec.put("file", raster.file());
        inner(said, "layers", role.word()).ifPresent(node -> {
            if (node instanceof Node.Mapping mapping) {
                mapping.entries().forEach((key, value) -> spec.put(key, YamlWriter.tree(value)));
            } else {
                spec.put("file", YamlWriter.tree(node));
            }
        });
        copy(String.valueOf(spec.get("file")));
        return spec;
    }

    private static Optional<Node> inner(Node.Mapping said, String... keys) {
        Optional<Node> here = Optional.of(said);
        for (String key : keys) {
            here = here.filter(Node.Mapping.class::isInstance).flatMap(node -> ((Node.Mapping) node).get(key));
        }
        return here;
    }

    /** A raster and the files beside it that say where it lies; none that is a link out of the site's folder. */
    private void copy(String file) throws IOException {
        Path source = submitted.resolve(file).normalize();
        Path folder = source.toAbsolutePath().getParent();
        String name = String.valueOf(source.getFileName());
        String stem = name.replaceFirst("\\.[^.]*$", "");
        Path target = to.resolve(file).normalize();
        if (!target.toAbsolutePath().normalize().startsWith(to.toAbsolutePath().normalize()) || folder == null) {
            throw new UnusableInput(Place.of(file), "lies outside of the site's folder; put it inside");
        }
        Path into = target.toAbsolutePath().getParent();
        Files.createDirectories(into == null ? to : into);
        try (Stream<Path> files = Files.list(folder)) {
            List<Path> beside = files.filter(Files::isRegularFile)
                    .filter(path -> String.valueOf(path.getFileName()).startsWith(stem + "."))
                    .toList();
            Path inside = submitted.toRealPath();
            for (Path each : beside) {
                if (each.toRealPath().startsWith(inside)) {
                    Files.copy(each, target.resolveSibling(each.getFileName()), StandardCopyOption.REPLACE_EXISTING);
                }
            }
        }
    }
}

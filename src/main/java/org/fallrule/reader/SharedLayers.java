package org.fallrule.reader;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fallrule.document.Fault;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.reader.frame.LocalFrame;
import org.fallrule.site.Feature;
import org.fallrule.site.Layer;
import org.fallrule.site.Role;
import org.locationtech.jts.geom.Envelope;

/**
 * The layers that the sites in one folder share, named in its {@code sites.yaml}. Each is read and indexed once; a site takes what
 * comes near its own features.
 *
 * <p>A layer that a site supplies itself counts alone, but for utilities: those of the shared layer are added, since a line that
 * somebody else has on file is in the ground whether or not this plan shows it. What a site takes, and what it does not, is told.
 */
public final class SharedLayers {
    /** Metres in a degree of latitude, about; the box around a site is a little larger for it, never smaller. */
    private static final double DEGREE = 110_500;

    private final SharedFile file;
    private final List<SharedLayer> layers;

    private SharedLayers(SharedFile file, List<SharedLayer> layers) {
        this.file = file;
        this.layers = layers;
    }

    /**
     * The shared layers of the sites in a folder.
     *
     * @return nothing when the folder has no sites.yaml
     * @throws UnusableInput with every fault of it and of the layers
     */
    public static Optional<SharedLayers> of(Path folder) {
        List<Fault> faults = new ArrayList<>();
        Optional<SharedFile> file = SharedFile.in(folder, faults);
        List<SharedLayer> layers = new ArrayList<>();
        file.filter(any -> faults.isEmpty()).ifPresent(said -> {
            for (LayerSpec spec : said.says().layers()) {
                try {
                    if (GroundRasters.isOne(spec)) {
                        Path unused = new LayerFiles(folder).path(spec);
                    } else {
                        layers.add(SharedLayer.of(said, spec));
                    }
                } catch (UnusableInput e) {
                    faults.addAll(e.faults());
                }
            }
        });
        if (!faults.isEmpty()) {
            throw new UnusableInput(faults);
        }
        return file.map(said -> new SharedLayers(said, layers));
    }

    /** The files that the shared layers of a folder come from; none without a sites.yaml or when it cannot be read. */
    public static List<Path> files(Path folder) {
        try {
            return SharedFile.in(folder, new ArrayList<>())
                    .map(SharedFile::files)
                    .orElse(List.of());
        } catch (UnusableInput e) {
            return List.of(folder.resolve(SharedFile.NAME));
        }
    }

    /** The same, and the sites.yaml where there is none yet. */
    public static List<Path> filesToCome(Path folder) {
        List<Path> files = files(folder);
        return files.isEmpty() ? List.of(folder.resolve(SharedFile.NAME)) : files;
    }

    /** What a site says, with what sites.yaml says of every site that does not. */
    SiteFile completed(SiteFile site) {
        Map<Role, Place> absent = new EnumMap<>(Role.class);
        absent.putAll(file.says().absent());
        site.layers().forEach(layer -> absent.remove(layer.role()));
        absent.putAll(site.absent());
        return site.with(file.says().county(), file.says().house(), absent);
    }

    /**
     * What a site takes from the layers that are not rasters.
     *
     * @param own the site's own layers
     */
    List<OpenLayer> near(List<OpenLayer> own, List<Fault> faults, List<Fault> problems) {
        Envelope plan = new Envelope();
        own.forEach(layer -> plan.expandToInclude(layer.extent(faults)));
        if (plan.isNull()) {
            return List.of();
        }
        Envelope around = around(plan);
        List<OpenLayer> taken = new ArrayList<>();
        for (SharedLayer layer : layers) {
            boolean supplied = own.stream().anyMatch(each -> each.is(layer.role()));
            if (supplied && layer.role() != Role.UTILITY) {
                tell(
                        layer,
                        "is not used, since the plan has a " + layer.role().spoken() + " layer of its own",
                        problems);
            } else if (!layer.reaches(around)) {
                tell(layer, "does not reach to this plan and says nothing of it", problems);
            } else {
                take(layer, around, taken, problems);
            }
        }
        return taken;
    }

    private static void take(SharedLayer layer, Envelope around, List<OpenLayer> taken, List<Fault> problems) {
        OpenLayer near = layer.within(around);
        problems.addAll(near.raw().notes());
        if (layer.role() == Role.LOT && near.raw().features().isEmpty()) {
            tell(layer, "has no lot near this plan", problems);
        } else {
            taken.add(near);
        }
    }

    private static void tell(SharedLayer layer, String says, List<Fault> problems) {
        problems.add(new Fault(Place.of(layer.source()), says));
    }

    private Envelope around(Envelope plan) {
        double farthest = Math.max(Math.abs(plan.getMinY()), Math.abs(plan.getMaxY()));
        double metres = file.near().metres();
        Envelope around = new Envelope(plan);
        around.expandBy(metres / (DEGREE * Math.max(0.01, Math.cos(Math.toRadians(farthest)))), metres / DEGREE);
        return around;
    }

    /** The rasters of the roles that a site has nothing of; where one does not reach to the plan, that is told. */
    Map<Role, Layer> rasters(
            Map<Role, List<Feature>> features,
            Map<Role, Layer> own,
            LocalFrame frame,
            PlanDatum datum,
            List<Fault> problems) {
        List<LayerSpec> wanted = file.says().layers().stream()
                .filter(GroundRasters::isOne)
                .filter(spec -> !features.containsKey(spec.role()) && !own.containsKey(spec.role()))
                .toList();
        return new GroundRasters(file.folder(), file.says().with(wanted), frame, datum, problems, problems)
                .shownAs(SharedFile.UP)
                .around(features.values());
    }
}

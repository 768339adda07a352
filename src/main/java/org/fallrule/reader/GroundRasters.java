package org.fallrule.reader;

import java.nio.file.Path;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fallrule.document.Fault;
import org.fallrule.document.Node;
import org.fallrule.document.UnusableInput;
import org.fallrule.measure.Unit;
import org.fallrule.reader.frame.LocalFrame;
import org.fallrule.reader.raster.RasterReader;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Layer;
import org.fallrule.site.Role;
import org.locationtech.jts.geom.Envelope;

/** Reads the rasters of a plan's ground, as far as they lie around the plan. */
final class GroundRasters {
    /** How far around the plan's features the ground is read, in metres: water may come from and go so far. */
    private static final double MARGIN = 60;

    private final Path folder;
    private final SiteFile site;
    private final LocalFrame frame;
    private final PlanDatum datum;
    private final List<Fault> faults;
    private final List<Fault> problems;
    private final String before;

    GroundRasters(
            Path folder, SiteFile site, LocalFrame frame, PlanDatum datum, List<Fault> faults, List<Fault> problems) {
        this(folder, site, frame, datum, faults, problems, "");
    }

    private GroundRasters(
            Path folder,
            SiteFile site,
            LocalFrame frame,
            PlanDatum datum,
            List<Fault> faults,
            List<Fault> problems,
            String before) {
        this.before = before;
        this.folder = folder;
        this.site = site;
        this.frame = frame;
        this.datum = datum;
        this.faults = faults;
        this.problems = problems;
    }

    /** The same, its files shown with something before their names. */
    GroundRasters shownAs(String newBefore) {
        return new GroundRasters(folder, site, frame, datum, faults, problems, newBefore);
    }

    /** Whether a layer is a raster of the ground; a raster in another role is refused with the other files. */
    static boolean isOne(LayerSpec spec) {
        boolean isGround = spec.role() == Role.GROUND || spec.role() == Role.PROPOSED_GROUND;
        return isGround && LayerFiles.isRaster(spec.file());
    }

    /** The rasters by role, read around the features of the other layers. */
    Map<Role, Layer> around(Collection<List<Feature>> features) {
        Envelope plan = new Envelope();
        features.forEach(layer ->
                layer.forEach(feature -> plan.expandToInclude(feature.geometry().getEnvelopeInternal())));
        plan.expandBy(MARGIN);
        Map<Role, Layer> rasters = new EnumMap<>(Role.class);
        for (LayerSpec spec : site.layers()) {
            if (isOne(spec)) {
                read(spec, plan).ifPresent(raster -> rasters.put(spec.role(), raster));
            }
        }
        return rasters;
    }

    private Optional<Layer> read(LayerSpec spec, Envelope plan) {
        Optional<Unit> unit = Optional.ofNullable(spec.units().get(Attribute.ELEVATION.name()))
                .or(() -> Optional.ofNullable(site.units().get(Attribute.ELEVATION.name())));
        Optional<String> crs = spec.crs().or(site::crs).map(Node.Scalar::text);
        try {
            RasterReader.Reading reading = RasterReader.read(
                    new LayerFiles(folder).checked(spec), before + spec.file(), crs, unit, frame, plan);
            problems.addAll(reading.notes());
            return datum.isForeign(spec, reading.datum())
                    ? Optional.empty()
                    : Optional.of(new Layer.Raster(reading.heights(), before + spec.file()));
        } catch (UnusableInput e) {
            faults.addAll(e.faults());
            return Optional.empty();
        }
    }
}

package org.fallrule.reader.trap;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.fallrule.document.Fault;
import org.fallrule.reader.frame.CoordinateSystem;
import org.fallrule.reader.frame.LocalFrame;
import org.fallrule.site.Feature;
import org.fallrule.site.HeightField;
import org.fallrule.site.Layer;
import org.fallrule.site.Role;

/**
 * The layers of a plan as they were read, in one frame.
 *
 * @param frame the frame that the features are in
 * @param layers the layers of features
 * @param rasters the rasters of the ground
 */
public record PlanAsRead(LocalFrame frame, List<LayerAsRead> layers, Map<Role, Layer> rasters) {
    private static final List<Trap> TRAPS =
            List.of(new TwoKindsOfFeet(), new BuildingsOffLots(), new HeightsApart(), new RimsApart());

    public PlanAsRead {
        layers = List.copyOf(layers);
        rasters = Map.copyOf(rasters);
    }

    /**
     * A layer.
     *
     * @param role what it stands for
     * @param source its file, and its table where one is named
     * @param system the system that its coordinates were in
     * @param features its features in the local frame
     */
    public record LayerAsRead(Role role, String source, CoordinateSystem system, List<Feature> features) {
        public LayerAsRead {
            features = List.copyOf(features);
        }
    }

    /** What looks wrong about the plan. */
    public List<Fault> problems() {
        return TRAPS.stream().flatMap(trap -> trap.problems(this).stream()).toList();
    }

    List<LayerAsRead> of(Role role) {
        return layers.stream()
                .filter(layer -> layer.role() == role && !layer.features().isEmpty())
                .toList();
    }

    Stream<Feature> features(Role role) {
        return of(role).stream().flatMap(layer -> layer.features().stream());
    }

    /** The raster of a role, where it is one. */
    Optional<HeightField> raster(Role role) {
        return rasters.get(role) instanceof Layer.Raster raster ? Optional.of(raster.heights()) : Optional.empty();
    }
}

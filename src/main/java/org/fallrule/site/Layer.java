package org.fallrule.site;

import java.util.List;
import org.fallrule.document.Place;

/** What the plan has to say about a role: features, a statement that there are none, or nothing. Silence is not absence. */
public sealed interface Layer {

    /** The features of the layer; none where it is absent or not supplied. */
    default List<Feature> features() {
        return List.of();
    }

    /** Parts of the drain that lie in the ground without being part of it any more. */
    default List<Feature> abandoned() {
        return List.of();
    }

    /** A layer that was given, perhaps without a feature in it. */
    record Supplied(List<Feature> features, List<Feature> abandoned, List<String> files) implements Layer {
        public Supplied {
            features = List.copyOf(features);
            abandoned = List.copyOf(abandoned);
            files = List.copyOf(files);
        }

        /** @param all the features of the layer, abandoned parts of the drain among them */
        public Supplied(List<Feature> all, List<String> files) {
            this(
                    all.stream().filter(feature -> !feature.isAbandoned()).toList(),
                    all.stream().filter(Feature::isAbandoned).toList(),
                    files);
        }
    }

    /** The plan states that the lot has none. */
    record StatedAbsent(Place by) implements Layer {}

    /**
     * Heights on a grid, and over them what else the plan gives in the same role.
     *
     * @param features points, lines and triangles with Z; often none
     */
    record Raster(HeightField heights, String file, List<Feature> features) implements Layer {
        public Raster {
            features = List.copyOf(features);
        }

        public Raster(HeightField heights, String file) {
            this(heights, file, List.of());
        }
    }

    /** The plan is silent. */
    record NotSupplied() implements Layer {}
}

package org.fallrule.reader.shapefile;

import java.util.Optional;

/** The files of one shapefile, wherever they are. */
interface Companions {
    /** The {@code .shp}. */
    ShownFile main();

    /** The companion of that extension, without dot. */
    Optional<ShownFile> find(String extension);
}

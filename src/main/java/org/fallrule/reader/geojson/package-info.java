/** GeoJSON layers (RFC 7946, August 2016; the crs member of the 2008 specification; text sequences of RFC 8142). */
@NullMarked
package org.fallrule.reader.geojson;

import org.jspecify.annotations.NullMarked;

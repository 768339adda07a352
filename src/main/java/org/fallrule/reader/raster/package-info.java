/**
 * Elevation rasters: GeoTIFF and ESRI ASCII grid, read only around the plan and brought into its frame. Start at {@link
 * org.fallrule.reader.raster.RasterReader}.
 */
@NullMarked
package org.fallrule.reader.raster;

import org.jspecify.annotations.NullMarked;

/**
 * Reads a shapefile as the ESRI Shapefile Technical Description (July 1998) and the dBASE III table lay it out: geometry, attributes
 * and what the files say of themselves, with every disagreement told.
 */
@NullMarked
package org.fallrule.reader.shapefile;

import org.jspecify.annotations.NullMarked;

/**
 * Reads the feature tables of a GeoPackage (OGC 12-128, GeoPackage Encoding Standard, edition 1.3) through SQLite, which nothing else
 * here knows of.
 */
@NullMarked
package org.fallrule.reader.geopackage;

import org.jspecify.annotations.NullMarked;

package org.fallrule.reader.geopackage;

/**
 * A table of features as the GeoPackage lists it (OGC 12-128, clauses 1.1.3 and 2.1.5).
 *
 * @param name the table or view
 * @param geometry its geometry column
 * @param srsId the key of its reference system in {@code gpkg_spatial_ref_sys}
 */
record FeatureTable(String name, String geometry, long srsId) {

    /** A name as SQL wants it between double quotes. */
    static String quoted(String name) {
        return '"' + name.replace("\"", "\"\"") + '"';
    }
}

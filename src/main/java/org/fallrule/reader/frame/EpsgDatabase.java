package org.fallrule.reader.frame;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.geotools.api.metadata.extent.GeographicBoundingBox;
import org.geotools.api.referencing.FactoryException;
import org.geotools.api.referencing.NoSuchAuthorityCodeException;
import org.geotools.api.referencing.crs.CoordinateReferenceSystem;
import org.geotools.api.referencing.crs.VerticalCRS;
import org.geotools.referencing.CRS;

/**
 * Codes that {@link CodeTable} does not have, from the library's database. Opening it takes a second or two and unpacks 33 MB
 * into the folder for temporary files.
 */
final class EpsgDatabase {
    private static final Logger DATABASE = Logger.getLogger("hsqldb.db");

    private EpsgDatabase() {}

    static CoordinateSystem find(int code, Place where) {
        return system(decode(code, where), where);
    }

    private static CoordinateReferenceSystem decode(int code, Place where) {
        WktParsing.quiet();
        DATABASE.setLevel(Level.OFF);
        try {
            return CRS.decode("EPSG:" + code, true);
        } catch (NoSuchAuthorityCodeException e) {
            throw new UnusableInput(
                    where,
                    "there is no EPSG:" + code
                            + " among the known codes; wanted the code of the layer's coordinate reference"
                            + " system, such as EPSG:2264");
        } catch (FactoryException | RuntimeException e) {
            // Unchecked ones come when the database cannot be unpacked, as into a full or locked folder for temporary
            // files.
            throw new UnusableInput(
                    where,
                    "EPSG:" + code + " cannot be looked up (" + WktText.shortened(String.valueOf(e.getMessage()))
                            + "); give the layer a .prj file (WKT1) instead, or another code, such as EPSG:2264");
        }
    }

    /** Of a compound code, such as a state-plane zone with NAVD88 heights, the horizontal part and the unit of the heights. */
    private static CoordinateSystem system(CoordinateReferenceSystem found, Place where) {
        CoordinateReferenceSystem horizontal = CRS.getHorizontalCRS(found);
        CoordinateReferenceSystem vertical = CRS.getVerticalCRS(found);
        Definition definition = new Definition(horizontal == null ? found : horizontal, where);
        OptionalDouble heightUnit =
                vertical == null ? OptionalDouble.empty() : OptionalDouble.of(definition.metresInUnitOf(vertical));
        Optional<String> heightDatum = vertical instanceof VerticalCRS known
                ? Optional.of(known.getDatum().getName().getCode())
                : Optional.empty();
        return definition.system(heightUnit, area(found)).withHeightsOn(heightDatum);
    }

    private static Optional<AreaOfUse> area(CoordinateReferenceSystem found) {
        GeographicBoundingBox box = CRS.getGeographicBoundingBox(found);
        return box == null
                ? Optional.empty()
                : Optional.of(new AreaOfUse(
                        box.getWestBoundLongitude(),
                        box.getSouthBoundLatitude(),
                        box.getEastBoundLongitude(),
                        box.getNorthBoundLatitude()));
    }
}

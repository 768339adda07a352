package org.fallrule.bookshelf;

import org.fallrule.document.Place;
import org.fallrule.measure.Length;
import org.locationtech.jts.geom.Geometry;

/**
 * A county on the map.
 *
 * @param county its name, that of its book
 * @param area its polygons, longitude and latitude in degrees
 * @param accuracy how far its line may be off; a lot that comes as near counts as lying on the line
 * @param place where the file has it
 */
record CountyArea(String county, Geometry area, Length accuracy, Place place) {}

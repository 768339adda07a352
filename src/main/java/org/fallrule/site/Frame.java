package org.fallrule.site;

import org.locationtech.jts.geom.Coordinate;

/** Where the plan's local metric frame lies on the earth: x to grid east, y to grid north, metres, true to ground at lot size. */
public interface Frame {

    /** Longitude and latitude in degrees (WGS 84 family) of a place in the local frame; Z is passed on. */
    Coordinate toLonLat(Coordinate local);
}

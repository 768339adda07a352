package org.fallrule.reader.frame;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.locationtech.jts.geom.Coordinate;

/**
 * The coordinate reference system of a layer. Its coordinates are easting, northing or longitude, latitude in this order,
 * whatever order its definition gives: files hold them so.
 *
 * <p>Datums: NAD83 in its realizations (1986, HARN, CORS96, NSRS2007, 2011) and WGS 84 are taken as one, no shift is applied
 * between them. Layers that mix NAD83 and WGS 84 are then off against each other by what those differ, about 1-2 m in the
 * conterminous United States; layers on one datum are not touched by this. Every other datum is refused.
 */
public final class CoordinateSystem {
    /** Systems by the text that defines them: the layers of a stack of plans name few different ones, again and again. */
    private static final Map<String, CoordinateSystem> KNOWN = new ConcurrentHashMap<>();

    private static final int MOST_KNOWN = 100;

    private final String name;
    private final OptionalDouble linearUnit;
    private final OptionalDouble heightUnit;
    private final AreaOfUse area;
    private final Unprojection unprojection;
    private final Optional<String> heightDatum;

    CoordinateSystem(
            String name,
            OptionalDouble linearUnit,
            OptionalDouble heightUnit,
            AreaOfUse area,
            Unprojection unprojection) {
        this(name, linearUnit, heightUnit, area, unprojection, Optional.empty());
    }

    private CoordinateSystem(
            String name,
            OptionalDouble linearUnit,
            OptionalDouble heightUnit,
            AreaOfUse area,
            Unprojection unprojection,
            Optional<String> heightDatum) {
        this.name = name;
        this.linearUnit = linearUnit;
        this.heightUnit = heightUnit;
        this.area = area;
        this.unprojection = unprojection;
        this.heightDatum = heightDatum;
    }

    /**
     * The system that a text defines.
     *
     * @param crsText well-known text of the first edition (OGC 01-009), as in a {@code .prj} file; of the second, where it
     *     closes with its code; or a code: {@code EPSG:2264}, {@code OGC:CRS84}
     * @param where where the text stands, for the fault
     * @throws UnusableInput when the text is not understood, or is a system that cannot be placed on earth, or on another datum
     */
    public static CoordinateSystem of(String crsText, Place where) {
        CoordinateSystem known = KNOWN.get(crsText);
        if (known != null) {
            return known;
        }
        CoordinateSystem read = DefinitionText.read(crsText, where);
        if (KNOWN.size() < MOST_KNOWN) {
            KNOWN.put(crsText, read);
        }
        return read;
    }

    /** Its name, such as {@code NAD83 / North Carolina (ftUS)}. */
    public String name() {
        return name;
    }

    /** Whether its coordinates are longitude and latitude in degrees. */
    public boolean isGeographic() {
        return linearUnit.isEmpty();
    }

    /** Metres in one unit of its easting and northing; empty when it is geographic. */
    public OptionalDouble linearUnitToMetre() {
        return linearUnit;
    }

    /** Metres in one unit of height, where the definition has a vertical part; empty when it says nothing of heights. */
    public OptionalDouble heightUnitToMetre() {
        return heightUnit;
    }

    /** The name of the vertical datum, where the definition has a vertical part. */
    public Optional<String> heightDatum() {
        return heightDatum;
    }

    CoordinateSystem withHeightsOn(Optional<String> datum) {
        return new CoordinateSystem(name, linearUnit, heightUnit, area, unprojection, datum);
    }

    /**
     * Longitude and latitude in degrees on the system's own datum. Z is kept as it is.
     *
     * @param where the file and feature, for the fault
     * @throws UnusableInput when the position is no place on earth, or lies more than one degree outside the area that the
     *     system is meant for
     */
    public Coordinate toLonLat(Coordinate position, Place where) {
        if (!Double.isFinite(position.x) || !Double.isFinite(position.y)) {
            throw new UnusableInput(where, "the position " + Shown.xy(position) + " has no finite x and y");
        }
        if (isGeographic()) {
            GeographicRange.refuseOutside(position, where);
        }
        Coordinate lonLat =
                unprojection.lonLat(position.x, position.y).orElseThrow(() -> outside(position, "no place", where));
        if (!area.contains(lonLat.x, lonLat.y)) {
            throw outside(position, Shown.lonLat(lonLat), where);
        }
        return new Coordinate(lonLat.x, lonLat.y, position.getZ());
    }

    /**
     * The way back: the system's coordinates of a longitude and latitude in degrees on its own datum; Z is kept as it is. Empty
     * when the projection has no answer there. Far outside the area that the system is meant for the answer means little.
     */
    public Optional<Coordinate> fromLonLat(Coordinate lonLat) {
        return unprojection.grid(lonLat.x, lonLat.y).map(found -> new Coordinate(found.x, found.y, lonLat.getZ()));
    }

    private UnusableInput outside(Coordinate position, String at, Place where) {
        return new UnusableInput(
                where,
                "the position " + Shown.xy(position) + " would be " + at + " in " + name + ", which is meant for "
                        + area + "; check the layer's crs, and whether its unit is feet or metres");
    }

    @Override
    public String toString() {
        return name;
    }
}

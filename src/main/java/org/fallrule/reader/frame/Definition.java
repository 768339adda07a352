package org.fallrule.reader.frame;

import java.util.Optional;
import java.util.OptionalDouble;
import javax.measure.IncommensurableException;
import javax.measure.UnconvertibleException;
import javax.measure.Unit;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.geotools.api.referencing.crs.CoordinateReferenceSystem;
import org.geotools.api.referencing.crs.GeographicCRS;
import org.geotools.api.referencing.crs.ProjectedCRS;
import org.geotools.api.referencing.cs.AxisDirection;
import org.geotools.api.referencing.cs.CoordinateSystemAxis;
import org.geotools.api.referencing.operation.NoninvertibleTransformException;
import si.uom.NonSI;
import si.uom.SI;

/** A parsed definition, checked and turned into a {@link CoordinateSystem}. */
final class Definition {
    private final CoordinateReferenceSystem parsed;
    private final Place where;

    Definition(CoordinateReferenceSystem parsed, Place where) {
        this.parsed = parsed;
        this.where = where;
    }

    /**
     * The system.
     *
     * @param area the area it is meant for; when empty it is guessed from the projection's origin
     */
    CoordinateSystem system(OptionalDouble heightUnit, Optional<AreaOfUse> area) {
        String name = parsed.getName().getCode();
        if (parsed instanceof GeographicCRS geographic) {
            checkBase(geographic);
            return new CoordinateSystem(name, OptionalDouble.empty(), heightUnit, AreaOfUse.WORLD, Unprojection.NONE);
        }
        if (parsed instanceof ProjectedCRS projected) {
            checkBase(projected.getBaseCRS());
            OptionalDouble unit = OptionalDouble.of(metresInUnitOf(projected));
            return new CoordinateSystem(
                    name,
                    unit,
                    heightUnit,
                    area.orElseGet(() -> ProjectionOrigin.area(projected)),
                    unprojection(projected));
        }
        throw new UnusableInput(
                where, "\"" + name + "\" is neither a projected nor a geographic system; wanted one of these");
    }

    private void checkBase(GeographicCRS base) {
        Datums.refuseOther(base.getDatum(), where);
        double degrees = factor(firstAxis(base).getUnit(), NonSI.DEGREE_ANGLE, "degrees");
        if (Math.abs(degrees - 1) > 1e-10) {
            throw new UnusableInput(
                    where,
                    "the geographic system's unit is not the degree but " + Shown.number(degrees)
                            + " degrees; wanted a layer in degrees");
        }
        northFirst(base);
    }

    private Unprojection unprojection(ProjectedCRS projected) {
        try {
            return new GridUnprojection(
                    projected.getConversionFromBase().getMathTransform(),
                    northFirst(projected),
                    northFirst(projected.getBaseCRS()));
        } catch (NoninvertibleTransformException e) {
            throw new UnusableInput(
                    where,
                    "the projection of \"" + projected.getName().getCode()
                            + "\" has no inverse; wanted a system that places" + " can be found in, such as EPSG:2264");
        }
    }

    /** Whether the definition names northing or latitude before easting or longitude. */
    private boolean northFirst(CoordinateReferenceSystem system) {
        AxisDirection first = system.getCoordinateSystem().getAxis(0).getDirection();
        AxisDirection second = system.getCoordinateSystem().getAxis(1).getDirection();
        boolean northFirst = first.equals(AxisDirection.NORTH) && second.equals(AxisDirection.EAST);
        if (!northFirst && !(first.equals(AxisDirection.EAST) && second.equals(AxisDirection.NORTH))) {
            throw new UnusableInput(
                    where,
                    "the axes of \"" + system.getName().getCode() + "\" run " + first.name() + " and " + second.name()
                            + "; wanted EAST and NORTH");
        }
        return northFirst;
    }

    private static CoordinateSystemAxis firstAxis(CoordinateReferenceSystem system) {
        return system.getCoordinateSystem().getAxis(0);
    }

    /** Metres in one unit of a system's first axis. */
    double metresInUnitOf(CoordinateReferenceSystem system) {
        return factor(firstAxis(system).getUnit(), SI.METRE, "metres");
    }

    private double factor(Unit<?> unit, Unit<?> target, String wanted) {
        try {
            return unit.getConverterToAny(target).convert(1.0);
        } catch (IncommensurableException | UnconvertibleException e) {
            throw new UnusableInput(
                    where,
                    "the system's unit cannot be expressed in " + wanted
                            + "; wanted a system in feet, metres or degrees, such as" + " EPSG:2264");
        }
    }
}

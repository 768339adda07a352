package org.fallrule.reader.trap;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.fallrule.check.PlanInFeet;
import org.fallrule.document.Fault;
import org.fallrule.document.Place;
import org.fallrule.reader.frame.CoordinateSystem;
import org.fallrule.reader.frame.LocalFrame;
import org.fallrule.reader.trap.PlanAsRead.LayerAsRead;
import org.fallrule.site.Role;
import org.locationtech.jts.geom.Coordinate;

/** Plans in feet as if they had been read from layers, each named for its role, at 2,050,000 ft east and 740,000 ft north in North Carolina. */
final class Read {
    /** The zone in US survey feet. */
    static final String SURVEY = "EPSG:2264";

    /** The same zone as a .prj that has the other foot; its false easting of 2,000,000.0026 in its own feet. */
    static final String INTERNATIONAL = "PROJCS[\"NC_Feet_Intl\",GEOGCS[\"GCS_North_American_1983\","
            + "DATUM[\"D_North_American_1983\",SPHEROID[\"GRS_1980\",6378137.0,298.257222101]],PRIMEM[\"Greenwich\",0.0],"
            + "UNIT[\"Degree\",0.0174532925199433]],PROJECTION[\"Lambert_Conformal_Conic\"],"
            + "PARAMETER[\"False_Easting\",2000000.002616666],PARAMETER[\"False_Northing\",0.0],"
            + "PARAMETER[\"Central_Meridian\",-79.0],PARAMETER[\"Standard_Parallel_1\",34.33333333333334],"
            + "PARAMETER[\"Standard_Parallel_2\",36.16666666666666],PARAMETER[\"Latitude_Of_Origin\",33.75],"
            + "UNIT[\"Foot\",0.3048]]";

    private static final Place WHERE = Place.of("lot.prj");

    private Read() {}

    static PlanAsRead read(PlanInFeet plan, Map<Role, String> systems) {
        Coordinate middle = CoordinateSystem.of(SURVEY, WHERE).toLonLat(new Coordinate(2_050_000, 740_000), WHERE);
        List<LayerAsRead> layers = Stream.of(Role.values())
                .filter(role -> !plan.site().features(role).isEmpty())
                .map(role -> new LayerAsRead(
                        role,
                        role.word() + ".shp",
                        CoordinateSystem.of(systems.getOrDefault(role, SURVEY), WHERE),
                        plan.site().features(role)))
                .toList();
        return new PlanAsRead(LocalFrame.at(middle.x, middle.y), layers, Map.of());
    }

    static List<String> says(Trap trap, PlanInFeet plan) {
        return says(trap, plan, Map.of());
    }

    static List<String> says(Trap trap, PlanInFeet plan, Map<Role, String> systems) {
        return trap.problems(read(plan, systems)).stream().map(Fault::toString).toList();
    }
}

package org.fallrule.report;

import java.util.ArrayList;
import java.util.List;
import org.fallrule.locality.Climate;

/** What every report warns of. */
public final class Cautions {
    private static final String SCREENING =
            "This is a screening aid. It is not a design, a survey, a permit or a legal opinion. The locally adopted code, its"
                    + " edition and amendments govern, and licensed practice decides.";
    private static final String ONE_CALL =
            "Call the one-call centre (811 in the United States) before any digging and wait the legal time. Dig by hand"
                    + " inside the tolerance zone. Marks show no depth, and private lines are not marked.";
    private static final String CLEAR =
            "Utilities stand where the plan puts them. Nothing here shows that a place is clear.";
    private static final String TRENCH =
            "From 5 ft of depth a trench needs a protective system, shallower where the soil is unstable; from 4 ft a ladder"
                    + " within 25 ft; spoil 2 ft back; a competent person every day and after rain (29 CFR 1926.651 and"
                    + " .652). Never enter an unprotected trench.";
    private static final String GAS = "Smell of gas: leave, and call from away. Treat every cable as live.";
    private static final String LOT_LINES =
            "Lot lines from GIS are not a boundary survey, and easements may not be on the map.";
    private static final String DATUM =
            "A wrong datum or unit gives wrong slopes and cover. Check both against the survey.";
    private static final String CONSENT =
            "Water sent onto a neighbour's land needs their consent or a recorded easement; the law differs by state.";

    private static final List<String> ALWAYS =
            List.of(SCREENING, ONE_CALL, CLEAR, TRENCH, GAS, LOT_LINES, DATUM, CONSENT);

    private static final String ICE =
            "It freezes here: water that reaches a walk or street becomes ice. Keep the outfall's path off them.";

    private Cautions() {}

    /** The cautions for whoever digs the trench and lays the pipe. */
    public static List<String> forTheCrew() {
        return List.of(ONE_CALL, CLEAR, TRENCH, GAS, DATUM, SCREENING);
    }

    /** The cautions for a place with such a climate. */
    public static List<String> in(Climate climate) {
        List<String> cautions = new ArrayList<>(ALWAYS);
        if (climate.freezing().orElse(true)) {
            cautions.add(ICE);
        }
        return List.copyOf(cautions);
    }
}

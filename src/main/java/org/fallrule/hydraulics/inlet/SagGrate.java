package org.fallrule.hydraulics.inlet;

import org.fallrule.hydraulics.mechanics.Water;
import org.fallrule.measure.Area;
import org.fallrule.measure.Flow;
import org.fallrule.measure.Length;
import org.fallrule.method.Method;

/**
 * A level grate at a low point, where water stands and cannot pass by.
 *
 * @param perimeter of its edges that water comes over, what is clogged left out; zero when all is clogged
 * @param openArea of its openings, what is clogged left out
 */
public record SagGrate(Length perimeter, Area openArea) {
    public static final Method METHOD = Method.named(
                    "sag_grate",
                    "Grate in a sag",
                    "What a grate at a low point lets in at a depth of water, and the depth that lets a flow in.")
            .formula("weir: Q = Cw P d^1.5")
            .formula("orifice: Q = 0.67 Ag (2 g d)^0.5")
            .formula("the lesser of both counts")
            .symbol("Q", "flow through the grate", "m3/s")
            .symbol("Cw", "1.656, in feet 3.0", "m^0.5/s")
            .symbol("P", "perimeter that water comes over", "m")
            .symbol("d", "depth of water above the grate", "m")
            .symbol("Ag", "clear area of the openings", "m2")
            .symbol("g", "acceleration of gravity", "m/s2")
            .source("FHWA HEC-22, third edition, 2009, equations 4-26 and 4-27 (from memory)")
            .source(
                    "Texas Department of Transportation, Hydraulic Design Manual, chapter 10 section 6, equations 10-30 and"
                            + " 10-31 (read)")
            .limit(
                    "Between weir and orifice the flow is unsteady and less than either; the lesser of both is an upper bound"
                            + " there.")
            .limit(
                    "Clogging takes from the perimeter and from the area, not by the same part: leaves over half the width of"
                            + " a grate twice as long as wide leave three quarters of its perimeter.")
            .limit(
                    "Leave out an edge along a curb or wall. How much to count as clogged is the county's choice; half is"
                            + " usual (TxDOT, read).")
            .limit("Bars, domes and leaf guards are not in it.");

    /** 3.0 ft^0.5/s. */
    private static final double WEIR = 3.0 * Math.sqrt(0.3048);

    private static final double ORIFICE = 0.67;

    public SagGrate {
        if (perimeter.metres() < 0 || openArea.squareMetres() < 0) {
            throw new IllegalArgumentException("a grate's perimeter and open area must not be below zero");
        }
    }

    /** What comes in at a depth of water above the grate; nothing at a depth of zero or below. */
    public Flow capture(Length depth) {
        double d = Math.max(0, depth.metres());
        return new Flow(Math.min(weirCms(d), orificeCms(d)));
    }

    /** Whether openings, and not the edge, hold the water back at a depth. */
    public boolean actsAsOrifice(Length depth) {
        return depth.metres() > turningDepth().metres();
    }

    /** The depth above which openings hold the water back. Zero when nothing is open. */
    public Length turningDepth() {
        return new Length(
                perimeter.metres() == 0
                        ? 0
                        : ORIFICE
                                * Math.sqrt(2 * Water.GRAVITY)
                                * openArea.squareMetres()
                                / (WEIR * perimeter.metres()));
    }

    /** The depth of water above the grate at which a flow comes in; unbounded when all is clogged. */
    public GrateHead head(Flow flow) {
        double q = flow.cubicMetresPerSecond();
        if (q <= 0) {
            return new GrateHead.Standing(new Length(0));
        }
        if (perimeter.metres() == 0 || openArea.squareMetres() == 0) {
            return new GrateHead.Clogged();
        }
        double weir = Math.pow(q / (WEIR * perimeter.metres()), 2.0 / 3);
        double orifice = Water.velocityHead(q / (ORIFICE * openArea.squareMetres()));
        return new GrateHead.Standing(new Length(Math.max(weir, orifice)));
    }

    private double weirCms(double depthM) {
        return WEIR * perimeter.metres() * Math.pow(depthM, 1.5);
    }

    private double orificeCms(double depthM) {
        return ORIFICE * openArea.squareMetres() * Water.speedAfterFall(depthM);
    }
}

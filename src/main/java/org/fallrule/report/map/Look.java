package org.fallrule.report.map;

import java.util.Locale;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;

/**
 * The kinds of things that a map tells apart. Lines have the colours of the uniform colour code for temporary marking of
 * underground facilities (APWA): white what is proposed, red electric, yellow gas, orange communication, blue potable water,
 * purple reclaimed and irrigation water, green sewers and drains. Pink, for survey marks, is left free: none are drawn. Each
 * has a dash and letters of its own, so that a grey print or an eye that sees colours otherwise loses nothing. The order is
 * that of the legend.
 */
public enum Look {
    PIPE("proposed drain and flow", Ink.line("#ffffff", "#f2f4f6", 3.4).cased("#16202b", "#0b0e11")),
    EXISTING_PIPE("existing drain and flow", Ink.line("#16712f", "#63cf83", 4)),
    OUTFALL("outfall", Ink.area("#ffffff", "#14181c").edged("#16202b", "#f2f4f6", 3)),
    BASIN("basin", Ink.area("#ffffff", "#14181c").edged("#16202b", "#f2f4f6", 2)),
    DOWNSPOUT("downspout", Ink.area("#ffffff", "#14181c").edged("#16202b", "#f2f4f6", 2)),
    TRENCH_DRAIN("trench drain", Ink.area("#ffffff", "#14181c").edged("#16202b", "#f2f4f6", 2)),
    CLEANOUT("cleanout", Ink.area("#ffffff", "#14181c").edged("#16202b", "#f2f4f6", 1.5)),
    OWN_LOT("own lot line", Ink.line("#1d1d1d", "#e8e8e8", 2.6).dashed("20 4 4 4")),
    OTHER_LOT("other lot line", Ink.line("#5c5c5c", "#a0a0a0", 1.2).dashed("20 4 4 4")),
    BUILDING(
            "building",
            Ink.area("#ece6df", "#2f2a26").edged("#40362d", "#c9bdb1", 1.6).hatched(Ink.Hatch.SLANT)),
    PUBLIC_WALK("public walk", Ink.area("#e6e0cc", "#3b382c").edged("#8b8468", "#8b8468", 1.2)),
    WALK("walk", Ink.area("#f2eee2", "#2d2b24").edged("#a39c86", "#7d7763", 1)),
    DRIVE("drive", Ink.area("#e9e9e6", "#2a2c2e").edged("#96968f", "#74767a", 1)),
    STREET("street", Ink.area("#dcdedf", "#33373b").edged("#7d8387", "#8b9196", 1.2)),
    GAS(
            "gas",
            Ink.line("#ffd21f", "#ffd21f", 2.4)
                    .cased("#5c4700", "#14181c")
                    .dashed("10 4")
                    .coded("G")),
    ELECTRIC(
            "electric", Ink.line("#c4161c", "#ff7a72", 2).dashed("14 3 3 3 3 3").coded("E")),
    COMMUNICATION(
            "communication", Ink.line("#d96100", "#ff9d4d", 2).dashed("5 3").coded("C")),
    WATER_MAIN("water main", Ink.line("#0b5cad", "#6db4ff", 2.6).dashed("18 4").coded("WM")),
    WATER_SERVICE(
            "water service",
            Ink.line("#0b5cad", "#6db4ff", 1.8).dashed("18 3 2 3").coded("WS")),
    RECLAIMED(
            "reclaimed water",
            Ink.line("#7a2a9c", "#d193ee", 2.2).dashed("12 3 12 3 3 3 3 3").coded("RW")),
    IRRIGATION("irrigation", Ink.line("#7a2a9c", "#d193ee", 1.8).dashed("2 3").coded("IR")),
    SANITARY(
            "sanitary sewer",
            Ink.line("#16712f", "#63cf83", 2.2).dashed("22 5 8 5").coded("SS")),
    STORM(
            "storm drain",
            Ink.line("#16712f", "#63cf83", 2.2).dashed("26 4 2 4 2 4").coded("SD")),
    UTILITY(
            "unknown utility",
            Ink.line("#555555", "#b5b5b5", 2).dashed("7 3 1 3").coded("?")),
    EASEMENT("easement", Ink.line("#6a5a2a", "#c2b074", 1.2).dashed("7 4")),
    TREE("tree", Ink.area("none", "none").edged("#3c6b35", "#8fc487", 1.4)),
    WELL("well", Ink.area("#ffffff", "#14181c").edged("#0b5cad", "#6db4ff", 1.6)),
    SEPTIC("septic", Ink.line("#7a4b1e", "#d3a273", 1.4).dashed("2 3")),
    WATER_BODY("water", Ink.area("#d8e8f1", "#1c303d").edged("#4d8cb0", "#5d9bbd", 1.2)),
    FLOOD_ZONE("flood zone", Ink.line("#4d8cb0", "#5d9bbd", 1.2).dashed("10 3 1 3 1 3")),
    CONTOUR("contour", Ink.line("#b09a80", "#6c604f", 0.8)),
    OUTFALL_GROUND(
            "an outfall may stand here",
            Ink.area("#dcefe3", "#1d3a2a").edged("#2c7a4b", "#7fd3a1", 1.2).hatched(Ink.Hatch.DOTS)),
    SUBMITTED_PIPE("drain as submitted", Ink.line("#7a4fbf", "#c3a6f2", 2.4).dashed("9 5")),
    LIMIT(
            "nearer than the limit",
            Ink.area("#f3c9bd", "#5a2f26")
                    .edged("#a3391c", "#f0937a", 1.4)
                    .dashed("3 3")
                    .hatched(Ink.Hatch.DOTS)),
    REMEDY("would pass", Ink.line("#0a6e6e", "#5fd3d3", 2.6).dashed("7 4")),
    MEASURED("measured here", Ink.line("#d9480f", "#ff9466", 11)),
    MEASURED_PLACE("measured here", Ink.area("none", "none").edged("#b3380a", "#ff9466", 3)),
    BEFORE("as it was", Ink.line("#7b5aa6", "#c3a6ea", 2).dashed("6 4")),
    BEFORE_PLACE(
            "as it was", Ink.area("none", "none").edged("#7b5aa6", "#c3a6ea", 2).dashed("3 2")),
    BUILT_PLACE("measured as built", Ink.area("#16202b", "#f2f4f6").edged("#ffffff", "#14181c", 1)),
    GROUND_LINE("ground", Ink.line("#5a4526", "#cdb48c", 2.6)),
    INVERT("invert", Ink.line("#16202b", "#f2f4f6", 2.4)),
    PIPE_WALL("drain pipe, outside", Ink.area("#d3d9de", "#3b454e").edged("#16202b", "#f2f4f6", 1)),
    COVER_LIMIT("limit of cover", Ink.line("#a3391c", "#f0937a", 1.8).dashed("4 3")),
    LEVEL_LIMIT("limit", Ink.line("#a3391c", "#f0937a", 1.8).dashed("9 3 2 3")),
    STRUCTURE("structure", Ink.area("#ffffff", "#14181c").edged("#16202b", "#f2f4f6", 1.8)),
    LAWN("lawn", Ink.area("#eaf1e3", "#222d22").edged("#8ba37c", "#6f8a63", 1)),
    SURFACE_UNKNOWN(
            "surface not known",
            Ink.area("none", "none").edged("#8a8a8a", "#8a8a8a", 1).dashed("2 3"));

    private final String legend;

    @SuppressWarnings("ImmutableEnumChecker") // a record of strings, enums and numbers
    private final Ink ink;

    Look(String legend, Ink ink) {
        this.legend = legend;
        this.ink = ink;
    }

    /** What the legend calls it. */
    public String legend() {
        return legend;
    }

    public Ink ink() {
        return ink;
    }

    /** Whether it is a pipe of the drain, along which the flow is shown. */
    public boolean isDrain() {
        return this == PIPE || this == EXISTING_PIPE;
    }

    /** The class that carries its style in SVG. */
    public String cssClass() {
        return "m-" + name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The class that carries the style of its casing. */
    public String casingClass() {
        return cssClass() + "-casing";
    }

    /** How a feature is drawn. */
    public static Look of(Feature feature) {
        return switch (feature.role()) {
            case LOT -> feature.get(Attribute.OWN).orElse(false) ? OWN_LOT : OTHER_LOT;
            case WALK -> feature.get(Attribute.ACCESS).orElse("").equals("public") ? PUBLIC_WALK : WALK;
            case INLET -> ofInlet(feature.get(Attribute.KIND).orElse("basin"));
            case UTILITY -> ofUtility(feature.get(Attribute.KIND).orElse("unknown"));
            case BUILDING -> BUILDING;
            case DRIVE -> DRIVE;
            case STREET -> STREET;
            case PIPE -> feature.isDesigned() ? PIPE : EXISTING_PIPE;
            case OUTFALL -> OUTFALL;
            case CLEANOUT -> CLEANOUT;
            case TREE -> TREE;
            case EASEMENT -> EASEMENT;
            case SEPTIC -> SEPTIC;
            case WELL -> WELL;
            case WATER_BODY -> WATER_BODY;
            case FLOOD_ZONE -> FLOOD_ZONE;
            case DRAINAGE_AREA, SOIL, SPOT, CONTOUR, BREAKLINE, GROUND, PROPOSED_GROUND -> CONTOUR;
            case AS_BUILT -> BUILT_PLACE;
        };
    }

    private static Look ofInlet(String kind) {
        return switch (kind) {
            case "downspout" -> DOWNSPOUT;
            case "trench_drain" -> TRENCH_DRAIN;
            default -> BASIN;
        };
    }

    private static Look ofUtility(String kind) {
        return switch (kind) {
            case "gas", "propane" -> GAS;
            case "electric", "lighting" -> ELECTRIC;
            case "communication" -> COMMUNICATION;
            case "water_main" -> WATER_MAIN;
            case "water_service" -> WATER_SERVICE;
            case "reclaimed" -> RECLAIMED;
            case "irrigation" -> IRRIGATION;
            case "sanitary" -> SANITARY;
            case "storm" -> STORM;
            default -> UTILITY;
        };
    }
}

package org.fallrule.locality;

/** How hard it rains in storms of one return period, by their duration. */
public sealed interface Rainfall permits IntensityTable, IntensityCurve {}

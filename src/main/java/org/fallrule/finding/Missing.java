package org.fallrule.finding;

/**
 * Something the plan does not say.
 *
 * @param what what is missing: {@code invert at the upstream end of pipe P-3}
 * @param settledBy what would settle it: {@code give invert_up}
 */
public record Missing(String what, String settledBy) {}

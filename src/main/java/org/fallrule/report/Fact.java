package org.fallrule.report;

/**
 * A named fact, as a report lists it.
 *
 * @param name what it is, in a word or two
 * @param value its value as printed; text from a plan stands in it as the plan has it
 */
public record Fact(String name, String value) {}

package org.fallrule.method;

/**
 * A letter in a formula.
 *
 * @param sign the letter, as the source writes it
 * @param meaning what it stands for
 * @param unit its unit in the formula; empty for a number without one
 */
public record Symbol(String sign, String meaning, String unit) {}

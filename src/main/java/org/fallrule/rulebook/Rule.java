package org.fallrule.rulebook;

import org.fallrule.check.Check;
import org.fallrule.check.Terms;
import org.fallrule.document.Place;
import org.fallrule.finding.Basis;
import org.fallrule.finding.Weight;

/**
 * A rule as it applies, all layers laid over each other.
 *
 * @param id its id
 * @param title what it asks, in a few words
 * @param check the check that measures
 * @param weight what hangs on it
 * @param terms what the check is told
 * @param basis what it rests on
 * @param setBy where its id stands in the last book that speaks of it
 */
public record Rule(String id, String title, Check check, Weight weight, Terms terms, Basis basis, Place setBy) {}

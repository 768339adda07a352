package org.fallrule.network;

import org.fallrule.measure.Length;

/**
 * The step from the invert of a pipe that comes in to a structure to that of the pipe that leaves it.
 *
 * @param at where the structure stands
 * @param in the pipe that comes in
 * @param out the pipe that carries the water on
 * @param height the invert in less the invert out; negative where the water has to rise
 */
public record Drop(Junction at, PipeRun in, PipeRun out, Length height) {}

/**
 * Water running down the ground: a regular grid of heights, its hollows filled, the path of a drop and the area that drains
 * to a place. Start at {@link org.fallrule.terrain.flow.GroundGrid}.
 */
@NullMarked
package org.fallrule.terrain.flow;

import org.jspecify.annotations.NullMarked;

/**
 * The ground: its elevation and grade at a place, its contour lines, and no answer outside of what was surveyed. Start at {@link
 * org.fallrule.terrain.GroundBuilder}.
 */
@NullMarked
package org.fallrule.terrain;

import org.jspecify.annotations.NullMarked;

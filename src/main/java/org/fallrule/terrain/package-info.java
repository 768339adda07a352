/** The ground: its elevation at a place, and no answer outside of what was surveyed. */
@NullMarked
package org.fallrule.terrain;

import org.jspecify.annotations.NullMarked;

/** Checks of the water: what the drain carries, how high it stands, what it does where it comes out. */
@NullMarked
package org.fallrule.check.water;

import org.jspecify.annotations.NullMarked;

/** Checks of the ground itself: where it leads the water. */
@NullMarked
package org.fallrule.check.ground;

import org.jspecify.annotations.NullMarked;

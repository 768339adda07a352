/** Checks of where things stand in plan. */
@NullMarked
package org.fallrule.check.place;

import org.jspecify.annotations.NullMarked;

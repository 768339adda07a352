/** What every method of hydraulics needs: the constants of water, and how an equation is solved that has no closed form. */
@NullMarked
package org.fallrule.hydraulics.mechanics;

import org.jspecify.annotations.NullMarked;

/** What the water does where it leaves the pipe, and the stone that holds the ground there. */
@NullMarked
package org.fallrule.hydraulics.outlet;

import org.jspecify.annotations.NullMarked;

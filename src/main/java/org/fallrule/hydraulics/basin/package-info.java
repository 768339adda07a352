/** A basin's sump: how it drains down, whether it floats, how it answers to a garden hose. */
@NullMarked
package org.fallrule.hydraulics.basin;

import org.jspecify.annotations.NullMarked;

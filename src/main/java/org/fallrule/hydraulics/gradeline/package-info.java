/** The level of the water from the outfall up to every inlet of a drain. */
@NullMarked
package org.fallrule.hydraulics.gradeline;

import org.jspecify.annotations.NullMarked;

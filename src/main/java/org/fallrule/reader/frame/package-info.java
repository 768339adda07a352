/**
 * Coordinate reference systems of layers, and the one local metric frame that a whole plan is brought into. Start at
 * {@link org.fallrule.reader.frame.ToLocal}.
 */
@NullMarked
package org.fallrule.reader.frame;

import org.jspecify.annotations.NullMarked;

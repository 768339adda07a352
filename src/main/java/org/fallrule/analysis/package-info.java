/** The plan with what follows from it: the ground, the drain. */
@NullMarked
package org.fallrule.analysis;

import org.jspecify.annotations.NullMarked;

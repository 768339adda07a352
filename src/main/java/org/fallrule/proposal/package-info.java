/** Lines that pass: where an outfall may stand, and a way, a grade and sizes from the inlets to it, proved by a review. */
@NullMarked
package org.fallrule.proposal;

import org.jspecify.annotations.NullMarked;

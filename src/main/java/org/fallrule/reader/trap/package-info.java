/**
 * What real layers get wrong without looking wrong: feet of two kinds, layers shifted against each other, heights of two datums. A
 * trap tells of it, with the layer and the likely cause; what it compares with is what is plausible, no rule, and fails no plan.
 */
@NullMarked
package org.fallrule.reader.trap;

import org.jspecify.annotations.NullMarked;

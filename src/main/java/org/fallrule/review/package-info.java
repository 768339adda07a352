/** Runs a rule book over a plan. */
@NullMarked
package org.fallrule.review;

import org.jspecify.annotations.NullMarked;

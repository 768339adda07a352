/** Two states of one site held against each other: two submittals, or the plan and the work as built. */
@NullMarked
package org.fallrule.comparison;

import org.jspecify.annotations.NullMarked;

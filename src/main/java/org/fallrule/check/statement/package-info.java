/** Checks of what the plan says of things. */
@NullMarked
package org.fallrule.check.statement;

import org.jspecify.annotations.NullMarked;

/** Checks of the pipe among other people's pipes and wires. */
@NullMarked
package org.fallrule.check.utility;

import org.jspecify.annotations.NullMarked;

/**
 * Quantities of the trade: SI inside, parsed from and printed in the units that the trade writes, and the one place where a
 * value is held against a limit.
 */
@NullMarked
package org.fallrule.measure;

import org.jspecify.annotations.NullMarked;

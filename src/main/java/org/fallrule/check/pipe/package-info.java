/** Checks of the pipe itself: its fall, its slope, its cover. */
@NullMarked
package org.fallrule.check.pipe;

import org.jspecify.annotations.NullMarked;

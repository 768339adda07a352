/** Pages about the checks, written from the checks themselves. */
@NullMarked
package org.fallrule.reference;

import org.jspecify.annotations.NullMarked;

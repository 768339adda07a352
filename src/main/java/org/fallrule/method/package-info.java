/** What a method of calculation says of itself: its formula, where that is published, and where it stops to hold. */
@NullMarked
package org.fallrule.method;

import org.jspecify.annotations.NullMarked;

/** What the program says, beside what others have published: one page made from the figures that the tests hold it to. */
@NullMarked
package org.fallrule.verification;

import org.jspecify.annotations.NullMarked;

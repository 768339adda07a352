/** Tests of what all checks share, and the plan in feet that the tests of single checks are written in. */
@NullMarked
package org.fallrule.check;

import org.jspecify.annotations.NullMarked;

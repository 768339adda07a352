/** Many plans in one run: which they are, each reviewed on its own, what is kept of it, and what an interrupted run left. */
@NullMarked
package org.fallrule.docket;

import org.jspecify.annotations.NullMarked;

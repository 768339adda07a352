/** Proposed lines in words and as data. */
@NullMarked
package org.fallrule.report.proposal;

import org.jspecify.annotations.NullMarked;

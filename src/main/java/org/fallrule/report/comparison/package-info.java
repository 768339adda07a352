/** What two states of a site come to, in words. */
@NullMarked
package org.fallrule.report.comparison;

import org.jspecify.annotations.NullMarked;

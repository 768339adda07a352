/** A docket: the plans that await a reviewer, what each needs, and how they stand to the rules, as values, JSON and CSV. */
@NullMarked
package org.fallrule.report.docket;

import org.jspecify.annotations.NullMarked;

/** The grade sheet: what a crew needs to lay each pipe to its grade. */
@NullMarked
package org.fallrule.report.gradesheet;

import org.jspecify.annotations.NullMarked;

/** What a submittal is looked over for, and what of it the plan shows. */
@NullMarked
package org.fallrule.report.checklist;

import org.jspecify.annotations.NullMarked;

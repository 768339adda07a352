/** The report: one value, printed in several forms that all state the same facts. */
@NullMarked
package org.fallrule.report;

import org.jspecify.annotations.NullMarked;

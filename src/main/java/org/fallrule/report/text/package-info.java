/** The report as text for a terminal. */
@NullMarked
package org.fallrule.report.text;

import org.jspecify.annotations.NullMarked;

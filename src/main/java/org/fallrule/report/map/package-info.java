/** Maps of a plan: a drawing as shapes in the plan's own metres, and one writer that prints a drawing as SVG. */
@NullMarked
package org.fallrule.report.map;

import org.jspecify.annotations.NullMarked;

/** The report as one HTML page that needs nothing else: no network, no font, no script to be read. */
@NullMarked
package org.fallrule.report.html;

import org.jspecify.annotations.NullMarked;

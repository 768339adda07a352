/** The report as data: JSON, GeoJSON, CSV. */
@NullMarked
package org.fallrule.report.data;

import org.jspecify.annotations.NullMarked;

/** What a report says of the water: tables of flows and levels, and how they were worked out. */
@NullMarked
package org.fallrule.report.water;

import org.jspecify.annotations.NullMarked;

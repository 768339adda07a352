/** Long sections: the drain under its ground, drawn once as shapes along the flow. */
@NullMarked
package org.fallrule.report.profile;

import org.jspecify.annotations.NullMarked;

/** What would pass: the least change of the plan that turns a finding, each proved by reviewing the changed plan. */
@NullMarked
package org.fallrule.remedy;

import org.jspecify.annotations.NullMarked;

/** What a check found out: facts, not sentences. */
@NullMarked
package org.fallrule.finding;

import org.jspecify.annotations.NullMarked;

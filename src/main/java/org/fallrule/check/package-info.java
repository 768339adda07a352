/**
 * What a check is: what it measures, what it must be told by a rule book, what it needs of the plan, and where it looks it up.
 */
@NullMarked
package org.fallrule.check;

import org.jspecify.annotations.NullMarked;

/**
 * Conditions in OGC ECQL over named values. What is not known makes a condition neither true nor false. The only package that
 * knows the parser of that language.
 */
@NullMarked
package org.fallrule.filter;

import org.jspecify.annotations.NullMarked;

/** Paper: the only package that knows the PDF library. */
@NullMarked
package org.fallrule.report.pdf;

import org.jspecify.annotations.NullMarked;

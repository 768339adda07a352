/** What a grate lets in. */
@NullMarked
package org.fallrule.hydraulics.inlet;

import org.jspecify.annotations.NullMarked;

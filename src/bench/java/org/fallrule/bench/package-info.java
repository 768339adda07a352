/** Measures speed and memory over made-up sites; see docs/performance.md. */
@NullMarked
package org.fallrule.bench;

import org.jspecify.annotations.NullMarked;

/** Rule books: YAML files laid one over another, each value remembering the file and line that set it. */
@NullMarked
package org.fallrule.rulebook;

import org.jspecify.annotations.NullMarked;

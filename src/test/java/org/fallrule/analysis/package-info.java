@NullMarked
package org.fallrule.analysis;

import org.jspecify.annotations.NullMarked;

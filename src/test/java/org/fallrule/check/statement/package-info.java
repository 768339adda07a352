@NullMarked
package org.fallrule.check.statement;

import org.jspecify.annotations.NullMarked;

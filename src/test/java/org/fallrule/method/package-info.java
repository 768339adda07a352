@NullMarked
package org.fallrule.method;

import org.jspecify.annotations.NullMarked;
